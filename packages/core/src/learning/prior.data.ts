/** What is believed of a taste for mixes before any ranking. All of it the house's own choice; common practice, no source. */

/**
 * Of the squared distance between two whiskeys on average, how much is their own and not in the profile: what a profile leaves out.
 * Two whiskeys of one profile are alike and not the same.
 */
export const OWN_SHARE = 0.3;

/** Of the variance of a lone whiskey's log worth, how much goes straight with the shares; the rest bends. */
export const STRAIGHT_SHARE = 0.3;

/** How large differences in log worth are (sd), and over what distance liking changes (1: from one whiskey to another on average). */
export interface TasteShape {
  readonly scale: number;
  readonly length: number;
}

/** Shapes the rankings choose from, each with ln of its weight: the middle ones are likelier beforehand. */
export const SHAPES: readonly (TasteShape & { readonly logWeight: number })[] = [1, 2, 4].flatMap((scale) =>
  [0.4, 0.8].map((length) => ({ scale, length, logWeight: scale === 2 ? 0 : Math.log(0.6) })),
);

/**
 * A gain in log worth that can be tasted: ln(0.6 / 0.4), put first by three in five. Less is not worth another evening.
 */
export const TASTED = Math.log(1.5);
