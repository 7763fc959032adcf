import { cutWords } from "./cut-words.ts";
import { findItems, isFlavour } from "./find-items.ts";
import type { Language, Said } from "./language.ts";
import { buildLexicon } from "./lexicon.ts";
import { phraseOf } from "./learn-from.ts";

/** What a note cannot be read without: denials, comparisons, parts of the tasting, the little words between, and "hint of". */
const FRAME: ReadonlySet<Said["says"]> = new Set<Said["says"]>([
  "not",
  "gone",
  "less",
  "lessened",
  "more",
  "increased",
  "as-much",
  "unsure",
  "correct",
  "said-before",
  "said-maybe",
  "than",
  "this",
  "where",
  "join",
  "break",
  "glue",
  "link",
  "number",
]);

/**
 * Whether a phrase says how, where or whether something is there in this language, so that it cannot be taught as a flavour.
 *
 * @example saysHow("hint of", ENGLISH) // true
 */
export function saysHow(phrase: string, language: Language): boolean {
  const folded = phraseOf(phrase);
  const [item, more] = findItems(cutWords(folded), buildLexicon(language));
  // "soft" and "lovely" stand before a flavour and are words of their own.
  if (item?.words === folded && (isFlavour(item) || item.by.liking !== undefined)) return false;
  return (
    more === undefined &&
    (item?.senses.some(
      (said) => FRAME.has(said.says as Said["says"]) || (said.says === "degree" && said.of === true),
    ) ??
      false)
  );
}
