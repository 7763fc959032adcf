import { NOTED } from "./attributes.data.ts";
import { cutWords, type Token } from "./cut-words.ts";
import type { Language } from "./language.ts";
import { phraseOf } from "./learn-from.ts";
import { type LearnedWord, LONGEST_PHRASE } from "./learned.ts";
import { buildLexicon } from "./lexicon.ts";
import { listed } from "./listed.ts";
import { readNote } from "./read-note.ts";
import { saysHow } from "./says-how.ts";

/** A note explains few words; whatever repeats itself longer is no note. */
const MOST = 8;
const LONGEST_MEANING = 12;

/**
 * What a note itself says that a phrase of the taster's means: to be offered, not learned unasked.
 *
 * @param known what was learned before: the same again is no offer
 * @returns in the order of the note; nothing of a phrase that says how, where or whether, or of a meaning that is no flavour. Never throws.
 * @example taughtIn("by “attic” I mean musty", ENGLISH) // [{ phrase: "attic", attribute: "savoury.stale" }]
 */
export function taughtIn(
  text: string,
  language: Language,
  known: readonly LearnedWord[] = [],
): readonly LearnedWord[] {
  const tokens = cutWords(text);
  const { by, mean, nothing } = language.teaching;
  const offers: LearnedWord[] = [];
  let looked = 0;
  for (let at = 0; at < tokens.length && looked < MOST; at++) {
    const said = after(tokens, at, by);
    if (said === null) continue;
    for (let end = said + 1; end <= said + LONGEST_PHRASE && tokens[end - 1]?.mark === ""; end++) {
      const meant = after(tokens, end, mean);
      if (meant === null) continue;
      looked++;
      const phrase = phraseOf(text.slice(tokens[said]?.start, tokens[end - 1]?.end));
      const attribute = meaning(text, tokens, meant, language, listed(nothing));
      const again = known.some((one) => phraseOf(one.phrase) === phrase && one.attribute === attribute);
      if (attribute !== null && phrase !== "" && !again && !saysHow(phrase, language))
        offers.push({ phrase, attribute });
      break;
    }
  }
  return offers;
}

/** Where the words behind one of these phrases begin, if one of them stands at `at`. */
function after(tokens: readonly Token[], at: number, phrases: string): number | null {
  for (const phrase of listed(phrases)) {
    const words = phrase.split(" ");
    if (words.every((word, n) => tokens[at + n]?.text === word && word !== "")) return at + words.length;
  }
  return null;
}

function meaning(
  text: string,
  tokens: readonly Token[],
  from: number,
  language: Language,
  nothing: readonly string[],
): LearnedWord["attribute"] | null {
  let to = from;
  while (tokens[to]?.mark === "" && to < from + LONGEST_MEANING) to++;
  const [first, last] = [tokens[from], tokens[to - 1]];
  if (first === undefined || last === undefined || to === from) return null;
  const words = text.slice(first.start, last.end);
  if (nothing.includes(phraseOf(words))) return "nothing";
  const [read] = readNote(words, buildLexicon(language)).observations;
  return NOTED.find((id) => id === read?.attribute) ?? null;
}
