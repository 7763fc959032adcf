import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { Sense } from "./sheet-fields.ts";

/** Words of one family, to be tapped into a note. */
export interface Family {
  readonly id: string;
  readonly name: string;
  readonly words: readonly string[];
}

const WORDS_OF = new Map<string, string[]>();
for (const { id, words } of ATTRIBUTES) {
  const [family = ""] = id.split(".");
  WORDS_OF.set(family, [...(WORDS_OF.get(family) ?? []), ...words]);
}

/** What the nose cannot tell, and what the finish is asked for first. */
const LATE = ["feel", "time"];
const NAMES: Readonly<Record<string, string>> = { feel: "mouthfeel", time: "length" };

/** The families that a sense can tell of; for the finish, those of feeling and length stand first. */
export function familiesFor(sense: Sense): readonly Family[] {
  const ids = [...WORDS_OF.keys()];
  const early = ids.filter((id) => !LATE.includes(id));
  const late = ids.filter((id) => LATE.includes(id));
  const chosen = { nose: early, palate: [...early, "feel"], finish: [...late.toReversed(), ...early] }[sense];
  return chosen.map((id) => ({ id, name: NAMES[id] ?? id, words: WORDS_OF.get(id) ?? [] }));
}

/** Commas, full stops and line breaks part one thing from the next. */
const parts = (note: string): readonly string[] =>
  note.split(/[,.;\n]/).map((part) => part.trim().toLowerCase());

export const hasWord = (note: string, word: string): boolean => parts(note).includes(word);

/** The note with a word after it, a comma between; a word that stands there by itself is taken out again. */
export function tapWord(note: string, word: string): string {
  if (!hasWord(note, word)) {
    const kept = note.trimEnd();
    return kept === "" ? word : `${kept}${/[,;]$/.test(kept) ? "" : ","} ${word}`;
  }
  const escaped = word.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  // With the comma before it, or the one after it where it comes first.
  const inside = new RegExp(String.raw`[,;][ \t]*${escaped}[ \t]*(?=[,.;\n]|$)`, "i");
  return inside.test(note)
    ? note.replace(inside, "")
    : note.replace(new RegExp(String.raw`(^|[.\n][ \t]*)${escaped}[ \t]*[,;]?[ \t]*`, "i"), "$1");
}
