import type { Item } from "./find-items.ts";
import { type Draft, isPlain, isStop, type Mention, says, type Says } from "./mention.ts";

const KINDS: readonly Says[] = [
  "degree",
  "amplify",
  "where",
  "idiom",
  "join",
  "start",
  "break",
  "glue",
  "link",
  "length",
];
const CLAUSE = 16;
const SENTENCE = 30;
const NEAR = 7;

const PLACES = ["p", "pp", "n", "nn", "b", "a"] as const;
/** What an item is, by where it stands: right before a mention, one more, behind it, and somewhere in the clause before or behind. */
type Places = Readonly<Record<(typeof PLACES)[number], readonly string[]>>;

/** What of a note bears on each of its mentions, worked out once. */
export interface Setting {
  /** How many mentions stand before each that is kept. */
  readonly nth: ReadonlyMap<Mention, number>;
  /** How often each attribute is said. */
  readonly times: ReadonlyMap<string, number>;
  readonly classes: (Places | undefined)[];
  readonly whole: readonly string[];
}

export function settingOf({ items, mentions }: Draft): Setting {
  const kept = mentions.filter(({ dropped }) => !dropped);
  const times = new Map<string, number>();
  for (const { attributes } of kept) for (const one of attributes) times.set(one, (times.get(one) ?? 0) + 1);
  const whole = [
    ...(items.every(({ mark }) => mark === "") ? ["no marks"] : []),
    ...(items.some((item) => says(item, "where") !== undefined) ? [] : ["no part"]),
  ];
  return { nth: new Map(kept.map((mention, n) => [mention, n])), times, classes: [], whole };
}

/** The first of some bounds that a number is under, "+" where none. */
const upTo = (bounds: readonly number[], value: number): string =>
  String(bounds.find((bound) => value < bound) ?? "+");

/**
 * What speaks for or against a mention's being a flavour of the glass, each by its name: what it is itself; what stands beside it ("p" and
 * "pp" before, "n" and "nn" behind) and in its clause ("b" before, "a" behind); how full of flavours and of other words the clause and the
 * sentence are; what else the note says of it.
 *
 * @param near kinds of small words, by word, as the language has them
 */
export function evidence(
  draft: Draft,
  mention: Mention,
  attribute: string,
  setting: Setting,
  near: ReadonlyMap<string, readonly string[]>,
): string[] {
  const { items, at: mentions, lexicon } = draft;
  const { at, last } = mention;
  const item = items[at] as Item;
  const derived = item.text !== "" && item.text !== item.words;
  const itself = {
    shy: lexicon.shy.has(item.words),
    adjective: lexicon.leaning.has(item.words),
    form: derived,
    plural: derived && item.text.endsWith("s"),
    "-y": derived && item.text.endsWith("y"),
    "-er": item.more,
    phrase: item.words.includes(" "),
    slip: item.by.flavour === undefined,
    graded: mention.degrees.length > 0,
    inherent: mention.inherent !== null,
    more: mention.more,
    gone: mention.gone,
    denied: mention.denied,
  };
  const found = [attribute, attribute.split(".")[0] as string, ...setting.whole];
  for (const [name, holds] of Object.entries(itself)) if (holds) found.push(name);

  const placesAt = (n: number): Places => (setting.classes[n] ??= placesOf(draft, n, near));
  found.push(
    ...placesAt(at - 1).p,
    ...placesAt(at - 2).pp,
    ...placesAt(last + 1).n,
    ...placesAt(last + 2).nn,
  );

  const [from, to] = reach(at, last, CLAUSE, (n) => items[n]?.mark !== "");
  const clause = new Set<string>();
  for (let n = from; n < at; n++) for (const one of placesAt(n).b) clause.add(one);
  for (let n = last + 1; n <= to; n++) for (const one of placesAt(n).a) clause.add(one);
  const [start, end] = reach(from, to, SENTENCE, (n) => isStop(items[n]));
  let plain = 0;
  for (let n = from; n <= to; n++) if (mentions[n] === undefined && isPlain(items[n] as Item)) plain++;
  let gap = 1;
  const flavourAt = (n: number): boolean => n >= start && n <= end && mentions[n] !== undefined;
  while (gap < 10 && !flavourAt(at - gap) && !flavourAt(last + gap)) gap++;
  found.push(
    ...clause,
    `clause ${upTo([2, 4, 7, 11], to - from + 1)}`,
    `sentence ${upTo([3, 5, 9, 15, 23], end - start + 1)}`,
    `with ${others(draft, mention, from, to, 2)}`,
    `among ${others(draft, mention, start, end, 4)}`,
    `plain ${Math.min(5, plain)}`,
    `gap ${upTo([2, 3, 5, 10], gap)}`,
    `again ${Math.min(2, (setting.times.get(attribute) ?? 1) - 1)}`,
    `nth ${upTo([1, 3, 6], setting.nth.get(mention) ?? 9)}`,
  );
  const near7 = mentions.slice(Math.max(0, at - NEAR), last + NEAR + 1);
  if (
    near7.some(
      (one) => one !== undefined && one !== mention && !one.dropped && one.attributes.includes(attribute),
    )
  )
    found.push("again near");
  return found;
}

/** From some items on, both ways, up to what ends it, no further than so many. */
function reach(from: number, to: number, most: number, ends: (n: number) => boolean): [number, number] {
  let [first, last] = [from, to];
  while (first > from - most && !ends(first - 1)) first--;
  while (last < to + most && !ends(last + 1)) last++;
  return [first, last];
}

/** How many other mentions stand there, no more than so many. */
function others({ at }: Draft, mention: Mention, from: number, to: number, most: number): number {
  let count = 0;
  let before: Mention | undefined;
  for (let n = from; n <= to && count < most; n++) {
    const other = at[n];
    if (other !== undefined && other !== mention && other !== before) count++;
    before = other ?? before;
  }
  return count;
}

function placesOf(draft: Draft, n: number, near: ReadonlyMap<string, readonly string[]>): Places {
  const classes = classesOf(draft, n, near);
  const at = (place: string): readonly string[] => classes.map((one) => `${place} ${one}`);
  return { p: at("p"), pp: at("pp"), n: at("n"), nn: at("nn"), b: at("b"), a: at("a") };
}

/** What an item is: a mark, a flavour, what it says, how a word that no phrase has ends, the kinds of small words in it. */
function classesOf({ items, at }: Draft, n: number, near: ReadonlyMap<string, readonly string[]>): string[] {
  const item = items[n];
  if (item === undefined) return ["edge"];
  if (item.mark !== "") return [item.mark];
  const found: string[] = at[n] === undefined ? [] : ["flavour"];
  for (const kind of KINDS) if (says(item, kind) !== undefined) found.push(kind);
  if (isPlain(item)) found.push("plain", /(?:ed|ing|ly|s)$/.exec(item.words)?.[0] ?? "bare");
  for (const word of item.words.split(" ")) found.push(...(near.get(word) ?? []));
  return [...new Set(found)];
}
