import type { Stance, Where } from "@partsproof/core/notes";

/** What a note is of. */
export type Sense = Exclude<Where, "whole">;

/** What a chip is said to be by hand. */
export interface Put {
  readonly attribute: string;
  readonly section: Where;
  /** 0 (not there) to 10. */
  readonly strength: number;
}

/** One thing that a note says. */
export interface Chip extends Put {
  /** The note that it stands in. */
  readonly sense: Sense;
  /** Its words in the note: UTF-16 units, the end left out. */
  readonly quote: readonly [start: number, end: number];
  readonly words: string;
  readonly stance: Stance;
  /** "section/attribute" as it was read, whatever it was put right to. */
  readonly from: string;
  /** Read by a word of the household's own. */
  readonly own: boolean;
}
