import type { Lexicon } from "./lexicon.ts";

/** The word itself and what it may be the plural or possessive of. */
export function singulars(word: string, lexicon: Lexicon): readonly string[] {
  // "reekin", "lingerin"
  if (word.length > 4 && word.endsWith("in") && lexicon.known.has(`${word}g`)) return [word, `${word}g`];
  const last = word.charCodeAt(word.length - 1);
  if (word.length < 3 || (last !== 115 && last !== 39)) return [word];
  const forms = [word];
  // "underneath it's bread" is no "underneath it".
  if (/^(?:it|that|there|what|he|she|who|here)'s$/.test(word)) return forms;
  for (const { ends, instead } of lexicon.language.plurals)
    if (word.endsWith(ends) && word.length - ends.length >= 2)
      forms.push(word.slice(0, word.length - ends.length) + instead);
  return forms;
}

export interface Derived {
  readonly base: string;
  readonly more: boolean;
}

/** Which flavour's word an adjective, a quality or a comparison was made of: "smokier" of "smoky", and more of it. */
export function derived(word: string, lexicon: Lexicon): Derived | null {
  if (word.length < 4) return null;
  for (const { ends, instead, gives } of lexicon.language.endings) {
    if (!word.endsWith(ends) || word.length - ends.length < 2) continue;
    const base = word.slice(0, word.length - ends.length) + instead;
    if (!lexicon.flavourWords.has(base)) continue;
    // "-er" makes a comparison of an adjective only: a "smoker" is no more smoke.
    if (gives === "more" && !base.endsWith("y") && !comparable(base, lexicon)) continue;
    return { base, more: gives === "more" };
  }
  return null;
}

const FELT = /^(?:taste|feel|whole)\./;

function comparable(base: string, lexicon: Lexicon): boolean {
  const senses = lexicon.root.next.get(base)?.phrase?.senses ?? [];
  return senses.some((sense) => sense.says === "flavour" && sense.attributes.some((id) => FELT.test(id)));
}
