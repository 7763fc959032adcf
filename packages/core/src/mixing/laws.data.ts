/**
 * How a mix may come of its parts, and what is believed of that before any mix was noted. What is the house's own choice is marked so:
 * common practice, no source.
 */

/**
 * Beforehand the mean is held to be so many times as likely as a power law, and as the strongest part. Linear averaging fitted most rated
 * attributes of blended wines best (OENO One 56 (2022), 7651, as excerpted); for the strength of a smell alone the stronger part came
 * close (Cain et al., Chem. Senses 20 (1995), as excerpted). The number is the house's own choice.
 */
export const MEAN_BEFOREHAND = 4;

/**
 * A law is used in place of the mean only where it is so many times as likely afterwards, what was believed beforehand counted in:
 * "strong" from 10 on by Jeffreys (Theory of Probability, 3rd ed., 1961, app. B) as Kass and Raftery give it (J. Am. Stat. Assoc. 90
 * (1995) 773, 3.2), from memory. With the 4 above it takes evidence of 40: where the mean is true and the model holds, that comes up in
 * fewer than 1 of 40 (Markov's inequality; Royall, J. Am. Stat. Assoc. 95 (2000) 760, from memory).
 */
export const ODDS_NEEDED = 10;

/** From fewer mixes nothing is learned, whatever they say. The house's own choice. */
export const FEWEST_MIXES = 3;

/**
 * Exponents of the power law, evenly in their logarithm. Intensity grows as a power of what causes it, and 1/exponent is that power: 0.3
 * to 0.7 for smells from memory, about 0.5 for vanillin and maltol (as excerpted). Here from 0.2 to 2, so that mixes weaker than the mean
 * can be learned too.
 */
export const EXPONENTS = { low: 0.5, high: 5, points: 17 } as const;

/**
 * What no law says of a mix, one standard deviation, and how likely beforehand: a law need not be exact, nor a note as sure as it says.
 * The house's own choice.
 */
export const MISFITS: readonly { readonly sd: number; readonly weight: number }[] = [
  { sd: 0, weight: 0.3 },
  { sd: 0.3, weight: 0.25 },
  { sd: 0.6, weight: 0.2 },
  { sd: 1.2, weight: 0.15 },
  { sd: 2.4, weight: 0.1 },
];
