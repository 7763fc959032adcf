import { EXTRACT_AT_MOST, type Known, SOAKED_FIRST_DAYS_ML_PER_G, SOAKED_ML_PER_G } from "./oak.data.ts";

/** What dry wood takes out of a vessel, and what it can give. */
export interface SoakedUp {
  /** mL, soaked through. */
  readonly ml: Known;
  /** mL, in the first days. */
  readonly firstDaysMl: Known;
  /** g of extract at most. */
  readonly extractAtMostG: Known;
}

/** What the wood weighs: a range where it was worked out from its size. */
export interface OakGrams {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * How much spirit dry oak drinks, and the most extract it can give.
 *
 * Domain: 0 <= low <= likely <= high. Accuracy: a range each, both ends at their outermost; no measured value was read, and each
 * range says what it rests on. Spirit that is soaked up is lost to the bottle, at the bottle's strength as far as anyone knows.
 * Source: `oak.data.ts`. Cost: under a microsecond.
 *
 * @throws RangeError outside the domain
 * @example soakedUp({ low: 10, likely: 10, high: 10 }).ml.high // 10
 */
export function soakedUp(grams: OakGrams): SoakedUp {
  if (!(0 <= grams.low && grams.low <= grams.likely && grams.likely <= grams.high && grams.high < Infinity))
    throw new RangeError(
      `grams of oak requires 0 g or more in rising order, got ${grams.low}, ${grams.likely}, ${grams.high} g`,
    );
  const times = ({ low, likely, high, how }: Known): Known => ({
    low: low * grams.low,
    likely: likely * grams.likely,
    high: high * grams.high,
    how,
  });
  return {
    ml: times(SOAKED_ML_PER_G),
    firstDaysMl: times(SOAKED_FIRST_DAYS_ML_PER_G),
    extractAtMostG: times(EXTRACT_AT_MOST),
  };
}
