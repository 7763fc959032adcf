import type { NoteReader } from "@partsproof/core/notes";
import { SECTIONS } from "../../protocol/index.ts";
import type { SheetRow } from "../rows.ts";

/** What was written of one glass. */
export interface WrittenWords {
  /** Words of the vocabulary, each once. */
  readonly words: readonly string[];
  /** Kinds of words (core's attributes) that were said to be there, by a word or by an intensity. */
  readonly kinds: ReadonlySet<string>;
  /** The kind of each of the words. */
  readonly kindOf: ReadonlyMap<string, string>;
}

/**
 * What a sheet says of the glass with this code, by the household's reader of notes and by the intensities set; null where nothing was
 * written. What is said not to be there, or of another glass, is not among it.
 */
export function writtenWords(
  { notes, strengths }: SheetRow,
  code: string,
  read: NoteReader,
): WrittenWords | null {
  const own = notes.find((one) => one.code === code);
  const set = strengths.filter((one) => one.code === code);
  const texts = SECTIONS.flatMap((where) =>
    where === "whole" || own === undefined
      ? []
      : [own.first[where], own.second[where]].map((text) => ({ where, text })),
  ).filter(({ text }) => text.trim() !== "");
  if (texts.length === 0 && set.length === 0) return null;
  const there = texts
    .flatMap(({ where, text }) => read(text, where).observations)
    .filter(({ stance, who }) => stance !== "absent" && who === "this");
  return {
    words: [...new Set(there.map(({ word }) => word))].toSorted(),
    kinds: new Set([
      ...there.map(({ attribute }) => attribute),
      ...set.filter(({ strength }) => strength > 0).map(({ attribute }) => attribute),
    ]),
    kindOf: new Map(there.map(({ word, attribute }) => [word, attribute])),
  };
}
