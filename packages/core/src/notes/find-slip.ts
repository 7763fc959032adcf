import type { Lexicon } from "./lexicon.ts";
import { soundOf } from "./sound-of.ts";
import { singulars } from "./word-forms.ts";

const LONGEST = 16;
const LEAST = 5;

/** Whether a word is long enough, and strange enough, to be a slip at all. */
export const maySlip = (word: string, { known }: Lexicon): boolean =>
  word.length >= LEAST && word.length <= LONGEST && !known.has(word);

/** Whether two words are one edit apart: a letter in, out, another, or two neighbours swapped. */
function oneEdit(a: string, b: string): boolean {
  if (a.length > b.length) return oneEdit(b, a);
  if (b.length - a.length > 1) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  let [endA, endB] = [a.length, b.length];
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA--;
    endB--;
  }
  const [left, right] = [endA - from, endB - from];
  if (left === 0) return right === 1;
  if (left === 1) return right === 1;
  return left === 2 && right === 2 && a[from] === b[from + 1] && a[from + 1] === b[from];
}

/** Whether dropping or changing one letter of the first leaves at most one edit more. */
function twoEdits(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 2) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  const [left, right] = [a.slice(from), b.slice(from)];
  const near = (x: string, y: string): boolean => x === y || oneEdit(x, y);
  return near(left.slice(1), right) || near(left, right.slice(1)) || near(left.slice(1), right.slice(1));
}

/**
 * The flavour's word that a misspelt one most likely stands for, or null. To be asked only where a flavour is spoken of: one letter
 * off with the first letter right, or another spelling of the same sound.
 */
export function findSlip(word: string, lexicon: Lexicon): string | null {
  if (!maySlip(word, lexicon)) return null;
  for (const form of singulars(word, lexicon).toReversed()) {
    if (form.length < LEAST) continue;
    if (form !== word && lexicon.known.has(form)) return null;
    const near = lexicon.slips.byLetter.get(form[0] ?? "")?.find((known) => oneEdit(form, known));
    if (near !== undefined) return near;
    if (form.length <= LEAST) continue;
    const same = lexicon.slips.bySound.get(soundOf(form, lexicon));
    const alike = same?.find((known) => twoEdits(form, known));
    if (alike !== undefined) return alike;
  }
  return null;
}
