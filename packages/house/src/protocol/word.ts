import { NOTED, phraseOf } from "@partsproof/core/notes";
import { z } from "zod";
import { Id, Instant } from "./fields.ts";
import { DeviceKey } from "./joining.ts";

/** The longest phrase that can be taught, in characters. */
export const PHRASE_LONGEST = 60;
/** The most phrases a household can have taught, and the most that one sheet can. */
export const MOST_WORDS = 500;
export const MOST_SHEET_WORDS = 60;

/** A phrase as it is said: one to nine words. It is kept folded: small letters, no accents, one space between. */
export const Phrase = z
  .string()
  .trim()
  .min(1)
  .max(PHRASE_LONGEST)
  .refine((text) => phraseOf(text) !== "" && phraseOf(text).length <= PHRASE_LONGEST, {
    message: `one to nine words, of letters or digits, at most ${PHRASE_LONGEST} characters`,
  })
  .transform(phraseOf);

/** What is meant by a phrase: one of core's attributes, or no flavour at all. */
export const Meaning = z.enum([...NOTED, "nothing"]);
export type Meaning = z.infer<typeof Meaning>;

/** A phrase with what is meant by it, as readings take it. */
export const LearnedWord = z.object({ phrase: z.string(), attribute: Meaning });
export type LearnedWord = z.infer<typeof LearnedWord>;

export const WordDraft = z.object({
  phrase: Phrase,
  means: Meaning,
  /** Whose word it is; left out or null for the household's. */
  tasterId: Id.nullable().default(null),
  /** What it means now, to change a phrase that is taught already. */
  instead: Meaning.optional(),
});

export const WordForget = z.object({ phrase: Phrase });

/** `two ways`: taught differently on several sheets, so not in use until the household decides. */
export const Word = z.object({
  phrase: z.string(),
  /** What it is read as; null where it is read as anybody would. */
  means: Meaning.nullable(),
  state: z.enum(["in use", "two ways", "forgotten"]),
  /** What sheets say that it means and it does not. */
  otherwise: z.array(Meaning),
  /** Each time it was taught, changed or forgotten, newest first. */
  history: z.array(
    z.object({
      id: Id,
      at: Instant,
      /** Null: forgotten. */
      means: Meaning.nullable(),
      /** Null: the household itself. */
      taster: z.string().nullable(),
      flightId: Id.nullable(),
      flight: z.string().nullable(),
    }),
  ),
});
export type Word = z.infer<typeof Word>;
export const Words = z.object({ items: z.array(Word) });

/** A word taught on a sheet: the sheet's own until the reveal. Null takes it back. */
export const SheetWordDraft = z.object({ key: DeviceKey, phrase: Phrase, means: Meaning.nullable() });
/** What a sheet is read by: the household's words, and after them its own. */
export const SheetWords = z.object({ items: z.array(LearnedWord) });
