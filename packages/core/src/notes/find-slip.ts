import type { Lexicon } from "./lexicon.ts";
import { singulars } from "./word-forms.ts";

const LONGEST = 16;
const LEAST = 5;

/** How a word sounds, roughly: its consonants, spellings of one sound written once. */
export function soundOf(word: string, lexicon: Lexicon): string {
  let sound = word[0] ?? "";
  let at = 0;
  while (at < word.length) {
    const found = lexicon.language.sounds.find(([letters]) => word.startsWith(letters, at));
    const [letters, part] = found ?? [word[at] ?? "", word[at] ?? ""];
    if (part !== "" && !sound.endsWith(part)) sound += part;
    at += letters.length;
  }
  return sound;
}

/** Whether two words are at most `most` edits apart (insert, drop, replace, swap of neighbours). */
export function within(a: string, b: string, most: number): boolean {
  if (Math.abs(a.length - b.length) > most) return false;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((row[j - 1] ?? 0) + 1, (above[j] ?? 0) + 1, (above[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
      least = Math.min(least, best);
    }
    if (least > most) return false;
    [before, above] = [above, row];
  }
  return (above[b.length] ?? most + 1) <= most;
}

/**
 * The flavour's word that a misspelt one most likely stands for, or null. To be asked only where a flavour is spoken of: a letter or
 * two off, the first letter right; or the same sound and two off.
 */
export function findSlip(word: string, lexicon: Lexicon): string | null {
  if (word.length < LEAST || word.length > LONGEST || lexicon.known.has(word)) return null;
  for (const form of singulars(word, lexicon).toReversed()) {
    if (form.length < LEAST - 1) continue;
    if (form !== word && lexicon.known.has(form)) return null;
    const near = (lexicon.byLetter.get(form[0] ?? "") ?? []).filter((known) => {
      if (known.length >= 8 && form.length >= 7) return within(form, known, 2);
      if (known.length >= 5)
        return (
          within(form, known, 1) ||
          (within(form, known, 2) && soundOf(form, lexicon) === soundOf(known, lexicon))
        );
      return within(form, known, 1) && soundOf(form, lexicon) === soundOf(known, lexicon);
    });
    const best = near.find((known) => within(form, known, 1)) ?? near[0];
    if (best !== undefined) return best;
  }
  return null;
}
