import type { LearnedWord } from "@partsproof/core/notes";
import { keep, kept } from "../session/index.ts";

/** A word taught on this phone that the house has not heard of yet. */
export interface UnsentWord extends LearnedWord {
  readonly key: string;
}

/** The words that a sheet is read by, so that they are there without a network. */
export interface KeptWords {
  /** As the house last told them. */
  readonly told: readonly LearnedWord[];
  readonly unsent: readonly UnsentWord[];
}

const NONE: KeptWords = { told: [], unsent: [] };
const name = (sheet: string): string => `words.${sheet}`;

export function keptWords(sheet: string): KeptWords {
  try {
    return (JSON.parse(kept(name(sheet)) ?? "null") as KeptWords | null) ?? NONE;
  } catch {
    return NONE;
  }
}

export const keepWords = (sheet: string, words: KeptWords): void => keep(name(sheet), JSON.stringify(words));

export const forgetWords = (sheet: string): void => keep(name(sheet), null);

/** What is taught here last holds. */
export const readBy = ({ told, unsent }: KeptWords): readonly LearnedWord[] => [
  ...told,
  ...unsent.map(({ phrase, attribute }) => ({ phrase, attribute })),
];
