import type { Token } from "./cut-words.ts";
import { findSlip } from "./find-slip.ts";
import type { Lexicon } from "./lexicon.ts";
import { singulars } from "./word-forms.ts";

const LEAST = 6;
/** "burn in" is no word. */
const LEAST_HALF = 3;
const LONGEST = 16;

/**
 * "straw berries", "pea nut butter": a flavour's word that dictation cut in two is one again, so that its halves are no flavours of
 * their own. What the language has as two words stays two.
 */
export function joinCut(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const [token, next] = [tokens[at] as Token, tokens[at + 1]];
    const word = next === undefined ? "" : cutWord(token, next, lexicon);
    if (next === undefined || word === "") {
      joined.push(token);
      continue;
    }
    joined.push({ ...token, text: word, end: next.end });
    at++;
  }
  return joined;
}

function cutWord(token: Token, next: Token, lexicon: Lexicon): string {
  if (token.mark !== "" || next.mark !== "") return "";
  if (token.text.length < LEAST_HALF || next.text.length < LEAST_HALF) return "";
  const word = token.text + next.text;
  if (word.length < LEAST || word.length > LONGEST) return "";
  if (!singulars(word, lexicon).some((one) => lexicon.flavourWords.has(one)))
    return misspelt(token.text, next.text, lexicon) ? word : "";
  const two = singulars(next.text, lexicon).some((one) => {
    const phrase = lexicon.root.next.get(token.text)?.next.get(one)?.phrase;
    return phrase?.by.flavour !== undefined;
  });
  return two ? "" : word;
}

/** "marma laid", "eucalip tus": cut and misspelt, where a half is no word of its own. */
function misspelt(first: string, second: string, lexicon: Lexicon): boolean {
  const strange = (half: string): boolean =>
    !singulars(half, lexicon).some((one) => lexicon.known.has(one)) && findSlip(half, lexicon) === null;
  const flavour = (half: string): boolean =>
    singulars(half, lexicon).some((one) => lexicon.flavourWords.has(one));
  const broken = strange(second) || (strange(first) && !flavour(second));
  return broken && findSlip(first + second, lexicon) !== null;
}
