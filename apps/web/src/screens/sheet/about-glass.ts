import type { Sheet } from "@partsproof/house/protocol";
import { type Fields, guessIn, notesIn } from "./sheet-fields.ts";

/** What helps to remember a glass: the guess, the beginning of a note, and the score. */
export function aboutGlass(sheet: Pick<Sheet, "namesOnOffer">, fields: Fields, code: string): string {
  const notes = notesIn(fields, code);
  const guess = guessIn(fields, code);
  const named = sheet.namesOnOffer.find((name) => name.nameId === guess)?.label;
  const words = [notes.first.nose, notes.first.palate, notes.second.nose, notes.second.palate]
    .map((text) => text.trim())
    .find((text) => text !== "");
  const note = words === undefined ? null : words.split("\n")[0];
  return [notes.score === null ? null : `${notes.score}`, note, named === undefined ? null : `${named}?`]
    .filter((part) => part !== null && part !== undefined)
    .join(" · ");
}
