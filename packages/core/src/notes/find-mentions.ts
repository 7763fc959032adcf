import { type Item, isFlavour } from "./find-items.ts";
import { findSlip, maySlip } from "./find-slip.ts";
import { inContext, inList, inPlainContext, isFelt, placed } from "./flavour-context.ts";
import { itsSmell } from "./its-smell.ts";
import type { Flavour, Lexicon, Sense } from "./lexicon.ts";
import { is, type Draft, isPlain, type Mention, says } from "./mention.ts";
import { isName, isPerson } from "./is-person.ts";
import { isLength, isVerb } from "./is-verb.ts";
import { describes, gradesBefore, leans, saysChange } from "./leans.ts";
import { ofThing } from "./of-thing.ts";
import { saidOfFood } from "./said-of-food.ts";
import { derived } from "./word-forms.ts";
import { warmRoom, wornNearby } from "./surroundings.ts";

/** Which items are flavours here, with what they take in: tails ("plum jam"), words that turn them ("dried mango"), slips of dictation. */
export function findMentions(items: readonly Item[], lexicon: Lexicon): Draft {
  const draft: Draft = { items, lexicon, mentions: [], elsewhere: new Set(), at: [] };
  for (let at = 0; at < items.length; at++) {
    if (draft.at[at] !== undefined) continue;
    const flavours = flavoursAt(draft, at);
    if (flavours === null || isName(items, at, lexicon) || isPerson(items, at, lexicon)) continue;
    if (ofThing(items, at, lexicon) || ofWood(draft, at) || whereItLay(draft, at)) continue;
    if (ofTailBefore(draft, at)) continue;
    const before = draft.mentions.at(-1);
    // "a eucalyptus forest" is one thing.
    if (
      before !== undefined &&
      before.last === at - 1 &&
      is(items[at], "places") &&
      isNoun(items[before.last], lexicon)
    ) {
      before.last = at;
      draft.at[at] = before;
      continue;
    }
    const last = tailEnd(draft, at, flavours.attributes);
    const own = last > at && lexicon.ownTails.has(items[last]?.words ?? "") ? ["grain.bake"] : [];
    const mention: Mention = {
      nth: draft.mentions.length,
      at,
      last,
      word: flavours.word,
      attributes: [
        ...new Set([
          ...(last > at || flavours.word.includes(" ")
            ? flavours.attributes
            : turned(items[at - 1]?.words, turned(madeOf(draft, at), flavours.attributes, lexicon), lexicon)),
          ...own,
        ]),
      ],
      doubted: [],
      inherent: flavours.inherent,
      degrees: [],
      amplified: false,
      little: false,
      not: false,
      gone: false,
      denied: false,
      retracts: false,
      less: false,
      more: false,
      unsure: false,
      dropped: false,
      compared: false,
      where: "whole",
      times: 1,
    };
    draft.mentions.push(mention);
    for (let inside = at; inside <= last; inside++) draft.at[inside] = mention;
  }
  refined(draft);
  return draft;
}

/** "polish shoe polish", "a crumble blackberry crumble": the second says better what the first was. */
function refined({ items, mentions, lexicon }: Draft): void {
  for (const [n, mention] of mentions.entries()) {
    const next = mentions[n + 1];
    if (next !== undefined && !lexicon.shy.has(mention.word) && kindOf(items, mention, next))
      next.dropped = true;
    // "body light"
    if (
      mention.word === "body" &&
      next !== undefined &&
      next.at - mention.last < 4 &&
      next.attributes[0] === mention.attributes[0]
    )
      mention.dropped = true;
    if (next?.at !== mention.last + 1) continue;
    const tail = next.last > next.at && items[next.last]?.words === items[mention.at]?.words;
    if (tail || next.word.endsWith(` ${mention.word}`)) mention.dropped = true;
  }
}

