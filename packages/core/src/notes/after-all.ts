import type { Item } from "./find-items.ts";
import { type Draft, isStop, type Mention } from "./mention.ts";

/** "it talks of figs": the glass itself. */
export const itTalks = (items: readonly Item[], n: number): boolean =>
  items[n]?.words === "talk of" && /^(?:it|finish|nose|palate)$/.test(items[n - 1]?.words ?? "");

/** "boiled sweets, the lemon ones": of what was named before. */
export const oneOfThem = ({ items, mentions }: Draft, { nth, at, last }: Mention): boolean =>
  items[last + 1]?.text === "ones" && at - (mentions[nth - 1]?.last ?? Number.NEGATIVE_INFINITY) < 12;

/** "like a room where somebody peeled an orange": what the glass is likened to. */
export function asIf(items: readonly Item[], n: number): boolean {
  if (!/^some(?:body|one)\b/.test(items[n]?.words ?? "")) return false;
  for (let m = n - 1; m >= 0 && m > n - 12 && !isStop(items[m]) && items[m]?.mark === ""; m--)
    if (/(?:^| )like$|^as (?:if|though)$/.test(items[m]?.words ?? "")) return true;
  return false;
}

/** "I'm going to go with walnut": what is chosen, and no food. */
export const chosen = (items: readonly Item[], n: number): boolean =>
  items[n]?.words === "go with" &&
  /(?:^| )(?:to|i'd|i'll|gonna|let's|we'll)$/.test(items[n - 1]?.words ?? "");
