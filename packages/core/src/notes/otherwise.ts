import { type Item, isFlavour } from "./find-items.ts";
import { caskActs } from "./cask-acts.ts";
import { cameIn } from "./came-in.ts";
import { opensAlone } from "./it-opens.ts";
import { lampLight } from "./lamp-light.ts";
import type { Lexicon, Sense } from "./lexicon.ts";
import { is, type Draft, isPlain, isStop, says } from "./mention.ts";
import { derived } from "./word-forms.ts";

type Flavour = Extract<Sense, { readonly says: "flavour" }>;

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

const OWN_RIGHT = /^(?:taste|feel|whole|time)\./;

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

/** "the pepper bites", "folded round its", "gone soft": a word of feel or of the whole that is a verb, or stands after one. */
export function isVerb({ items, at: mentions, lexicon }: Draft, at: number): boolean {
  const item = items[at];
  if (item === undefined) return false;
  if (is(item, "bites") && mentions[at - 1] !== undefined) return true;
  // "we closed with this one", "he buttered me up"
  if (
    item.text.endsWith("ed") &&
    is(items[at - 1], "storyTellers") &&
    /^[a-z]+$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "a big fat nose"
  if (item.text === "fat" && items[at + 1]?.mark === "" && says(items[at + 1], "where")?.form === "head")
    return true;
  // "apricots drying on a roof"
  if (item.text === "drying" && mentions[at - 1] !== undefined && is(items[at + 1], "liesOn")) return true;
  // "the road was being tarred"
  if (item.text.endsWith("ed") && items[at - 1]?.words === "being") return true;
  // "a lime cut open"
  if (
    item.text === "open" &&
    /^(?:broken|cracked|cut|flung|prised|split|torn|wide)$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "when you open it"
  if (item.text === "open" && is(items[at - 1], "burners")) return true;
  // "the mint that bites"
  if (is(item, "bites") && is(items[at - 1], "relative") && mentions[at - 2] !== undefined) return true;
  // "hung up to dry"
  if (item.text === "dry" && items[at - 1]?.words === "to") return true;
  // "it dries itself at the hearth"
  if (item.text.endsWith("s") && is(items[at + 1], "selves")) return true;
  // "put out the light"
  const after = items[at + 1];
  if (
    item.text === "light" &&
    items[at - 1]?.words === "the" &&
    (after?.mark !== "" || says(after, "link") || says(after, "where"))
  )
    return true;
  // "the pale green of the hedge", "the wood of a sauna when it is hot"
  if (item.text === "green" && is(items[at + 1], "of") && items[at + 1]?.mark === "") return true;
  if (/^(?:hot|warm|cold|wet|dry)$/.test(item.text) && WHEN.test(wordsBefore(items, at))) return true;
  if (item.text === "biting" && items[at + 1]?.words === "through") return true;
  // "ginger still biting"
  if (
    item.text === "biting" &&
    mentions[at - 2] !== undefined &&
    /^(?:really|still)$/.test(items[at - 1]?.words ?? "")
  )
    return true;
  // "it opens like a drawer", "it opens with lemon"
  if (/^(?:it )?opens(?: up)?$/.test(item.words) && !opensAlone(items, at)) return true;
  // "what the cask has said to the grain"
  if (caskActs(items, at)) return true;
  // "late light through the blinds", "a light in the window"
  if (item.text === "light" && lampLight(items, at)) return true;
  // "as it warms in the hand"
  if (
    is(item, "warms") &&
    ((items[at - 1]?.words ?? "").startsWith("as it") ||
      /^in the (?:hand|glass)/.test(
        `${items[at + 1]?.words} ${items[at + 2]?.words} ${items[at + 3]?.words}`,
      ))
  )
    return true;
  // "when you burn the jam"; not "to burn the throat"
  if (item.text === "burn" && is(items[at - 1], "burners") && is(items[at + 1], "determiners")) return true;
  // "the match burns down"
  if (item.text === "burns" && is(items[at + 1], "burnsDown")) return true;
  if (
    is(item, "turned") &&
    is(items[at + 1], "determiners") &&
    !says(items[at + 1], "degree") &&
    !says(items[at + 2], "degree")
  )
    return true;
  // "a path drying", "nets drying"
  if (is(item, "participles") && items[at - 1] !== undefined) {
    const before = items[at - 1] as Item;
    if (isPlain(before) && !before.words.endsWith("ly") && !is(before, "beforeParticiple")) return true;
  }
  // "kelp burning on the beach"
  if (is(item, "dryingBurning") && mentions[at - 1] !== undefined && is(items[at + 1], "somewhere"))
    return true;
  if (item.text === "leaves" && is(items[at + 1], "leavesWhat")) return true;
  if (item.text === "leaves" && is(items[at - 1], "leavers")) return true;
  if (item.text === "round" && is(items[at - 1], "roundAfter")) return true;
  // "the smoke has gone soft", but "it's gone sour" of all
  const ofAll =
    /^(?:it|it's|it has)$/.test(items[at - 2]?.words ?? "") ||
    /^it(?:'s| has)? /.test(items[at - 1]?.words ?? "");
  return !item.more && !ofAll && lexicon.leaning.has(item.words) && is(items[at - 1], "becoming");
}

const WHEN = /\bwhen (?:it is|it's)$/;
const wordsBefore = (items: readonly Item[], at: number): string =>
  `${items[at - 3]?.words} ${items[at - 2]?.words} ${items[at - 1]?.words}`;

/** "medium" where the length of the finish is meant. */
export function isLength(items: readonly Item[], at: number): boolean {
  if (says(items[at], "length") === undefined) return false;
  for (let near = at - 4; near < at; near++) if (is(items[near], "bodies")) return false;
  for (let near = at - 9; near <= at + 3; near++) {
    if (near < at && isStop(items[near])) continue;
    const where = says(items[near], "where");
    if (where?.where === "finish") return true;
  }
  return false;
}

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
