import type { Language, Said, Where } from "./language.ts";

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
}

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
  /** Single flavour words by first letter, for slips. */
  readonly byLetter: ReadonlyMap<string, readonly string[]>;
  readonly flavourWords: ReadonlySet<string>;
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
  const known = new Set<string>(language.everyday.split(/\s+/));
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
  const byLetter = new Map<string, string[]>();
  for (const word of flavourWords) {
    if (word.length < 4) continue;
    const letter = word[0] ?? "";
    const same = byLetter.get(letter);
    if (same === undefined) byLetter.set(letter, [word]);
    else same.push(word);
  }
  return {
    root,
    language,
    leaning: new Map(Object.entries(language.leaning)),
    tails: new Set(listed(language.tails)),
    ownTails: new Set(listed(language.ownTails)),
    shy: new Set(listed(language.shy)),
    known,
    byLetter,
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
  at.phrase ??= { words: text, senses: [] };
  at.phrase.senses.push(sense);
}

export type { Where };
