import { betaQuantile } from "./beta-law.ts";
import { type Interval, missEachEnd, type Sides } from "./interval.ts";

/**
 * The exact interval of a chance from `right` successes in `of` trials: Clopper and Pearson's, which covers the truth with at
 * least `level` whatever it is (and mostly with more).
 *
 * Accuracy: absolute 1e-12. Source: Clopper and Pearson, Biometrika 26 (1934) 404.
 *
 * @param sides "both" misses with (1 − level)/2 at either end; one end misses with 1 − level, the other is 0 or 1
 * @throws RangeError unless 0 <= right <= of are whole and 0 < level < 1
 * @example exactShare(0, 10, 0.95, "both") // { low: 0, high: 0.3084971… }
 */
export function exactShare(right: number, of: number, level: number, sides: Sides): Interval {
  if (!Number.isInteger(right) || !Number.isInteger(of) || right < 0 || right > of) {
    throw new RangeError(`exactShare requires whole 0 <= right <= of, got ${right} of ${of}`);
  }
  const miss = missEachEnd(level, sides);
  return {
    low: sides === "upper" || right === 0 ? 0 : betaQuantile(miss, right, of - right + 1),
    high: sides === "lower" || right === of ? 1 : betaQuantile(1 - miss, right + 1, of - right),
  };
}
