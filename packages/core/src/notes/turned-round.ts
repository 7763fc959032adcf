import type { Token } from "./cut-words.ts";
import type { Lexicon, Phrase } from "./lexicon.ts";

const ARTICLE = /^(?:the|an?)$/;
/** An adjective that other languages have behind its noun. */
const BEHIND =
  /^(?:bitter|black|candied|dark|dried|green|pink|red|roasted|salted|smoked|toasted|white|yellow)$/;
const COLOUR = /^(?:black|dark|green|pink|red|white|yellow)$/;
const GOES_ON = /^(?:and|but|or|with)$/;

/**
 * "leaf of tobacco", "cookies of butter", "apple green": a flavour that the language has the other way round, and how many words
 * it takes here; null where it has none.
 */
export function turnedRound(
  tokens: readonly Token[],
  forms: readonly (readonly string[])[],
  at: number,
  { root, kindsOf }: Lexicon,
): { readonly phrase: Phrase; readonly count: number } | null {
  // "a lick of salt"
  const led = root.next.get(tokens[at - 1]?.text ?? "")?.next;
  if (forms[at]?.some((form) => led?.get(form)?.phrase?.by.degree !== undefined)) return null;
  const next = tokens[at + 1]?.text ?? "";
  let kind = at + 1;
  if (next === "of") kind += ARTICLE.test(tokens[at + 2]?.text ?? "") ? 2 : 1;
  else if (!BEHIND.test(next) || goesOn(tokens[at + 2])) return null;
  // "a barrel of bourbon"
  if (forms[kind]?.some((form) => kindsOf(form, form).has("drinks"))) return null;
  for (const first of forms[kind] ?? [])
    for (const second of forms[at] ?? []) {
      const phrase = root.next.get(first)?.next.get(second)?.phrase;
      if (phrase?.by.flavour !== undefined) return { phrase, count: kind - at + 1 };
    }
  // "the pear green" is pear.
  const fruit = COLOUR.test(next)
    ? forms[at]?.map((form) => root.next.get(form)?.phrase).find(isFruit)
    : null;
  return fruit ? { phrase: fruit, count: 2 } : null;
}

const isFruit = (phrase: Phrase | null | undefined): boolean =>
  phrase?.by.flavour?.says === "flavour" &&
  phrase.by.flavour.attributes.every((id) => id.startsWith("fruit."));

/** "grape white wine": the adjective may be of what follows. */
const goesOn = (token: Token | undefined): boolean =>
  token !== undefined && token.mark === "" && !GOES_ON.test(token.text);
