import type { Rest } from "@partsproof/house/protocol";
import { countDays, daysBetween, listed, printDay } from "../figures/index.ts";

/**
 * What a label says of oak: the wood that was really in, and how long; where none was put in, what the recipe asks for.
 *
 * @param rests the batch's, newest first
 * @param asked the recipe's own words; "" for none
 */
export function oakWords(rests: readonly Pick<Rest, "oak">[], asked: string): string {
  const pieces = rests.flatMap(({ oak }) => oak);
  return pieces.length === 0 ? asked : listed(pieces.map(pieceWords));
}

/** What a batch's page says of oak: what is in it now, and what was. */
export function oakInAndOut(rests: readonly Pick<Rest, "oak">[]): {
  readonly in: string;
  readonly out: string;
} {
  const pieces = rests.flatMap(({ oak }) => oak);
  const said = (some: readonly Piece[]): string => listed(some.map(pieceWords));
  return {
    in: said(pieces.filter(({ outAt }) => outAt === null)),
    out: said(pieces.filter(({ outAt }) => outAt !== null)),
  };
}

type Piece = Rest["oak"][number];

function pieceWords({ piece, count, species, toast, use, inAt, outAt }: Piece): string {
  const shape = piece?.shape ?? "wood";
  const what = shape === "chips" || shape === "wood" ? shape : `${count} ${shape}${count === 1 ? "" : "s"}`;
  const of = species === "not known" ? "" : ` of ${species}`;
  const how = [toast, use === 1 ? "" : `used ${use === 2 ? "once" : `${use - 1} times`} before`];
  const time = outAt === null ? `in since ${printDay(inAt)}` : countDays(daysBetween(inAt, outAt));
  return [`${what}${of}`, ...how, time].filter((part) => part !== "").join(", ");
}
