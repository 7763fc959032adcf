import type { Item } from "./find-items.ts";
import type { Draft, Mention } from "./mention.ts";

/** "it talks of figs": the glass itself. */
export const itTalks = (items: readonly Item[], n: number): boolean =>
  items[n]?.words === "talk of" && /^(?:it|finish|nose|palate)$/.test(items[n - 1]?.words ?? "");

/** "boiled sweets, the lemon ones": of what was named before. */
export const oneOfThem = ({ items, mentions }: Draft, { nth, at, last }: Mention): boolean =>
  items[last + 1]?.text === "ones" && at - (mentions[nth - 1]?.last ?? Number.NEGATIVE_INFINITY) < 12;

/** "I'm going to go with walnut": what is chosen, and no food. */
export const chosen = (items: readonly Item[], n: number): boolean =>
  items[n]?.words === "go with" &&
  /(?:^| )(?:to|i'd|i'll|gonna|let's|we'll)$/.test(items[n - 1]?.words ?? "");
