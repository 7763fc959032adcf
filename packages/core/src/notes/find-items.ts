import type { Token } from "./cut-words.ts";
import { joinCut } from "./join-cut.ts";
import type { WordSet } from "./language.ts";
import type { By, Lexicon, Node, Phrase, Sense } from "./lexicon.ts";
import { LONGEST_PHRASE } from "./learned.ts";
import { turnedRound } from "./turned-round.ts";
import { derived, singulars } from "./word-forms.ts";

/** A phrase of the note, a word that no phrase has, or a mark. */
export interface Item {
  readonly mark: Token["mark"];
  /** As the vocabulary has it; a word that it has not, as it stands. */
  readonly words: string;
  /** Of one word: as it stands, folded. */
  readonly text: string;
  readonly senses: readonly Sense[];
  /** The first sense of each kind. */
  readonly by: By;
  readonly start: number;
  readonly end: number;
  readonly capital: boolean;
  /** A comparison by its ending: "smokier". */
  readonly more: boolean;
  /** The kinds of words it is one of: see WORDS of the language. */
  readonly kinds: ReadonlySet<WordSet>;
}

interface Match {
  readonly phrase: Phrase;
  readonly count: number;
  readonly more: boolean;
}

const NOTHING: By = {};
const NO_KINDS: ReadonlySet<WordSet> = new Set();
export const isFlavour = ({ by }: { readonly by: By }): boolean => by.flavour !== undefined;

/** What a note's tokens are, from left to right; the longest phrase wins, and a flavour that reaches further over what begins before it. */
export function findItems(cut: readonly Token[], lexicon: Lexicon): Item[] {
  const tokens = joinCut(cut, lexicon);
  const forms = tokens.map(({ mark, text }) => (mark !== "" ? [] : formsOf(text, lexicon)));
  const longest: (Match | null)[] = tokens.map((_, at) =>
    longestAt(tokens, forms, at, lexicon, LONGEST_PHRASE),
  );
  const items: Item[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at];
    if (token === undefined) break;
    if (token.mark !== "") {
      items.push({ ...token, words: "", text: "", senses: [], by: NOTHING, more: false, kinds: NO_KINDS });
      at++;
      continue;
    }
    const match = clear(tokens, forms, longest, at, lexicon);
    const count = match?.count ?? 1;
    const words = match === null ? token.text : wordsOf(match, tokens, at);
    items.push({
      mark: "",
      words,
      text: count === 1 ? token.text : "",
      senses: match?.phrase.senses ?? [],
      by: match?.phrase.by ?? NOTHING,
      start: token.start,
      end: tokens[at + count - 1]?.end ?? token.end,
      capital: token.capital,
      more: match?.more ?? false,
      kinds: lexicon.kindsOf(words, count === 1 ? token.text : ""),
    });
    at += count;
  }
  return items;
}

/** The word as it stands, as the phrases spell it, and what it may be the plural of. */
function formsOf(text: string, lexicon: Lexicon): readonly string[] {
  const { spellings } = lexicon;
  const forms = spellings.has(text) ? [text] : singulars(text, lexicon);
  const spelled = forms.flatMap((form) => spellings.get(form) ?? []);
  return spelled.length === 0 ? forms : [...forms, ...spelled];
}

/** A phrase as the vocabulary has it; one that names a kind of words, as it stands. */
const wordsOf = ({ phrase, count }: Match, tokens: readonly Token[], at: number): string =>
  phrase.words.includes("<")
    ? tokens
        .slice(at, at + count)
        .map(({ text }) => text)
        .join(" ")
    : phrase.words;

/** What may win over a phrase that begins before it: a flavour, "hint of" over "a hint", "no mistaking" over "there's no". */
const reaches = (phrase: Phrase): boolean =>
  isFlavour(phrase) ||
  phrase.by.there !== undefined ||
  phrase.senses.some((sense) => sense.says === "degree" && sense.of === true);

/** The longest match that no flavour reaching further begins inside of. */
function clear(
  tokens: readonly Token[],
  forms: readonly (readonly string[])[],
  longest: readonly (Match | null)[],
  at: number,
  lexicon: Lexicon,
): Match | null {
  let match = longest[at] ?? null;
  for (let inside = at + 1; match !== null && inside < at + match.count; inside++) {
    const other = longest[inside];
    if (!other || !reaches(other.phrase) || inside + other.count <= at + match.count) continue;
    match = longestAt(tokens, forms, at, lexicon, inside - at);
  }
  return match;
}

