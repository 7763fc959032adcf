import { DISCRIMINATION, QUESTIONS } from "@partsproof/core/sensory";
import type { z } from "zod";
import type { DiscriminationMethod, FlightDesign, QuestionId, SheetAsks } from "../../protocol/index.ts";
import type { FlightRow } from "../rows.ts";

type Method = z.infer<typeof DiscriminationMethod>;

/** Q1: the question of a flight; the column keeps one of them. */
export const questionOf = ({ question }: Pick<FlightRow, "question">): QuestionId => question as QuestionId;

export const inSets = (question: QuestionId): boolean => question === "tell_apart" || question === "changed";

/** How the glasses are laid out; of a flight from before there were designs, in one row. */
export const designOf = ({ design, glassCount }: Pick<FlightRow, "design" | "glassCount">): FlightDesign =>
  design ?? {
    method: null,
    asked: null,
    sides: null,
    setsEach: 0,
    glassesEach: glassCount,
    reference: false,
    repeats: 0,
    controlNameId: null,
    late: false,
    said: [],
  };

/** Coded glasses in one set of a method; a duo-trio's reference has no code. */
export const codedInSet = (method: Method): number =>
  (DISCRIMINATION[method].orders[0]?.length ?? 0) - (method === "duo_trio" ? 1 : 0);

/** Q9: what a sheet takes besides notes and scores. */
export function asksOf(question: QuestionId): z.infer<typeof SheetAsks> {
  switch (question) {
    case "which_is_which":
      return { guesses: true, ranking: "best first", answers: null };
    case "like_best":
      return { guesses: false, ranking: "best first", answers: null };
    case "how_close":
      return { guesses: false, ranking: "closest first", answers: null };
    case "tell_apart":
    case "changed":
      return { guesses: false, ranking: null, answers: "picked" };
    case "agree_with_myself":
      return { guesses: false, ranking: null, answers: "ranking" };
  }
}

/** Q8: what the taster is asked. Of two to tell apart they are told the task and nothing else. */
export function taskOf(flight: Pick<FlightRow, "question" | "design" | "glassCount">): string {
  const { method, asked } = designOf(flight);
  if (method === "paired" && asked !== null) return `Which of the two is ${asked}?`;
  if (method === "duo_trio") return "Which of the two is the same as R?";
  return method === null ? QUESTIONS[questionOf(flight)].sentence : DISCRIMINATION[method].task;
}

/** A sheet's codes set by set; none where the glasses stand in one row. */
export function setsOf<T>(flight: Pick<FlightRow, "design" | "glassCount">, order: readonly T[]): T[][] {
  const { setsEach } = designOf(flight);
  const size = setsEach === 0 ? 0 : order.length / setsEach;
  return Array.from({ length: setsEach }, (_, set) => order.slice(set * size, (set + 1) * size));
}
