import { type Item, isFlavour } from "./find-items.ts";
import { findSlip, maySlip } from "./find-slip.ts";
import { inContext, inPlainContext } from "./flavour-context.ts";
import type { Lexicon, Sense } from "./lexicon.ts";
import { type Draft, isPlain, isStop, type Mention, says } from "./mention.ts";

type Flavour = Extract<Sense, { readonly says: "flavour" }>;

/** Which items are flavours here, with what they take in: tails ("plum jam"), words that turn them ("dried mango"), slips of dictation. */
export function findMentions(items: readonly Item[], lexicon: Lexicon): Draft {
  const draft: Draft = { items, lexicon, mentions: [], at: [] };
  for (let at = 0; at < items.length; at++) {
    if (draft.at[at] !== undefined) continue;
    const flavours = flavoursAt(draft, at);
    if (flavours === null || isName(items, at, lexicon)) continue;
    const last = tailEnd(draft, at, flavours.attributes);
    const own = last > at && lexicon.ownTails.has(items[last]?.words ?? "") ? ["grain.bake"] : [];
    const mention: Mention = {
      at,
      last,
      word: flavours.word,
      attributes: [
        ...new Set([
          ...(last > at || flavours.word.includes(" ")
            ? flavours.attributes
            : turned(items[at - 1], flavours.attributes, lexicon)),
          ...own,
        ]),
      ],
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
  return draft;
}

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
    if (isShy(item, lexicon) && !inContext(draft, at)) return null;
    if (saysChange(draft, at) || describes(items, at, lexicon)) return null;
    if (isLength(items, at)) return null;
    return found(item.words, item.senses);
  }
  for (const sense of item.senses)
    if (sense.says === "heard" && inPlainContext(draft, at)) return meant(sense.meant, lexicon);
  if (isPlain(item) && maySlip(item.words, lexicon) && inContext(draft, at)) {
    const slip = findSlip(item.words, lexicon);
    if (slip !== null) return meant(slip, lexicon);
  }
  return null;
}

const isShy = ({ words, text, more }: Item, { shy }: Lexicon): boolean =>
  shy.has(words) && !more && (text === "" || text === words || shy.has(text));

const OF_A_THING = /(?:^| )(?:a|an|the|my|his|her|our|their|your|this|that|some|of|in)$/;
const THINGS =
  /^(?:whiskey|whisky|dram|drop|thing|stuff|note|notes|start|one|pour|drink|side|character|feel|feeling|texture|body|spirit|flavour|flavor|flavours|flavors|kick|edge|quality|sort|type|kind|element|aspect|sensation|attack|opening|entry|liquid|malt|bourbon|rye|scotch|number|little|beast|lad|mouthfeel|aftertaste|ending|glow|profile|personality|core|backbone|style|tone|tones|undertone|undertones|presence|experience|affair|blend)$/;

/** "a warm evening": said of a thing that is no whiskey. */
function describes(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (item === undefined || next === undefined || item.more || !lexicon.leaning.has(item.words)) return false;
  return (
    before !== undefined &&
    OF_A_THING.test(before.words) &&
    isPlain(next) &&
    !THINGS.test(next.words) &&
    !next.words.endsWith("ly") &&
    !lexicon.tails.has(next.words)
  );
}

/** "the smoke is softer": of what stands before it, where something does. */
function saysChange({ items, at: mentions }: Draft, at: number): boolean {
  const item = items[at];
  if (!says(item, "lessened") && !says(item, "increased") && !says(item, "less")) return false;
  if (items[at + 1]?.by.flavour) return true;
  for (let n = at - 1; n >= 0 && n > at - 6; n--) {
    if (mentions[n]) return true;
    if (items[n]?.mark !== "" || says(items[n], "start")) return false;
  }
  return false;
}

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

const OWN_RIGHT = /^(?:taste|feel|whole|time)\./;

/** Whether an item only says how the flavour after it is: "rich toffee". */
export function leans(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
  const item = items[at];
  if (item === undefined || item.more || !lexicon.leaning.has(item.words)) return false;
  for (let next = at + 1; next < Math.min(items.length, at + 4); next++) {
    const after = items[next];
    if (after === undefined || after.mark !== "") return false;
    const flavours = after.senses.filter((sense): sense is Flavour => sense.says === "flavour");
    if (
      flavours.some(({ attributes }) => attributes.some((id) => !OWN_RIGHT.test(id))) &&
      !lexicon.shy.has(after.words)
    )
      return true;
    if (flavours.length === 0 || !lexicon.leaning.has(after.words)) return false;
  }
  return false;
}

/** "medium" where the length of the finish is meant. */
function isLength(items: readonly Item[], at: number): boolean {
  if (says(items[at], "length") === undefined) return false;
  for (let near = at - 4; near < at; near++)
    if (/^(?:body|texture|weight|mouthfeel)$/.test(items[near]?.words ?? "")) return false;
  for (let near = at - 4; near <= at + 3; near++) {
    const where = says(items[near], "where");
    if (where?.where === "finish") return true;
  }
  return false;
}

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

function turned(
  before: Item | undefined,
  attributes: readonly string[],
  lexicon: Lexicon,
): readonly string[] {
  const turns =
    before === undefined
      ? undefined
      : Object.hasOwn(lexicon.language.turns, before.words)
        ? lexicon.language.turns[before.words]
        : undefined;
  if (turns === undefined) return attributes;
  return attributes.map((id) => turns[id.split(".")[0] ?? ""] ?? id);
}

/** "Cherry Lane" in the middle of a sentence is nobody's cherry. */
function isName(items: readonly Item[], at: number, lexicon: Lexicon): boolean {
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
