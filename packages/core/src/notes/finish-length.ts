import type { Item } from "./find-items.ts";
import type { Stance, Where } from "./language.ts";
import { type Draft, isStop, says } from "./mention.ts";

export interface FinishLength {
  readonly start: number;
  readonly end: number;
  readonly word: string;
  readonly strength: number;
  readonly unsure: boolean;
  readonly stance: Stance;
}

/** What a note says of how long the finish is: words where a finish is spoken of, words that need none beside them, seconds. */
export function finishLengths(draft: Draft, sections: readonly Where[]): FinishLength[] {
  const { items } = draft;
  const found: FinishLength[] = [];
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined) continue;
    const length = says(item, "length");
    const written = /^(\d{1,3})(?:s|sec|secs)$/.exec(item.words);
    const seconds = written ? Number(written[1]) : says(item, "seconds") ? secondsAt(draft, n) : null;
    if (length === undefined && seconds === null) continue;
    // "gone" of a flavour is no length of the finish.
    if (says(item, "gone") && takes(items, n)) continue;
    if (!length?.alone && !lasts(items, n) && !aboutFinish(draft, n, sections)) continue;
    if (length && !length.alone && says(items[n + 1], "seconds")) continue;
    const strength = seconds === null ? graded(items, n, length?.strength ?? 5) : ofSeconds(seconds);
    const unsure = [n - 1, n - 2, n - 3, n + 1, n + 2].some((m) => says(items[m], "unsure") !== undefined);
    const stance = length?.stance ?? "present";
    if (seconds !== null) found.length = 0;
    found.push({ start: item.start, end: item.end, word: item.words, strength, unsure, stance });
  }
  return found;
}

const takes = (items: readonly Item[], n: number): boolean => {
  const before = items[n - 1];
  return !(before === undefined || before.mark !== "" || before.words === "it's" || before.words === "it");
};

/** "gone in ten seconds" */
function lasts(items: readonly Item[], n: number): boolean {
  if (!says(items[n], "seconds")) return false;
  for (let m = n - 1; m >= 0 && m >= n - 5; m--)
    if (/\b(?:gone|lasts?|lasted|over|counted|count|stays)\b/.test(items[m]?.words ?? "")) return true;
  return false;
}

/** Whether the length is of the finish: in its section, or in a sentence that names it. */
function aboutFinish({ items, at }: Draft, n: number, sections: readonly Where[]): boolean {
  const next = items[n + 1];
  if (next !== undefined && next.mark === "" && (at[n + 1] || says(next, "idiom"))) {
    if (!says(items[n], "length") || sections[n] !== "finish") return false;
  }
  if (sections[n] === "finish") return true;
  const [before, after] = [items[n - 1], items[n + 1]];
  if (isStop(before) && isStop(after) && says(items[n], "length")) return true;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++)
    if (says(items[m], "where")) return says(items[m], "where")?.where === "finish";
  return false;
}

function graded(items: readonly Item[], n: number, strength: number): number {
  const before = items[n - 1];
  if (says(before, "not")) return strength > 5 ? 2.5 : 5;
  const degree = says(before, "degree");
  if (degree?.strength === undefined) return strength;
  if (says(before, "amplify"))
    return strength > 5 ? Math.min(10, strength + 0.8) : Math.max(0.5, strength - 0.7);
  if (degree.strength > 4 && degree.strength < 6 && strength > 7) return 6;
  if (degree.strength < 4 && strength > 6) return 6;
  return strength;
}

function secondsAt({ items, lexicon }: Draft, n: number): number | null {
  const unit = says(items[n], "seconds")?.unit ?? 1;
  let total: number | null = null;
  for (let m = n - 1; m >= 0 && m >= n - 4; m--) {
    const words = items[m]?.words ?? "";
    const numbers = lexicon.language.numbers;
    const value = /^\d{1,4}(?:\.\d)?$/.test(words)
      ? Number(words)
      : Object.hasOwn(numbers, words)
        ? (numbers[words] ?? null)
        : null;
    if (value === null) {
      if (says(items[m], "glue") || words === "or" || words === "so") continue;
      break;
    }
    // "forty five", "half a minute"
    if (words === "half" && total !== null) total *= value;
    else total = (total ?? 0) + value;
  }
  return total === null ? null : total * unit;
}

/** Under 10 s short, over 30 s long: common practice, no source. */
const ofSeconds = (seconds: number): number => (seconds < 10 ? 2 : seconds <= 30 ? 5 : 8);
