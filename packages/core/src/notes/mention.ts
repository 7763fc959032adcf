import type { Item } from "./find-items.ts";
import type { Where, WordSet } from "./language.ts";
import type { Lexicon, Sense } from "./lexicon.ts";

/** A flavour that a note speaks of, while it is being read. */
export interface Mention {
  /** Its place among the mentions of the note. */
  readonly nth: number;
  /** Its item; it may reach over those that follow, up to `last`. */
  readonly at: number;
  last: number;
  readonly word: string;
  attributes: readonly string[];
  /** What was weighed and found unlikely. */
  doubted: readonly string[];
  /** What the word itself says of the strength. */
  readonly inherent: number | null;
  degrees: { readonly strength: number; readonly amplify: boolean }[];
  amplified: boolean;
  /** "not much of it" */
  little: boolean;
  not: boolean;
  gone: boolean;
  /** Said not to be this, so that it may be another of its kind. */
  denied: boolean;
  retracts: boolean;
  less: boolean;
  more: boolean;
  unsure: boolean;
  /** Not of this glass, or taken back: no observation. */
  dropped: boolean;
  compared: boolean;
  where: Where;
  times: number;
}

/** A note on its way from items to observations. */
export interface Draft {
  readonly items: readonly Item[];
  readonly lexicon: Lexicon;
  readonly mentions: Mention[];
  /** Items that speak of another glass. */
  readonly elsewhere: Set<number>;
  /** The mention that begins at an item, or reaches over it. */
  readonly at: (Mention | undefined)[];
}

export type Says = Exclude<Sense["says"], "flavour" | "heard">;
export type SaidSense = Extract<Sense, { readonly says: Says }>;

/** What an item says of that kind, if anything. */
export const says = (item: Item | undefined, kind: Says): SaidSense | undefined =>
  item?.by[kind] as SaidSense | undefined;

/** Whether an item is one of a kind of words. */
export const is = (item: Item | undefined, kind: WordSet): boolean => item?.kinds.has(kind) ?? false;

/** Whether an item stands for a word that no phrase has. */
export const isPlain = (item: Item): boolean => item.mark === "" && item.senses.length === 0;

/** Attributes of how it tastes, feels and is as a whole: their words stand for themselves and not for a thing. */
export const OWN_RIGHT = /^(?:taste|feel|whole|time)\./;

/** Whether what it speaks of is not there. */
export const isAbsent = ({ inherent, not, gone, less }: Mention): boolean =>
  inherent === 0 || ((not || gone) && !less);

export const isStop = (item: Item | undefined): boolean =>
  item === undefined || item.mark === "stop" || item.mark === "ask" || item.mark === "blank";
