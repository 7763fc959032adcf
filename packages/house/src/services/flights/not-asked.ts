import type { Issue, SheetEdit } from "../../protocol/index.ts";
import { issue, type Path } from "./edit-issue.ts";
import { asksOf, questionOf } from "./question.ts";
import type { FlightRow } from "../rows.ts";

/** Q9: what this question does not ask is written nowhere, not even to take it back. */
export function notAsked(flight: FlightRow, edit: Omit<SheetEdit, "version">): Issue[] {
  const question = questionOf(flight);
  const asks = asksOf(question);
  const refused = (code: string, path: Path, what: string, received: unknown): Issue =>
    issue(code, path, `no ${what}`, received, `a sheet of ${question}`);
  return [
    ...((edit.guesses ?? []).length === 0 || asks.guesses
      ? []
      : [refused("guess_not_asked", ["guesses"], "guesses", edit.guesses?.length)]),
    ...(edit.ranking === undefined || edit.ranking === null || asks.ranking !== null
      ? []
      : [refused("ranking_not_asked", ["ranking"], "ranking of all glasses", edit.ranking.length)]),
    ...(edit.answers ?? []).flatMap(({ picked, ranking }, i) => [
      ...(picked === null || asks.answers === "picked"
        ? []
        : [refused("answer_not_asked", ["answers", i, "picked"], "picking in a set", picked.length)]),
      ...(ranking === null || asks.answers === "ranking"
        ? []
        : [refused("answer_not_asked", ["answers", i, "ranking"], "order of a round", ranking.length)]),
    ]),
  ];
}