/** "the rubber of new shoes", "the caraway of the bread": of which it is, and no more. */
function kindOf(items: readonly Item[], mention: Mention, next: Mention): boolean {
  const between = items.slice(mention.last + 1, next.at);
  return (
    is(between[0], "of") &&
    between.length < 4 &&
    between
      .slice(1)
      .every((item) => is(item, "determiners") || item.words === "new" || item.words === "old") &&
    !mention.attributes.some((id) => /^(?:taste|feel|whole|time)/.test(id)) &&
    !says(items[mention.at], "degree")
  );
}

/** "pears on newspaper": a common word for where the flavour before it lay. */
function whereItLay({ items, at: mentions, lexicon }: Draft, at: number): boolean {
  if (!lexicon.shy.has(items[at]?.words ?? "")) return false;
  let n = at - 1;
  while (is(items[n], "beforeThing")) n--;
  return is(items[n], "liesOn") && mentions[n - 1] !== undefined;
}

/** "the vanilla of the wood": of which it is, and no more wood. */
function ofWood({ items, at: mentions }: Draft, at: number): boolean {
  if (!is(items[at], "wooden")) return false;
  // "rum casks", "a barrel of bourbon" say where it lay.
  const next = items[at + 1]?.words === "of" ? items[at + 2] : items[at - 1];
  if (next !== undefined && is(next, "drinks") && items[at]?.text !== "oak") return true;
  let before = at - 1;
  if (items[before]?.words === "the" || items[before]?.words === "a") before--;
  return is(items[before], "of") && mentions[before - 1] !== undefined;
}

const SAME_THING = 12;

/** "apricot jam, and under the jam": the same jam. */
const ofTailBefore = ({ items, mentions, lexicon }: Draft, at: number): boolean => {
  const word = items[at]?.words ?? "";
  return (
    lexicon.tails.has(word) &&
    /(?:^| )the$/.test(items[at - 1]?.words ?? "") &&
    mentions
      .slice(-SAME_THING)
      .some(
        (one) =>
          at - one.last < SAME_THING &&
          (one.word.endsWith(` ${word}`) || (one.last > one.at && items[one.last]?.words === word)),
      )
  );
};

/** "eucalyptus", not "smoky" or "old". */
const isNoun = (item: Item | undefined, lexicon: Lexicon): boolean =>
  item !== undefined &&
  !lexicon.leaning.has(item.words) &&
  !isFelt(item) &&
  (item.text === "" || derived(item.text, lexicon) === null) &&
  item.text === item.words;

interface Found {
  readonly word: string;
  readonly attributes: readonly string[];
  readonly inherent: number | null;
}

function flavoursAt(draft: Draft, at: number): Found | null {
  const { items, lexicon } = draft;
  const item = items[at];
  if (item === undefined || item.mark !== "") return null;
  if (isFlavour(item)) {
    if (leans(items, at, lexicon)) return null;
    if (isShy(item, lexicon) && !(isFelt(item) ? inContext(draft, at) : placed(draft, at))) return null;
    if (saysChange(draft, at) || describes(items, at, lexicon)) return null;
    if (saidOfFood(draft, at) || warmRoom(draft, at) || wornNearby(draft, at)) return null;
    if (itsSmell(items, at) || isLength(items, at) || isVerb(draft, at) || gradesBefore(draft, at))
      return null;
    return found(item.words, item.senses);
  }
  for (const sense of item.senses)
    if (sense.says === "heard" && (heardHere(draft, at) || putRightNext(draft, at, sense.meant)))
      return meant(sense.meant, lexicon);
  if (
    isPlain(item) &&
    maySlip(item.words, lexicon) &&
    (inContext(draft, at) || besideSlip(draft, at) || offered(draft, at))
  ) {
    const slip = findSlip(item.words, lexicon);
    if (slip !== null) return meant(slip, lexicon);
  }
  return null;
}

