import type { NotedAttribute } from "./attributes.data.ts";
import { cutWords } from "./cut-words.ts";
import type { Language, Where } from "./language.ts";
import { type LearnedWord, LONGEST_PHRASE } from "./learned.ts";
import { openReader } from "./open-reader.ts";
import type { Observation } from "./read-note.ts";

/** Words of a note that were read as one attribute and are said to mean another, or nothing. */
export interface Correction {
  readonly text: string;
  /** The part of the tasting that the note is of. */
  readonly where: Where;
  readonly read: Pick<Observation, "quote" | "word">;
  readonly to: NotedAttribute | "nothing";
}

/**
 * A phrase as phrases are compared: its words folded, one space between; "" where there is no word in it, or more than the reader
 * looks for.
 *
 * @example phraseOf("  Grandad’s SHED ") // "grandad's shed"
 */
export function phraseOf(text: string): string {
  const words = cutWords(text);
  const said = words.filter(({ text: word }) => word !== "");
  return said.length > LONGEST_PHRASE ? "" : said.map(({ text: word }) => word).join(" ");
}

/**
 * What a correction teaches: the phrase, and what is meant by it. Of the words that were quoted, their beginning up to a comma, and the
 * vocabulary's own word for them, it is the first with which the note is read as it was corrected to be.
 *
 * @param known what was learned before
 * @returns null where no phrase would make the difference: then the correction holds for this note alone
 * @example learnFrom({ text: "an attic", where: "nose", read: { quote: [3, 8], word: "attic" }, to: "wood.old" }, ENGLISH)
 * // { phrase: "attic", attribute: "wood.old" }
 */
export function learnFrom(
  { text, where, read, to }: Correction,
  language: Language,
  known: readonly LearnedWord[] = [],
): LearnedWord | null {
  const quoted = text.slice(...read.quote);
  const phrases = [quoted, quoted.split(/[,…;:.!?\n]/)[0] ?? "", read.word].map(phraseOf);
  for (const phrase of new Set(phrases)) {
    if (phrase === "") continue;
    const lesson: LearnedWord = { phrase, attribute: to };
    const { observations } = openReader(language, [...known, lesson])(text, where);
    const there = observations.filter(({ quote }) => quote[0] < read.quote[1] && quote[1] > read.quote[0]);
    const asMeant = to === "nothing" ? there.length === 0 : there.some(({ attribute }) => attribute === to);
    if (asMeant) return lesson;
  }
  return null;
}
