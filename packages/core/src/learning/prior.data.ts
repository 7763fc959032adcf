/** What is believed of a taste for mixes before any ranking. All of it the house's own choice; common practice, no source. */

/**
 * Of the squared distance between two whiskeys on average, how much is their own and not in the profile: what a profile leaves out.
 * Two whiskeys of one profile are alike and not the same.
 */
export const OWN_SHARE = 0.3;

/** Of the variance of a lone whiskey's log worth, how much goes straight with the shares; the rest bends. */
export const STRAIGHT_SHARE = 0.05;

/** How large differences in log worth are (sd), and over what distance liking changes (1: from one whiskey to another on average). */
export interface TasteShape {
  readonly scale: number;
  readonly length: number;
  /** How far a lone whiskey is believed to be below the middle of all, in scales. */
  readonly curve: number;
}

export interface WeighedShape extends TasteShape {
  readonly logWeight: number;
}

/**
 * Shapes the rankings choose from, each with ln of its weight. Likelier beforehand: the middle of all is better than a whiskey alone,
 * as those believe who blend; the rankings may say otherwise.
 */
export const SHAPES: readonly WeighedShape[] = [8, 2].flatMap((scale) =>
  [0.4, 0.8, 1.2].flatMap((length) =>
    [1, 0].map((curve) => ({ scale, length, curve, logWeight: curve === 1 ? 0 : Math.log(0.4) })),
  ),
);

/**
 * A gain in log worth that can be tasted: ln(0.6 / 0.4), put first by three in five. Less is not worth another evening.
 */
export const TASTED = Math.log(1.5);

/**
 * How much of the variance of one taster's liking may be their own and not that of all, each with its weight beforehand: one palate
 * for all is held likeliest.
 */
export const OWN_SHARES: readonly { readonly share: number; readonly weight: number }[] = [
  { share: 0, weight: 0.5 },
  { share: 0.25, weight: 0.25 },
  { share: 0.5, weight: 0.25 },
];

/** Tasters are told apart as long as there are no more recipes, each counted once for every taster of it: more take too long. */
export const MOST_TASTED = 150;

/**
 * Marks: how much chance there is in each, against the chance in a ranking (1: a mark would be as unsure as a glass's place), the usual
 * first; which it is, of all who mark together, is what makes their marks likeliest. More than 1: a number is harder to keep than an
 * order, and scales are not quite even. Chosen by 300 simulated tables besides those that are reported.
 */
export const MARK_NOISES = [1.5, 3] as const;

/** Scale of the logistic law of a mark of noise 1, in log worth: its sd is then that of chance in a ranking, π/√6. */
export const MARK_CHANCE = Math.SQRT1_2;

/**
 * How much log worth one standard deviation of a taster's marks is, against what it would be if the glasses of a sheet differed as mixes
 * do beforehand (scale / √2) and by chance: ln(1 + e^(middle + spread · z)) / ln(1 + e^middle), z standard normal. Nearly normal around
 * 1, 0.25 to 2 within two sds, and never below 0: more is better.
 */
export const MARK_GAIN = { middle: 2.5, spread: 1.3 } as const;

/** Of the middle of a sheet's marks, how far in log worth it may be off from the middle of its glasses (sd). */
export const MARK_LEVEL = 2;
