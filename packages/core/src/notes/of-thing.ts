import { isFlavour, type Item } from "./find-items.ts";
import type { Lexicon } from "./lexicon.ts";
import { is, isStop, says } from "./mention.ts";

const talks = (items: readonly Item[], n: number): boolean =>
  says(items[n], "reports") !== undefined || says(items[n], "aside") !== undefined;

const LIKENED = /\blike\b/;

/** "an oak table", "my peaty friend": the flavour's word only says what thing it is. What a note likens the glass to still counts. */
export function ofThing(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const next = items[at + 1];
  if (next === undefined || next.mark !== "" || isFlavour(next)) return false;
  // "cherries stain it"
  if (/[^su]s$/.test(items[at]?.text ?? "")) return false;
  // "plum red apples"
  const after = items[at + 2];
  if (after !== undefined && after.mark === "" && isFlavour(after)) return false;
  // "the banana folks talk about"
  if (is(next, "people") && after !== undefined && after.mark === "" && talks(items, at + 2)) return false;
  if (lexicon.things.has(next.words)) return true;
  if (!lexicon.scenery.has(next.words)) return false;
  if (isScene(items, at)) return false;
  for (let n = at - 1; n >= 0 && n > at - 8 && !isStop(items[n]); n--)
    if (
      says(items[n], "memory") ||
      says(items[n], "where") ||
      says(items[n], "degree")?.of ||
      LIKENED.test(items[n]?.words ?? "")
    )
      return false;
  return true;
}

const LIES = /^(?:at|by|in|on|under|with)\b/;

/** "An oak table in a cold room.": what a sentence without a verb paints is what the glass is like. */
function isScene(items: readonly Item[], at: number): boolean {
  let from = at - 1;
  while (from >= 0 && items[from]?.mark === "" && !says(items[from], "start") && says(items[from], "glue"))
    from--;
  if (from >= 0 && !isStop(items[from])) return false;
  for (let n = at + 2; n < items.length && items[n]?.mark === ""; n++) {
    const item = items[n] as Item;
    if (says(item, "start") || (says(item, "link") && !says(item, "glue"))) return false;
    // "a bottle overturned in the grass"
    const lies = item.text.endsWith("ed") && is(items[at - 1], "an") && LIES.test(items[n + 1]?.words ?? "");
    if (/..(?:ed|[^s]s)$/.test(item.text) && !lies) return false;
  }
  return true;
}
