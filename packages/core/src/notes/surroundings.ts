import { type Draft, says } from "./mention.ts";

const ROOM =
  /^(?:rooms?|kitchen|house|pub|office|car|garden|hall|bathroom|weather|day|night|evening|heating|radiator|sun|dishwasher|towels?|cloth|hands?|fingers|glasses)(?:'s|s)?$/;
const ALL = /^(?:everything|everyone|everybody|we|he|she|they)$/;
const FURTHEST = 6;

/** "the room is really warm", "everything seemed hot": a word of warmth said of what stands about the glass. */
export function warmRoom({ items }: Draft, at: number): boolean {
  const senses = items[at]?.senses ?? [];
  if (!senses.some((sense) => sense.says === "flavour" && sense.attributes[0] === "feel.burn")) return false;
  for (let n = at - 1; n >= 0 && n > at - FURTHEST; n--) {
    const item = items[n];
    if (item === undefined || item.mark !== "") return false;
    if (ROOM.test(item.words) || (ALL.test(item.words) && n < at - 1)) return true;
    if (!["degree", "amplify", "link", "glue"].some((kind) => says(item, kind as "link"))) return false;
  }
  return false;
}

/** "my hands smell of soap", "the glasses come out smelling of lemon": a smell of something else. */
export function smellsNearby({ items, at }: Draft, n: number): boolean {
  if (says(items[n], "where")?.where !== "nose" || !/^(?:smell|stink|reek)/.test(items[n]?.words ?? ""))
    return false;
  let found = false;
  for (let m = n - 1; m >= 0 && m > n - 12; m--) {
    const item = items[m];
    if (item === undefined || item.mark !== "" || at[m] !== undefined) break;
    if (says(item, "memory") || /\blike\b|\bof\b/.test(item.words)) return false;
    const water = item.words === "glass" && items[m - 1]?.words === "water";
    if (m > n - FURTHEST && (water || ROOM.test(item.words) || ALL.test(item.words))) found = true;
  }
  return found;
}
