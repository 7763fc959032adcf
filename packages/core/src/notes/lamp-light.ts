import type { Item } from "./find-items.ts";
import { is, isStop, says } from "./mention.ts";

const LIT = /^(?:(?:the )?(?:first|last)|late|early|winter|summer|autumn|evening|morning|lamp|tea)$/;
const FALLS =
  /^(?:through|across|behind|under|over|from|at|of|(?:in|on) (?:the|a|an|my|his|her|our)\b(?! (?:mouth|palate|tongue|nose|finish)))/;

/** "light" that is seen: by its time of day, or by where it falls. */
export function lampLight(items: readonly Item[], at: number): boolean {
  const [before, after] = [items[at - 1], items[at + 1]];
  if (before === undefined || before.mark !== "") return false;
  const place = [1, 2, 3].map((step) => items[at + step]?.words ?? "").join(" ");
  // "lovely light."
  if (says(before, "liking") !== undefined && isStop(after)) return true;
  return LIT.test(before.words)
    ? after?.words !== "in"
    : (is(before, "an") || /\bthe$/.test(before.words)) && after?.mark === "" && FALLS.test(place);
}
