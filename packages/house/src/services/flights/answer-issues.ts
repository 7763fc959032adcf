import type { Issue, SetAnswer } from "../../protocol/index.ts";
import { issue, unknownCode } from "./edit-issue.ts";
import { designOf, setsOf } from "./question.ts";
import { rankingIssues } from "./ranking-issues.ts";
import type { FlightRow, SheetRow } from "../rows.ts";

/** Q9: each answer names a set of the sheet, once, and says about its glasses what the method asks. */
export function answerIssues(flight: FlightRow, sheet: SheetRow, answers: readonly SetAnswer[]): Issue[] {
  const sets = setsOf(flight, sheet.order);
  return answers.flatMap(({ set, picked, ranking }, i) => {
    const path = ["answers", i, "set"];
    const order = sets[set - 1];
    if (!order)
      return [issue("unknown_set", path, `a set of this sheet, 1 to ${sets.length}`, set, "an answer")];
    if (answers.findIndex((other) => other.set === set) < i)
      return [issue("set_answered_twice", path, "each set once in the answers", set, "an edit")];
    const at = ["answers", i, ranking === null ? "picked" : "ranking"];
    if (ranking !== null) {
      const tie = ranking.find((level) => level.length > 1);
      if (tie)
        return [issue("tie_not_taken", at, "no two glasses level", tie.join(" = "), "an order of a round")];
      return rankingIssues(ranking, order, at);
    }
    return picked === null ? [] : pickIssues(designOf(flight).method === "tetrad" ? 2 : 1, picked, order, at);
  });
}

function pickIssues(
  needed: number,
  picked: readonly string[],
  order: readonly string[],
  path: Issue["path"],
): Issue[] {
  const unknown = picked.flatMap((code, j) =>
    order.includes(code) ? [] : [unknownCode([...path, j], code, { order })],
  );
  if (unknown.length > 0) return unknown;
  if (picked.length === needed && new Set(picked).size === needed) return [];
  const limit = needed === 1 ? "one glass of the set" : "the two glasses of one group";
  return [issue("picks_wrong", path, limit, picked.join(", "), "an answer")];
}
