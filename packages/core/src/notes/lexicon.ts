import { cutWords } from "./cut-words.ts";
import type { Language, Said, WordSet } from "./language.ts";
import { type LearnedWord, LONGEST_PHRASE } from "./learned.ts";
import { kindsOf } from "./kinds-of.ts";
import { listed } from "./listed.ts";
import { soundOf } from "./sound-of.ts";

/** What a phrase can be in a note: a flavour, or something said about one. */
export type Sense =
  | (Omit<Said, "words" | "behind"> & { readonly says: Said["says"] })
  | { readonly says: "flavour"; readonly attributes: readonly string[]; readonly strength: number | null }
  /** What dictation hears for a flavour. */
  | { readonly says: "heard"; readonly meant: string };

export type Flavour = Extract<Sense, { readonly says: "flavour" }>;

export interface Phrase {
  /** As the vocabulary has it: with its kinds of words named, where it has such. */
  readonly words: string;
  readonly senses: Sense[];
  /** The first sense of each kind. */
  readonly by: By;
}

export type By = Partial<Record<Sense["says"], Sense>>;

export interface Node {
  readonly next: Map<string, Node>;
  /** What stands behind any word of a kind: the words of the kind, each to its end, and what comes then. */
  readonly kinds: Map<string, { readonly words: Node; readonly rest: Node }>;
  phrase: Phrase | null;
}

/** A language, ready to be looked up word by word. */
export interface Lexicon {
  readonly root: Node;
  readonly language: Language;
  /** Other ways to write the small words, to how the phrases have them. */
  readonly spellings: ReadonlyMap<string, string>;
  /** The kinds of words that a phrase of the note is one of, as it stands there and as the vocabulary has it. */
  readonly kindsOf: (words: string, text: string) => ReadonlySet<WordSet>;
  readonly leaning: ReadonlyMap<string, number | null>;
  readonly tails: ReadonlySet<string>;
  readonly ownTails: ReadonlySet<string>;
  readonly shy: ReadonlySet<string>;
  readonly shortened: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
  readonly scenery: ReadonlySet<string>;
  readonly people: ReadonlySet<string>;
  readonly deeds: ReadonlySet<string>;
  readonly told: ReadonlySet<string>;
  /** Every word that stands in a phrase or is an everyday one: never a slip. */
  readonly known: ReadonlySet<string>;
  /** Of those, the everyday ones. */
  readonly everyday: ReadonlySet<string>;
  readonly slips: Slips;
  readonly flavourWords: ReadonlySet<string>;
  /** What a household taught. */
  readonly learned: ReadonlySet<string>;
}

/** Words that slips are mended to, to be looked up by how they begin and how they sound. */
export interface Slips {
  readonly byLetter: ReadonlyMap<string, readonly string[]>;
  readonly bySound: ReadonlyMap<string, readonly string[]>;
}

function slipsOf(words: ReadonlySet<string>, language: Language): Slips {
  const long = [...words].filter((word) => word.length >= 5);
  return {
    byLetter: Map.groupBy(long, (word) => word[0] ?? ""),
    bySound: Map.groupBy(long, (word) => soundOf(word, { language })),
  };
}

const node = (): Node => ({ next: new Map(), kinds: new Map(), phrase: null });

/** The phrases of an entry; "gone" and behind it "at once" is "gone at once". */
const together = ({ words, behind }: Said): string[] =>
  behind === undefined
    ? listed(words)
    : listed(words).flatMap((word) => listed(behind).map((next) => `${word} ${next}`));

type Built = Lexicon & { readonly slippery: ReadonlySet<string> };
const built = new WeakMap<Language, Built>();

/** The lexicon of a language, and of what a household taught besides. The first of a language takes some milliseconds. */
export function buildLexicon(language: Language, learned: readonly LearnedWord[] = []): Lexicon {
  let plain = built.get(language);
  if (plain === undefined) built.set(language, (plain = plainly(language)));
  return learned.length === 0 ? plain : taught(plain, learned);
}