/** A word that is an everyday one too is taken for what it sounds like only where nothing else fits: "a hint of thyme". */
function heardHere(draft: Draft, at: number): boolean {
  const words = draft.items[at]?.words ?? "";
  if (draft.lexicon.everyday.has(words)) return inList(draft, at);
  if (inPlainContext(draft, at) || (words.includes(" ") && (inContext(draft, at) || offered(draft, at))))
    return true;
  // "it's hunny"
  return says(draft.items[at - 1], "start") !== undefined || besideSlip(draft, at);
}

/** "I get old lether", "there's sinamon" */
function offered({ items }: Draft, at: number): boolean {
  let n = at - 1;
  while (says(items[n], "glue") || says(items[n], "degree")) n--;
  return (
    items[at]?.capital === false && /^(?:get|getting|got|find|there's|theres)$/.test(items[n]?.words ?? "")
  );
}

/** "choclate and coffe": two slips in one list are flavours both. */
function besideSlip({ items, lexicon }: Draft, at: number): boolean {
  return [-1, 1].some((step) => {
    let n = at + step;
    if (items[n]?.mark !== "comma" && !says(items[n], "join")) return false;
    while (items[n]?.mark === "comma" || says(items[n], "join") || says(items[n], "degree")) n += step;
    const item = items[n];
    if (item === undefined || item.mark !== "") return false;
    return item.by.heard !== undefined || (isPlain(item) && findSlip(item.words, lexicon) !== null);
  });
}

/** "clothes, no, cloves" */
const putRightNext = ({ items }: Draft, at: number, word: string): boolean =>
  items.slice(at + 1, at + 4).some(({ words }) => /^no\b/.test(words)) &&
  items.slice(at + 2, at + 5).some(({ words }) => words === word);

const isShy = ({ words, text, more }: Item, { shy }: Lexicon): boolean =>
  shy.has(words) && !more && (text === "" || text === words || shy.has(text));

function found(word: string, senses: readonly Sense[]): Found {
  const flavours = senses.filter((sense): sense is Flavour => sense.says === "flavour");
  return {
    word,
    attributes: [...new Set(flavours.flatMap(({ attributes }) => attributes))],
    inherent: flavours[0]?.strength ?? null,
  };
}

const meant = (word: string, lexicon: Lexicon): Found | null => {
  let node = lexicon.root;
  for (const part of word.split(" ")) {
    const next = node.next.get(part);
    if (next === undefined) return null;
    node = next;
  }
  return node.phrase && isFlavour(node.phrase) ? found(word, node.phrase.senses) : null;
};

const TAKES_TAILS = /^(?:fruit|nut|sweet\.(?:sugar|honey|vanilla|cocoa)|plant\.herb)/;

function tailEnd({ items, lexicon }: Draft, at: number, attributes: readonly string[]): number {
  let last = at;
  if (!attributes.some((id) => TAKES_TAILS.test(id))) return last;
  while (last < at + 2) {
    const next = items[last + 1];
    if (next === undefined || next.mark !== "" || !lexicon.tails.has(next.words)) break;
    last++;
  }
  return last;
}

/** "persimmon, dried on its string", "plum the dried one", "apricots drying on a roof": how it was made, said behind it. */
function madeOf({ items }: Draft, at: number): string | undefined {
  const how = at + (items[at + 1]?.mark === "comma" || items[at + 1]?.words === "the" ? 2 : 1);
  const next = items[how + 1];
  if (!is(next, "ones") && !is(next, "somewhere") && !is(next, "liesOn")) return undefined;
  return items[how]?.text === "drying" ? "dried" : items[how]?.words;
}

function turned(how: string | undefined, attributes: readonly string[], lexicon: Lexicon): readonly string[] {
  const turns =
    how !== undefined && Object.hasOwn(lexicon.language.turns, how) ? lexicon.language.turns[how] : undefined;
  if (turns === undefined) return attributes;
  return attributes.map((id) => turns[id.split(".")[0] ?? ""] ?? id);
}
