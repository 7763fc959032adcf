import type { Sheet } from "@partsproof/house/protocol";
import { type Fields, guessIn, notesIn, rankingIn } from "./sheet-fields.ts";

type Glasses = Sheet["glasses"];

/** Whether anything was noted of a glass in a pass. */
export function noted(fields: Fields, code: string, pass: "first" | "second"): boolean {
  const notes = notesIn(fields, code)[pass];
  return [notes.nose, notes.palate, notes.finish].some((text) => text.trim() !== "");
}

/** What a lock would leave blank for good, one sentence each. */
export function blanksOf(fields: Fields, glasses: Glasses): readonly string[] {
  const codes = glasses.map(({ code }) => code);
  const unnoted = codes.filter((code) => !noted(fields, code, "first") && !noted(fields, code, "second"));
  const unnamed = codes.filter((code) => guessIn(fields, code) === null);
  return [
    ...(unnoted.length > 0 ? [`No notes on ${glassList(unnoted, codes.length)}.`] : []),
    ...(unnamed.length > 0 ? [`No guess for ${glassList(unnamed, codes.length)}.`] : []),
    ...(rankingIn(fields) === null ? ["No ranking."] : []),
  ];
}

function glassList(codes: readonly string[], all: number): string {
  if (codes.length === all) return "any glass";
  return codes.length === 1
    ? `glass ${codes[0] ?? ""}`
    : `glasses ${codes.slice(0, -1).join(", ")} and ${codes.at(-1) ?? ""}`;
}