function plainly(language: Language): Built {
  const root = node();
  const everyday = new Set<string>([...language.everyday.split(/\s+/), ...Object.keys(language.numbers)]);
  const known = new Set<string>(everyday);
  const flavourWords = new Set<string>();
  const kinds = namedKinds(language, known);
  for (const [key, words] of Object.entries(language.flavours)) {
    const attributes = key.split("+");
    for (const entry of listed(words)) {
      const [text = "", strength] = entry.split("=");
      add(root, known, text, {
        says: "flavour",
        attributes,
        strength: strength === undefined ? null : Number(strength),
      });
      if (!text.includes(" ")) flavourWords.add(text);
    }
  }
  for (const said of language.phrases) {
    const { words: _, behind: __, ...sense } = said;
    for (const text of together(said).flatMap(withAndWithout)) add(root, known, text, sense, kinds);
  }
  for (const [text, meant] of Object.entries(language.heard))
    add(root, known, text, { says: "heard", meant });
  const slippery = new Set(listed(language.slips));
  let slips: Slips | null = null;
  return {
    root,
    language,
    spellings: new Map(Object.entries(language.spellings)),
    kindsOf: kindsOf(language.words),
    leaning: new Map(Object.entries(language.leaning)),
    tails: new Set(listed(language.tails)),
    ownTails: new Set(listed(language.ownTails)),
    shy: new Set(listed(language.shy)),
    shortened: new Set(listed(language.shortened)),
    things: new Set(listed(language.things)),
    scenery: new Set(listed(language.scenery)),
    people: new Set(listed(language.people)),
    deeds: new Set(listed(language.deeds)),
    told: new Set(listed(language.told)),
    known,
    everyday,
    get slips() {
      slips ??= slipsOf(slippery, language);
      return slips;
    },
    flavourWords,
    learned: new Set(),
    slippery,
  };
}

/** The same with what a household taught: the plain one stays as it is. */
function taught(plain: Built, learned: readonly LearnedWord[]): Lexicon {
  const root: Node = { ...plain.root, next: new Map(plain.root.next) };
  const known = new Set(plain.known);
  const shy = new Set(plain.shy);
  const leaning = new Map(plain.leaning);
  const flavourWords = new Set(plain.flavourWords);
  const slippery = new Set(plain.slippery);
  const own = new Set<string>();
  for (const { phrase, attribute } of learned) {
    const words = cutWords(phrase).flatMap(({ text }) => (text === "" ? [] : [text]));
    if (words.length === 0 || words.length > LONGEST_PHRASE) continue;
    const text = words.join(" ");
    own.add(text);
    shy.delete(text);
    leaning.delete(text);
    flavourWords.delete(text);
    slippery.delete(text);
    if (attribute !== "nothing" && words.length === 1) {
      slippery.add(text);
      flavourWords.add(text);
    }
    learn(root, known, words, attribute);
  }
  let slips: Slips | null = null;
  const { language } = plain;
  return {
    ...plain,
    root,
    known,
    shy,
    leaning,
    flavourWords,
    learned: own,
    get slips() {
      slips ??= slipsOf(slippery, language);
      return slips;
    },
  };
}

/** What a household means by a phrase, in place of the flavour that it is to others. Nodes on its way are copied. */
function learn(root: Node, known: Set<string>, words: readonly string[], attribute: string): void {
  let at = root;
  for (const word of words) {
    known.add(word);
    const there = at.next.get(word);
    const own: Node = { ...(there ?? node()), next: new Map(there?.next) };
    at.next.set(word, own);
    at = own;
  }
  const sense: Sense =
    attribute === "nothing"
      ? { says: "idiom" }
      : { says: "flavour", attributes: [attribute], strength: null };
  const others = (at.phrase?.senses ?? []).filter(
    ({ says }) => says !== "flavour" && says !== "heard" && says !== sense.says,
  );
  const senses = [sense, ...others];
  const by: By = {};
  for (const one of senses) by[one.says] ??= one;
  at.phrase = { words: words.join(" "), senses, by };
}

/** "<it?>" may be left out. */
function withAndWithout(phrase: string): string[] {
  const open = /<(\w+)\?>/.exec(phrase);
  if (open === null) return [phrase.replace(/ {2,}/g, " ").trim()];
  return ["", `<${open[1]}>`].flatMap((part) => withAndWithout(phrase.replace(open[0], part)));
}

type Kinds = ReadonlyMap<string, Node>;

function namedKinds(language: Language, known: Set<string>): Kinds {
  const kinds = new Map<string, Node>();
  for (const [kind, words] of Object.entries(language.kinds)) {
    const root = node();
    for (const text of listed(words)) add(root, known, text, { says: "glue" });
    kinds.set(kind, root);
  }
  return kinds;
}

function add(root: Node, known: Set<string>, text: string, sense: Sense, kinds?: Kinds): void {
  let at = root;
  for (const word of text.split(" ")) {
    const words = word.startsWith("<") ? kinds?.get(word.slice(1, -1)) : undefined;
    at = words === undefined ? after(at, word) : afterKind(at, word, words);
    if (words === undefined) known.add(word);
  }
  at.phrase ??= { words: text, senses: [], by: {} };
  at.phrase.senses.push(sense);
  at.phrase.by[sense.says] ??= sense;
}

function after(at: Node, word: string): Node {
  let next = at.next.get(word);
  if (next === undefined) at.next.set(word, (next = node()));
  return next;
}

function afterKind(at: Node, kind: string, words: Node): Node {
  let edge = at.kinds.get(kind);
  if (edge === undefined) at.kinds.set(kind, (edge = { words, rest: node() }));
  return edge.rest;
}
