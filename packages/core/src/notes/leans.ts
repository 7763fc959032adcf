import { isFlavour, type Item } from "./find-items.ts";
import type { Flavour, Lexicon } from "./lexicon.ts";
import { type Draft, is, isPlain, OWN_RIGHT, says } from "./mention.ts";
import { derived } from "./word-forms.ts";

/** "a warm evening": said of a thing that is no whiskey. */
export function describes(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const [before, item] = [items[at - 1], items[at]];
  // "a rough old night"
  const next = items[at + (items[at + 1]?.words === "old" ? 2 : 1)];
  if (item === undefined || next === undefined || item.more || !lexicon.leaning.has(item.words)) return false;
  // "the sweet sort", said of what stands before.
  if (before?.words === "the" && is(next, "kinds")) return true;
  const led =
    before !== undefined && isPlain(before) && !before.words.endsWith("ly") ? items[at - 2] : before;
  return (
    led !== undefined &&
    is(led, "ofAThing") &&
    (isPlain(next) || (says(next, "degree")?.of === true && isWhole(item))) &&
    !is(next, "whiskeyNouns") &&
    !next.words.endsWith("ly") &&
    !lexicon.tails.has(next.words)
  );
}

/** "the smoke is softer": of what stands before it, where something does. */
export function saysChange({ items, at: mentions }: Draft, at: number): boolean {
  const item = items[at];
  if (!says(item, "lessened") && !says(item, "increased") && !says(item, "less")) return false;
  if (items[at + 1]?.by.flavour) return true;
  for (let n = at - 1; n >= 0 && n > at - 6; n--) {
    if (mentions[n]) return true;
    if (items[n]?.mark !== "" || says(items[n], "start") || says(items[n], "where")) return false;
  }
  return false;
}

/** "smoky" of smoke, "oaky" of oak; not "honey", nor "smokiness". */
const saysHow = (text: string, lexicon: Lexicon): boolean =>
  derived(text, lexicon)?.more === false && !text.endsWith("ness");

const isOwn = ({ senses }: Item): boolean =>
  senses.some(
    (sense) => sense.says === "flavour" && sense.attributes.some((id) => /^(?:feel|taste)\./.test(id)),
  );

const isWhole = ({ senses }: Item): boolean =>
  senses.some(
    (sense) =>
      sense.says === "flavour" &&
      sense.attributes.some((id) => id.startsWith("whole.") || id === "feel.weight"),
  );

const isQuality = (item: Item, lexicon: Lexicon): boolean =>
  is(item, "qualities") ||
  lexicon.language.endings.some(
    ({ ends, instead, gives }) =>
      gives === "quality" &&
      item.text.endsWith(ends) &&
      lexicon.flavourWords.has(item.text.slice(0, item.text.length - ends.length) + instead),
  );

/** Whether an item only says how the flavour after it is: "rich toffee". */
export function leans(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const item = items[at];
  if (item === undefined || item.more || !lexicon.leaning.has(item.words)) return false;
  // "a clean, crisp apple"
  const pair =
    items[at + 1]?.mark === "comma" &&
    is(items[at - 1], "anA") &&
    lexicon.leaning.has(items[at + 2]?.words ?? "");
  for (let next = at + (pair ? 2 : 1); next < Math.min(items.length, at + 4); next++) {
    const after = items[next];
    if (after === undefined || after.mark !== "") return false;
    const flavours = after.senses.filter((sense): sense is Flavour => sense.says === "flavour");
    // "hot hot hot cinnamon"
    if (next === at + 1 && after.words === item.words && isOwn(item)) return false;
    // "oily, ashy" without its comma
    if (next === at + 1 && saysHow(after.text, lexicon) && isOwn(item)) return false;
    // "gentle warmth", "delicate sweetness"
    if (
      next === at + 1 &&
      flavours.length > 0 &&
      (isWhole(item) || !isFlavour(item)) &&
      isQuality(after, lexicon)
    )
      return true;
    if (
      flavours.some(({ attributes }) => attributes.some((id) => !OWN_RIGHT.test(id))) &&
      (!lexicon.shy.has(after.words) || (next === at + 1 && !lexicon.leaning.has(after.words)))
    )
      return true;
    // "a light touch of honey", "a soft sort of smoke"; "round fruits"
    if (flavours.length === 0 && (says(after, "degree")?.of || is(after, "kindOf"))) continue;
    if (next === at + 1 && is(after, "fruit")) return true;
    if (flavours.length === 0 || !lexicon.leaning.has(after.words)) return false;
  }
  return false;
}

/** "tannin heavy, smoke light": how strong what stands before it is. */
export const gradesBefore = ({ items, at: mentions, lexicon }: Draft, at: number): boolean =>
  typeof lexicon.leaning.get(items[at]?.text ?? "") === "number" &&
  mentions[at - 1] !== undefined &&
  (items[at + 1] === undefined || items[at + 1]?.mark !== "") &&
  !mentions[at - 1]?.attributes.some((id) => OWN_RIGHT.test(id));
