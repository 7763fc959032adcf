import type { Chip, Put, Sense } from "./chip.ts";

/** What was put right by hand: these words of this note, read as that, are this, or nothing. */
export interface Mark {
  readonly sense: Sense;
  /** In lower case. */
  readonly words: string;
  readonly from: string;
  readonly to: Put | null;
}

type Read = Pick<Chip, "sense" | "words" | "from">;

export const isOf = (mark: Mark, { sense, words, from }: Read): boolean =>
  mark.sense === sense && mark.from === from && mark.words === words.toLowerCase();

/** The marks with one more; the last word on a chip is the one that counts. */
export const correct = (marks: readonly Mark[], chip: Read, to: Put | null): readonly Mark[] => [
  ...marks.filter((mark) => !isOf(mark, chip)),
  { sense: chip.sense, words: chip.words.toLowerCase(), from: chip.from, to },
];
