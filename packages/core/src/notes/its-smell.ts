import type { Item } from "./find-items.ts";
import { is, says } from "./mention.ts";

/** "a very nice perfume", "the perfume is strong": what it smells like, liked or not. */
export const itsSmell = (items: readonly Item[], at: number): boolean =>
  items[at]?.text === "perfume" &&
  (says(items[at - 1], "liking") !== undefined ||
    (/\bthe$/.test(items[at - 1]?.words ?? "") && /^(?:is|was)\b/.test(items[at + 1]?.words ?? ""))) &&
  !is(items[at + 1], "noteWords");
