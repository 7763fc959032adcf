import { soundOf } from "./sound-of.ts";
import type { Language, Said } from "./language.ts";

/** What a phrase can be in a note: a flavour, or something said about one. */
export type Sense =
  | (Omit<Said, "words"> & { readonly says: Said["says"] })
  | { readonly says: "flavour"; readonly attributes: readonly string[]; readonly strength: number | null }
  /** What dictation hears for a flavour. */
  | { readonly says: "heard"; readonly meant: string };

export interface Phrase {
  /** As the vocabulary has it. */
  readonly words: string;
  readonly senses: Sense[];
  /** The first sense of each kind. */
  readonly by: By;
}

export type By = Partial<Record<Sense["says"], Sense>>;

export interface Node {
  readonly next: Map<string, Node>;
  phrase: Phrase | null;
}

/** A language, ready to be looked up word by word. */
export interface Lexicon {
  readonly root: Node;
  readonly language: Language;
  readonly leaning: ReadonlyMap<string, number | null>;
  readonly tails: ReadonlySet<string>;
  readonly ownTails: ReadonlySet<string>;
  readonly shy: ReadonlySet<string>;
  /** Every word that stands in a phrase or is an everyday one: never a slip. */
  readonly known: ReadonlySet<string>;
  /** Of those, the everyday ones. */
  readonly everyday: ReadonlySet<string>;
  readonly slips: Slips;
  readonly flavourWords: ReadonlySet<string>;
}

/** Single flavour words of five letters and more, to be looked up by how they begin and how they sound. */
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

const node = (): Node => ({ next: new Map(), phrase: null });
export const listed = (words: string): string[] =>
  words
    .replaceAll("\n", "")
    .split("|")
    .filter((word) => word !== "");

/** Builds the lexicon of a language. Takes some milliseconds: build it once. */
export function buildLexicon(language: Language): Lexicon {
  const root = node();
  const everyday = new Set<string>([...language.everyday.split(/\s+/), ...Object.keys(language.numbers)]);
  const known = new Set<string>(everyday);
  const flavourWords = new Set<string>();
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
  for (const { words, ...sense } of language.phrases)
    for (const text of listed(words)) add(root, known, text, sense);
  for (const [text, meant] of Object.entries(language.heard))
    add(root, known, text, { says: "heard", meant });
  let slips: Slips | null = null;
  return {
    root,
    language,
    leaning: new Map(Object.entries(language.leaning)),
    tails: new Set(listed(language.tails)),
    ownTails: new Set(listed(language.ownTails)),
    shy: new Set(listed(language.shy)),
    known,
    everyday,
    get slips() {
      slips ??= slipsOf(flavourWords, language);
      return slips;
    },
    flavourWords,
  };
}

function add(root: Node, known: Set<string>, text: string, sense: Sense): void {
  let at = root;
  for (const word of text.split(" ")) {
    known.add(word);
    let next = at.next.get(word);
    if (next === undefined) at.next.set(word, (next = node()));
    at = next;
  }
  at.phrase ??= { words: text, senses: [], by: {} };
  at.phrase.senses.push(sense);
  at.phrase.by[sense.says] ??= sense;
}
