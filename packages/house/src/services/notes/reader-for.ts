import { ENGLISH, type NoteReader, openReader } from "@partsproof/core/notes";
import type { LearnedWord } from "../../protocol/index.ts";

/** A reader holds the whole vocabulary: so many of them stay open, those of the households that asked last. */
const MOST_OPEN = 8;

const plain = openReader(ENGLISH);
const open = new Map<string, NoteReader>();

/** The reader for these words. */
export function readerFor(words: readonly LearnedWord[]): NoteReader {
  if (words.length === 0) return plain;
  const key = JSON.stringify(words.map(({ phrase, attribute }) => [phrase, attribute]));
  const reader = open.get(key) ?? openReader(ENGLISH, words);
  open.delete(key);
  open.set(key, reader);
  if (open.size > MOST_OPEN) for (const oldest of [...open.keys()].slice(0, 1)) open.delete(oldest);
  return reader;
}
