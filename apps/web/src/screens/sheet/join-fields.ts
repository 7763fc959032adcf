import { type Fields, type FieldValue, sameValue } from "./sheet-fields.ts";

export interface Joined {
  /** What is still to be saved on top of theirs. */
  readonly mine: ReadonlyMap<string, FieldValue>;
  /** Fields that both had changed, and differently. */
  readonly clashes: readonly string[];
}

/**
 * Joins what was changed here with what was changed elsewhere since `base`, field by field. A field that only one side
 * changed goes by that side. Where both wrote a note, both texts stay, theirs first; anything else goes by this side, and
 * is named as a clash.
 */
export function joinFields(base: Fields, mine: ReadonlyMap<string, FieldValue>, theirs: Fields): Joined {
  const joined = new Map<string, FieldValue>();
  const clashes: string[] = [];
  for (const [key, value] of mine) {
    const there = theirs.get(key) ?? null;
    if (sameValue(there, value)) continue;
    if (sameValue(there, base.get(key))) {
      joined.set(key, value);
      continue;
    }
    clashes.push(key);
    const both = key.startsWith("note/") ? bothTexts(there, value) : value;
    if (!sameValue(both, there)) joined.set(key, both);
  }
  return { mine: joined, clashes };
}

function bothTexts(there: FieldValue, here: FieldValue): FieldValue {
  if (typeof there !== "string" || typeof here !== "string") return here;
  if (here.includes(there)) return here;
  return there.includes(here) ? there : `${there}\n${here}`;
}
