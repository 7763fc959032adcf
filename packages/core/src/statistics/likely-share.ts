import { rootByBrent } from "../numeric/index.ts";
import { type Interval, missEachEnd, type Sides } from "./interval.ts";
import { normalQuantile } from "./normal-law.ts";

/** k·ln p, with 0·ln 0 = 0. */
const term = (k: number, p: number): number => (k === 0 ? 0 : k * Math.log(p));

/**
 * The likelihood interval of a chance that is known to be `floor` or more: the p whose log likelihood falls short of the largest
 * one by at most z²/2, z the normal quantile of the level (two-sided, or one-sided for one end).
 *
 * The largest likelihood is that at max(floor, right/of). Coverage is near the level, not exact: `exactShare` has the guarantee.
 *
 * Accuracy: absolute 1e-12. Source: inversion of the likelihood-ratio test; Pawitan, In All Likelihood, 2001, ch. 2 (from memory).
 *
 * @throws RangeError unless 0 <= right <= of are whole, of >= 1, 0 < level < 1 and 0 <= floor < 1
 * @example likelyShare(10, 15, { level: 0.95, sides: "both", floor: 1 / 3 })
 */
export function likelyShare(
  right: number,
  of: number,
  { level, sides, floor }: { readonly level: number; readonly sides: Sides; readonly floor: number },
): Interval {
  if (!Number.isInteger(right) || !Number.isInteger(of) || right < 0 || right > of || of < 1) {
    throw new RangeError(`likelyShare requires whole 0 <= right <= of and of >= 1, got ${right} of ${of}`);
  }
  if (!(floor >= 0 && floor < 1))
    throw new RangeError(`likelyShare requires a floor from 0 to 1, got ${floor}`);
  const best = Math.max(floor, right / of);
  const logLikelihood = (p: number): number => term(right, p) + term(of - right, 1 - p);
  const least = logLikelihood(best) - normalQuantile(1 - missEachEnd(level, sides)) ** 2 / 2;
  const short = (p: number): number => {
    const at = logLikelihood(p);
    // At p = 0 or 1 the logarithm may be −∞; the root search wants a number.
    return Math.max(at, -Number.MAX_VALUE) - least;
  };
  return {
    low: sides === "upper" || short(floor) >= 0 ? floor : rootByBrent(short, floor, best, 1e-15),
    high: sides === "lower" || short(1) >= 0 ? 1 : rootByBrent(short, best, 1, 1e-15),
  };
}
