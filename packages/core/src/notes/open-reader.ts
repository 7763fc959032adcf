import type { Language, Where } from "./language.ts";
import type { LearnedWord } from "./learned.ts";
import { buildLexicon } from "./lexicon.ts";
import { type NoteRead, readNote } from "./read-note.ts";

/** Reads notes in one language; what was read last is kept, so that the same text costs nothing again. */
export type NoteReader = (text: string, where?: Where) => NoteRead;

/**
 * A reader of notes in a language. The vocabulary is built when the first note comes.
 *
 * @param learned what a household means by words of its own, or that a word is no flavour to it; of one phrase given twice the last
 * holds. It wins over the language's own meaning of the same phrase; a longer phrase still wins over a shorter one.
 *
 * @example openReader(ENGLISH, [{ phrase: "attic", attribute: "wood.old" }])("an attic").observations[0].attribute // "wood.old"
 */
export function openReader(language: Language, learned: readonly LearnedWord[] = []): NoteReader {
  let lexicon: ReturnType<typeof buildLexicon> | null = null;
  let last: { readonly text: string; readonly where: Where; readonly read: NoteRead } | null = null;
  return (text, where = "whole") => {
    if (last?.text === text && last.where === where) return last.read;
    lexicon ??= buildLexicon(language, learned);
    const read = readNote(text, lexicon, where);
    last = { text, where, read };
    return read;
  };
}
