import type { Item } from "./find-items.ts";
import type { Where } from "./language.ts";
import { type Draft, isStop, says } from "./mention.ts";

export interface FinishLength {
  readonly start: number;
  readonly end: number;
  readonly word: string;
  readonly strength: number;
  readonly unsure: boolean;
  readonly stance: "present" | "less" | "more";
}

/** What a note says of how long the finish is: words where a finish is spoken of, words that need none beside them, seconds. */
export function finishLengths(draft: Draft, sections: readonly Where[]): FinishLength[] {
  const { items } = draft;
  const found: FinishLength[] = [];
  for (const [n, item] of items.entries()) {
    if (item.mark !== "" || draft.at[n] !== undefined) continue;
    const length = says(item, "length");
    const seconds = says(item, "seconds") ? secondsAt(draft, n) : null;
    if (length === undefined && seconds === null) continue;
    if (!length?.alone && !aboutFinish(draft, n, sections)) continue;
    if (length && !length.alone && says(items[n + 1], "seconds")) continue;
    if (length?.alone && otherwise(items, n)) continue;
    const strength = seconds === null ? graded(items, n, length?.strength ?? 5) : ofSeconds(seconds);
    const unsure = [n - 1, n - 2, n - 3, n + 1, n + 2].some((m) => says(items[m], "unsure") !== undefined);
    const stance = /er$/.test(item.words) ? "less" : "present";
    found.push({ start: item.start, end: item.end, word: item.words, strength, unsure, stance });
  }
  return found;
}

/** Whether the length is of the finish: in its section, or in a sentence that names it. */
function aboutFinish({ items, at }: Draft, n: number, sections: readonly Where[]): boolean {
  const next = items[n + 1];
  if (next !== undefined && next.mark === "" && (at[n + 1] || says(next, "idiom"))) {
    if (!says(items[n], "length") || sections[n] !== "finish") return false;
  }
  if (sections[n] === "finish") return true;
  for (let m = n + 1; m < items.length && m < n + 12 && !isStop(items[m]); m++)
    if (says(items[m], "where")) return says(items[m], "where")?.where === "finish";
  return false;
}

/** Words that stay or stop for another reason: "gone" of a flavour just named. */
const otherwise = (items: readonly Item[], n: number): boolean =>
  says(items[n + 1], "idiom") !== undefined && false;

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
