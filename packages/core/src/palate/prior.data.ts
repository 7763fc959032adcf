/**
 * What is believed of levels, tasters and blends before any note: common practice, no source. All of it is learned anew from the notes;
 * spreads are of the natural logarithm where the number is a standard deviation itself.
 */
export const BELIEVED = {
  /** By how much whiskeys of like labels differ in an attribute, each attribute by itself. */
  apart: { middle: 1.5, lnSd: 0.4 },
  /** A half-and-half mix is off the mean of its parts by so much; a whiskey alone by nothing. */
  mixing: { middle: 0.7, lnSd: 0.4 },
  /** A taster finds more or less of one attribute than the table does. */
  attributeBias: { middle: 0.6, lnSd: 0.4 },
  /** A taster's note is off by so much more than its words say. */
  noise: { middle: 0.7, lnSd: 0.4 },
  /** How far tasters' use of the scale differs: all levels higher or lower, and stretched (ln). */
  offsetSd: 1.2,
  lnStretchSd: 0.25,
  /** How far off the usual level of an attribute may be. */
  usualSd: 1.5,
} as const;

/** The ends of the scale, and the least step that people take on it. */
export const SCALE = { low: 0, high: 10, step: 1 } as const;
/** The scale is stretched about here. */
export const MIDDLE = 5;
