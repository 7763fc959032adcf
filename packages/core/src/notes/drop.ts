import type { Item } from "./find-items.ts";
import { type Draft, isStop, says } from "./mention.ts";

/** From an item to the end of what it speaks of. */
export function drop({ items, at, elsewhere }: Draft, from: number, look: boolean, short = false): void {
  let seen = false;
  // "like the colour brown, like walnuts"
  const likened = [from - 1, from - 2].some((m) => /\blike$/.test(items[m]?.words ?? ""));
  for (let n = from + 1; n < items.length && n < from + 30; n++) {
    const item = items[n];
    if (item === undefined || isStop(item)) return;
    if (says(item, "where")?.form === "verb" && !seen && !look) {
      // "told us it smelled of garlic"
      elsewhere.add(n);
      continue;
    }
    if (says(item, "break") || says(item, "where") || says(item, "this") || item.mark === "colon") return;
    if (item.mark === "comma" && !look && !(seen && at[n + 1])) return;
    if (item.mark === "comma" && items[n + 1]?.words === "like" && likened) return;
    // "I expected thunder and was given a violin"
    if (says(item, "join") && says(items[n + 1], "link") && !says(items[n + 1], "glue")) return;
    if (
      (seen || short) &&
      (says(item, "start") ||
        (seen && !look && says(item, "not")) ||
        (seen && !look && says(item, "link") && !says(item, "glue")))
    )
      return;
    if (
      short &&
      (says(item, "not") ||
        says(item, "link") ||
        says(item, "more") ||
        says(item, "less") ||
        says(item, "join") ||
        item.mark !== "")
    )
      return;
    const mention = at[n];
    if (mention) {
      if (!mention.gone) mention.dropped = true;
      seen = true;
    }
  }
}

/** What a story speaks of, up to the next mark or "it", "there was". */
export function dropStory({ items, at }: Draft, from: number): void {
  for (let n = from + 1; n < items.length && n < from + 14; n++) {
    const item = items[n];
    if (
      item === undefined ||
      item.mark !== "" ||
      says(item, "start") ||
      says(item, "break") ||
      says(item, "where")
    )
      return;
    const mention = at[n];
    if (mention && !mention.gone) mention.dropped = true;
  }
}

/** "bacon in the oven": what stands before it in the clause is no flavour of the glass. */
export function dropBefore({ items, at }: Draft, from: number): void {
  // "reminds me of a cake in the oven" is what it is like.
  let commas = 0;
  let verbs = 0;
  for (let n = from - 1; n >= 0 && !isStop(items[n]); n--) {
    if (says(items[n], "memory") || items[n]?.words === "like") return;
    const item = items[n] as Item;
    if (item.mark === "comma" || item.mark === "colon") commas++;
    if (says(item, "start") || (says(item, "link") && !says(item, "glue")) || /ed$|'s$/.test(item.words))
      verbs++;
  }
  // "toast, marmalade, ash in the grate": a list without a verb is what the glass is like.
  if (commas > 0 && verbs === 0 && /^(?:in|on) the\b/.test(items[from]?.words ?? "")) return;
  // "leather, according to Mark"
  const start =
    items[from]?.words === "according to" && items[from - 1]?.mark === "comma" ? from - 2 : from - 1;
  for (let n = start; n >= 0 && n > from - 12; n--) {
    const item = items[n];
    if (item === undefined || item.mark !== "" || says(item, "break") || says(item, "where")) return;
    const mention = at[n];
    if (mention && !mention.not && !mention.gone) mention.dropped = true;
  }
}
