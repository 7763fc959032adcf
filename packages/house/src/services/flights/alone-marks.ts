import { DISCRIMINATION, discriminationSets } from "@partsproof/core/sensory";
import type { Rng } from "@partsproof/core/statistics";
import type { Draft } from "./pours.ts";
import { designOf, inSets } from "./question.ts";
import type { FlightRow } from "../rows.ts";

type Glass = Pick<FlightRow["marks"][number], "vesselId" | "nameId">;

interface Marked {
  /** What is poured over each mark, A first; set by set where there are sets. */
  readonly glasses: readonly Glass[];
  readonly said: readonly string[];
}

/** F4, Q18: what goes over which mark when somebody pours alone. Whoever pours sees it; the shuffles hide it again. */
export function drawnMarks({ question, method, sets }: Draft, listed: readonly Glass[], rng: Rng): Marked {
  if (!inSets(question) || method === null)
    return { glasses: listed, said: ["The order is what your shuffle made it."] };
  const { orders } = discriminationSets(method, sets, rng);
  const known = method === "duo_trio";
  const letters = orders.flatMap((order) => {
    // A set of a duo-trio has one glass of each under a mark: the one like R first.
    if (known) return order.startsWith("A") ? ["A", "B"] : ["B", "A"];
    return order.split("");
  });
  const [a, b] = listed;
  return {
    glasses: letters.flatMap((letter) => (letter === "A" ? a : b) ?? []),
    said: [
      "The orders are what your shuffles made them.",
      ...(known && sets === 1 ? ["You pour R and so know which of the two it is."] : []),
      ...(method === "triangle"
        ? [
            sets === 1
              ? "You pour the set and so know which of the two is in it once; you do not know where."
              : "You pour the sets and so know how many hold which of the two once; you know neither which set that is nor where.",
          ]
        : []),
      `By luck alone ${chanceOf(method)} of the answers are right all the same.`,
    ],
  };
}

const chanceOf = (method: keyof typeof DISCRIMINATION): string => {
  const { numerator, denominator } = DISCRIMINATION[method].chance;
  return `${numerator}/${denominator}`;
};

/** The set that a mark was poured for, from 1, and whether a duo-trio's R is like it; null where the glasses stand in one row. */
export function setOfMark(
  flight: Pick<FlightRow, "design" | "glassCount" | "marks">,
  index: number,
): { readonly set: number | null; readonly likeR: boolean } {
  const { setsEach, method } = designOf(flight);
  if (setsEach === 0) return { set: null, likeR: false };
  const size = flight.marks.length / setsEach;
  return {
    set: Math.floor(index / size) + 1,
    likeR: method === "duo_trio" && index % size === 0,
  };
}
