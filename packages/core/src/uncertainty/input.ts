import { within } from "../quantity/index.ts";

/**
 * How one error of an input is spread about 0. Rectangular: anywhere within the half width, as likely here as there (a
 * tolerance, a rounding). Triangular: the same bounds, the middle likelier (the sum of two equal roundings). Normal: by its
 * standard deviation (repeated readings).
 */
export type Spread =
  | { readonly shape: "rectangular"; readonly halfWidth: number }
  | { readonly shape: "triangular"; readonly halfWidth: number }
  | { readonly shape: "normal"; readonly standardDeviation: number };

/** What kind of thing an input was read from; the error budget is told in these words. */
export type InputKind = "label" | "cylinder" | "syringe" | "scale" | "thermometer" | "hydrometer" | "other";

/**
 * A number that went into a result, with what is known of its error. Errors of one input add; errors of inputs with different
 * `id`s have nothing to do with each other. A label used twice is one input used twice: give both the same `id`.
 */
export type Input = {
  readonly id: string;
  readonly kind: InputKind;
  /** What it is in plain words, such as "the label of the wheated one". */
  readonly words: string;
  readonly value: number;
  /** Independent errors that add up. None: the value is taken as exact. */
  readonly spreads: readonly Spread[];
  /** What the quantity cannot be below or above, whatever its error. */
  readonly low: number;
  readonly high: number;
};

/** Standard deviation of one spread: a / sqrt 3, a / sqrt 6, or as given (JCGM 100:2008, 4.3.7 and 4.3.9). */
function standardDeviation(spread: Spread): number {
  if (spread.shape === "normal")
    return within("standard deviation", "", spread.standardDeviation, 0, Infinity);
  const a = within("half width", "", spread.halfWidth, 0, Infinity);
  return a / Math.sqrt(spread.shape === "rectangular" ? 3 : 6);
}

/**
 * Standard uncertainty of an input: the root of the sum of its spreads' variances.
 *
 * Domain: widths and deviations 0 or more. Accuracy: exact. Source: JCGM 100:2008, 4.3.7 and 4.3.9 (from memory). Cost:
 * nothing.
 *
 * @throws RangeError when a width or deviation is negative or not finite.
 * @example
 * standardUncertainty(labelStrength({ id: "a", abv20: abv20(46) })); // 0.173…
 */
export function standardUncertainty(input: Input): number {
  return Math.hypot(...input.spreads.map(standardDeviation));
}
