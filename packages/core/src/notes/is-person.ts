import { cameIn } from "./came-in.ts";
import { isFlavour, type Item } from "./find-items.ts";
import type { Lexicon } from "./lexicon.ts";
import { is, isStop, says } from "./mention.ts";

/** "so Hazel brought", "Olive reckons": a given name, by its capital inside a sentence or by what only people do. */
export function isPerson(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (item === undefined || !lexicon.people.has(item.text)) return false;
  if (cameIn(items, at)) return false;
  if (
    next !== undefined &&
    next.mark === "" &&
    (lexicon.deeds.has(next.words) || lexicon.deeds.has(next.words.split(" ")[0] ?? ""))
  )
    return true;
  // "Olive and Ginger came"
  const other = items[at + 2];
  if (
    item.capital &&
    next?.words === "and" &&
    other?.capital &&
    lexicon.people.has(other.text) &&
    isPerson(items, at + 2, lexicon)
  )
    return true;
  // "Ginger, our new neighbour, came round"
  const kin = item.capital && next?.mark === "comma" && is(items[at + 2], "hisHer");
  if (kin && [3, 4].some((step) => lexicon.things.has(items[at + step]?.words ?? ""))) return true;
  if (item.capital && before !== undefined && /^(?:ask|tell|thank)$/.test(before.words)) return true;
  if (!item.capital || before === undefined || before.mark !== "" || before.capital) return false;
  return (
    !isFlavour(before) &&
    !says(before, "degree") &&
    !says(before, "start") &&
    !says(before, "where") &&
    !says(before, "link") &&
    !/\b(?:of|like)$/.test(before.words)
  );
}

/** "Cherry Lane" in the middle of a sentence is nobody's cherry. */
export function isName(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const item = items[at];
  if (item === undefined || !item.capital) return false;
  const unknown = (other: Item | undefined): boolean =>
    other !== undefined &&
    other.mark === "" &&
    other.capital &&
    !lexicon.known.has(other.words) &&
    !isFlavour(other);
  if (unknown(items[at + 1]) || unknown(items[at - 1])) return true;
  const before = items[at - 1];
  return (
    before !== undefined &&
    before.mark === "" &&
    before.capital &&
    !isFlavour(before) &&
    !isStop(items[at - 2]) &&
    items[at - 2]?.mark === "" &&
    before.words !== "i"
  );
}
