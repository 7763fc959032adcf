/** The word between two names. It is part of no bare name. */
export const BETWEEN = "or";

/** Words that begin something else, in lower case: a name that begins with one, or holds "or", is written in quotes. */
export const STARTERS: ReadonlySet<string> = new Set([
  "anything",
  "at",
  "only",
  "no",
  "some",
  "strength",
  "released",
  "still",
  "not",
  "kind",
  "from",
  "distilled",
  "made",
  "tagged",
  "the",
  "casks",
  "wood",
  "grain",
  BETWEEN,
]);

/** A wood's name ends in this word; without it a list is taken to be of grains, unless it says otherwise. */
export const WOOD_ENDS = "oak";

/** Numbers are decimal, with so many digits behind the point at most. */
export const DECIMALS = 6;
