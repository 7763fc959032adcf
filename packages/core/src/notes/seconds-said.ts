import type { Item } from "./find-items.ts";
import { type Draft, is, says } from "./mention.ts";

export const AFTER = /^(?:after|afterwards|later)$/;

export const WRITTEN = /^(\d{1,3})(?:s|sec|secs)$/;

/** A time that passed before something came, and not how long it stays. */
export function waited(items: readonly Item[], n: number): boolean {
  if (!says(items[n], "seconds") || lasts(items, n)) return false;
  for (let m = n - 1; m >= 0 && m >= n - 4 && items[m]?.mark === ""; m--)
    if (is(items[m], "waiting")) return !says(items[m - 1], "length") && !says(items[m - 1], "there");
  return false;
}

/** "gone in ten seconds" */
export function lasts(items: readonly Item[], n: number): boolean {
  if (!says(items[n], "seconds") && !items[n - 2]?.words.startsWith("count")) return false;
  for (let m = n - 1; m >= 0 && m >= n - 5; m--)
    if (
      /\b(?:gone|lasts?|lasted|over|counted|count|stays?|remains?|lingers|persists)\b/.test(
        items[m]?.words ?? "",
      )
    )
      return true;
  return false;
}

/** "oily, 20 secs" */
export function standsAlone(items: readonly Item[], n: number): boolean {
  let m = n - 1;
  while (/^\d+(?:\.\d)?$/.test(items[m]?.words ?? "") || is(items[m], "aboutSo")) m--;
  const after = items[n + 1];
  return (
    (m < n - 1 || WRITTEN.test(items[n]?.words ?? "")) &&
    (items[m] === undefined || items[m]?.mark !== "") &&
    (after === undefined || after.mark !== "")
  );
}

/** "I counted to twelve" */
export function counted({ items, lexicon }: Draft, n: number): number | null {
  const words = items[n]?.words ?? "";
  const before = items[n - 1]?.words;
  const count = before === "to" ? items[n - 2]?.words : before;
  if (!/^(?:counted|count|counting)(?: to)?$/.test(count ?? "") || says(items[n + 1], "seconds")) return null;
  if (/^\d{1,3}$/.test(words)) return Number(words);
  return Object.hasOwn(lexicon.language.numbers, words) ? (lexicon.language.numbers[words] ?? null) : null;
}

/** "forty five seconds", "half a minute", "fifteen to twenty", "five or six". */
export function secondsAt({ items, lexicon }: Draft, n: number): number | null {
  const unit = says(items[n], "seconds")?.unit ?? 1;
  const { numbers } = lexicon.language;
  const values: number[] = [];
  for (let m = n - 1; m >= 0 && m >= n - 5; m--) {
    const words = items[m]?.words ?? "";
    const value = /^\d{1,4}(?:\.\d)?$/.test(words)
      ? Number(words)
      : Object.hasOwn(numbers, words)
        ? (numbers[words] ?? null)
        : null;
    if (value === null) {
      if (says(items[m], "glue") || /^(?:or|so|to|maybe|good|full|whole|solid|cool)$/.test(words)) continue;
      break;
    }
    const right = values.at(-1);
    if (words === "a" && right !== undefined) continue;
    if (words === "half" && right !== undefined) values[values.length - 1] = right * value;
    else if (right !== undefined && right < 10 && value >= 20 && items[m + 1]?.words !== "or")
      values[values.length - 1] = right + value;
    else if (right !== undefined && value < right && right % 100 === 0 && right > 0)
      values[values.length - 1] = right * value;
    else values.push(value);
  }
  if (values.length === 0) return null;
  return (values.reduce((sum, value) => sum + value, 0) / values.length) * unit;
}

/** Under 10 s short, over 30 s long: common practice, no source. */
export const ofSeconds = (seconds: number): number => (seconds < 10 ? 2 : seconds <= 30 ? 5 : 8);
