import type { Sheet } from "@partsproof/house/protocol";
import { allStrengthsIn, answerKey, type Fields, guessIn, notesIn, rankingIn } from "./sheet-fields.ts";

/** Whether anything was noted of a glass in a pass. */
export function noted(fields: Fields, code: string, pass: "first" | "second"): boolean {
  const notes = notesIn(fields, code)[pass];
  return (
    [notes.nose, notes.palate, notes.finish].some((text) => text.trim() !== "") ||
    allStrengthsIn(fields, code).some((said) => said.pass === pass)
  );
}

/** What a lock would leave blank for good of what is asked, one sentence each. */
export function blanksOf(fields: Fields, sheet: Pick<Sheet, "glasses" | "sets" | "asks">): readonly string[] {
  const { asks, sets } = sheet;
  const codes = sheet.glasses.map(({ code }) => code);
  // In sets the answer is what is asked; notes are welcome.
  const unnoted = codes.filter(
    (code) => asks.answers === null && !noted(fields, code, "first") && !noted(fields, code, "second"),
  );
  const unnamed = asks.guesses ? codes.filter((code) => guessIn(fields, code) === null) : [];
  const unanswered = sets.filter(({ set }) => (fields.get(answerKey(set)) ?? null) === null);
  const open = unanswered.map(({ set }) => String(set));
  return [
    ...(asks.answers !== null && open.length > 0
      ? [
          asks.answers === "picked"
            ? `No answer to ${which("set", open, sets.length)}.`
            : `No order for ${which("round", open, sets.length)}.`,
        ]
      : []),
    ...(unnoted.length > 0 ? [`No notes on ${which("glass", unnoted, codes.length)}.`] : []),
    ...(unnamed.length > 0 ? [`No guess for ${which("glass", unnamed, codes.length)}.`] : []),
    ...(asks.ranking !== null && rankingIn(fields) === null ? ["No ranking."] : []),
  ];
}

function which(what: string, some: readonly string[], all: number): string {
  if (some.length === all && all > 1) return `any ${what}`;
  const plural = what === "glass" ? "glasses" : `${what}s`;
  return some.length === 1
    ? `${what} ${some[0] ?? ""}`
    : `${plural} ${some.slice(0, -1).join(", ")} and ${some.at(-1) ?? ""}`;
}
