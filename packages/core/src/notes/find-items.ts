import type { Token } from "./cut-words.ts";
import type { Lexicon, Node, Phrase, Sense } from "./lexicon.ts";
import { derived, singulars } from "./word-forms.ts";

/** A phrase of the note, a word that no phrase has, or a mark. */
export interface Item {
  readonly mark: Token["mark"];
  /** As the vocabulary has it; a word that it has not, as it stands. */
  readonly words: string;
  readonly senses: readonly Sense[];
  readonly start: number;
  readonly end: number;
  readonly capital: boolean;
  /** A comparison by its ending: "smokier". */
  readonly more: boolean;
}

interface Match {
  readonly phrase: Phrase;
  readonly count: number;
  readonly more: boolean;
}

const LONGEST_PHRASE = 9;
export const isFlavour = (senses: readonly Sense[]): boolean => senses.some(({ says }) => says === "flavour");

/** What a note's tokens are, from left to right; the longest phrase wins, and a flavour that reaches further over what begins before it. */
export function findItems(tokens: readonly Token[], lexicon: Lexicon): Item[] {
  const forms = tokens.map(({ mark, text }) => (mark === "" ? singulars(text, lexicon) : []));
  const longest: (Match | null)[] = tokens.map((_, at) =>
    longestAt(tokens, forms, at, lexicon, LONGEST_PHRASE),
  );
  const items: Item[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at];
    if (token === undefined) break;
    if (token.mark !== "") {
      items.push({ ...token, words: "", senses: [], more: false });
      at++;
      continue;
    }
    const match = clear(tokens, forms, longest, at, lexicon);
    const count = match?.count ?? 1;
    items.push({
      mark: "",
      words: match?.phrase.words ?? token.text,
      senses: match?.phrase.senses ?? [],
      start: token.start,
      end: tokens[at + count - 1]?.end ?? token.end,
      capital: token.capital,
      more: match?.more ?? false,
    });
    at += count;
  }
  return items;
}

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
    if (!other || !isFlavour(other.phrase.senses) || inside + other.count <= at + match.count) continue;
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
  if (found !== null || most < 1) return found;
  const word = tokens[at]?.text ?? "";
  const made = tokens[at]?.mark === "" ? derived(word, lexicon) : null;
  const phrase = made && lexicon.root.next.get(made.base)?.phrase;
  return phrase
    ? {
        phrase: { words: phrase.words, senses: phrase.senses.filter(({ says }) => says === "flavour") },
        count: 1,
        more: made.more,
      }
    : null;
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
    const found = walk(tokens, forms, at + 1, next, most, count + 1);
    if (found !== null && (best === null || found.count > best.count)) best = found;
  }
  return best;
}
