import type { Language, Where } from "./language.ts";
import { buildLexicon } from "./lexicon.ts";
import { type NoteRead, readNote } from "./read-note.ts";

/** Reads notes in one language; what was read last is kept, so that the same text costs nothing again. */
export type NoteReader = (text: string, where?: Where) => NoteRead;

/** A reader of notes in a language. The vocabulary is built when the first note comes. */
export function openReader(language: Language): NoteReader {
  let lexicon: ReturnType<typeof buildLexicon> | null = null;
  let last: { readonly text: string; readonly where: Where; readonly read: NoteRead } | null = null;
  return (text, where = "whole") => {
    if (last?.text === text && last.where === where) return last.read;
    lexicon ??= buildLexicon(language);
    const read = readNote(text, lexicon, where);
    last = { text, where, read };
    return read;
  };
}