function longestAt(
  tokens: readonly Token[],
  forms: readonly (readonly string[])[],
  at: number,
  lexicon: Lexicon,
  most: number,
): Match | null {
  const found = walk(tokens, forms, at, lexicon.root, most, 0);
  const open = most > 1 && ((found?.count ?? 1) < 2 || found?.phrase.by.idiom !== undefined);
  const round = open ? turnedRound(tokens, forms, at, lexicon) : null;
  if (round !== null && round.count <= most) return { ...round, more: false };
  if (most < 1 || (found !== null && (found.count > 1 || isFlavour(found.phrase)))) return found;
  const token = tokens[at];
  if (token === undefined || token.mark !== "") return found;
  const apart = most > 1 ? cutInTwo(tokens, at, lexicon) : null;
  if (apart !== null) return apart;
  if (lexicon.everyday.has(token.text)) return found;
  const made = derived(token.text, lexicon);
  const phrase = made && lexicon.root.next.get(made.base)?.phrase;
  if (!made || !phrase || (found !== null && !made.more)) return found;
  // "softer" says both that something else is and that the whiskey is.
  const flavours = phrase.senses.filter(({ says }) => says === "flavour");
  const senses = [...(found?.phrase.senses ?? []), ...flavours];
  const by: By = { ...found?.phrase.by, ...(flavours[0] ? { flavour: flavours[0] } : {}) };
  return { phrase: { words: phrase.words, senses, by }, count: 1, more: made.more };
}

const LONGEST_CUT = 16;

/** "butter scotch", "car a mel": a flavour's word that dictation cut into two or three. */
function cutInTwo(tokens: readonly Token[], at: number, lexicon: Lexicon): Match | null {
  let word = tokens[at]?.text ?? "";
  for (let count = 2; count <= 3; count++) {
    const next = tokens[at + count - 1];
    if (next === undefined || next.mark !== "" || next.text === "") return null;
    word += next.text;
    if (word.length > LONGEST_CUT) return null;
    const form = [word, word.endsWith("s") ? word.slice(0, -1) : word].find(
      (one) => one.length > 6 && lexicon.flavourWords.has(one),
    );
    const phrase = form === undefined ? null : lexicon.root.next.get(form)?.phrase;
    if (phrase) return { phrase, count, more: false };
  }
  return null;
}

function walk(
  tokens: readonly Token[],
  forms: readonly (readonly string[])[],
  at: number,
  node: Node,
  most: number,
  count: number,
): Match | null {
  let best: Match | null = node.phrase && count > 0 ? { phrase: node.phrase, count, more: false } : null;
  if (count >= most || at >= tokens.length) return best;
  for (const form of forms[at] ?? []) {
    const next = node.next.get(form);
    if (next === undefined) continue;
    best = longer(best, walk(tokens, forms, at + 1, next, most, count + 1));
  }
  if (node.kinds.size === 0) return best;
  for (const { words, rest } of node.kinds.values()) {
    if (!begins(forms[at] ?? [], words)) continue;
    for (const end of ends(forms, at, words, most - count))
      best = longer(best, walk(tokens, forms, at + end, rest, most, count + end));
  }
  return best;
}

const longer = (best: Match | null, found: Match | null): Match | null =>
  found !== null && (best === null || found.count > best.count) ? found : best;

/** Quickly, of most words: no word of the kind begins so. */
function begins(forms: readonly string[], kind: Node): boolean {
  for (const form of forms) if (kind.next.has(form)) return true;
  return false;
}

/** How many words each word or phrase of a kind takes here. */
function ends(forms: readonly (readonly string[])[], at: number, kind: Node, most: number): number[] {
  const found: number[] = [];
  let nodes: readonly Node[] = [kind];
  for (let words = 1; words <= most && nodes.length > 0; words++) {
    nodes = nodes.flatMap(({ next }) =>
      (forms[at + words - 1] ?? []).flatMap((form) => next.get(form) ?? []),
    );
    if (nodes.some(({ phrase }) => phrase !== null)) found.push(words);
  }
  return found;
}
