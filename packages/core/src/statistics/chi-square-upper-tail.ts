import gammainc from "@stdlib/math-base-special-gammainc";

/**
 * P(X >= x) for X with the chi-square law of `df` degrees of freedom: the upper tail, computed as such, so that
 * small tails keep their digits.
 *
 * Accuracy: relative 1e-12 for df 1 to 50 and tails above 1e-300 (checked in the reference test).
 *
 * @param x 0 or more
 * @param df above 0
 * @throws RangeError outside that domain
 * @example chiSquareUpperTail(5.991464547107979, 2) // 0.05
 */
export function chiSquareUpperTail(x: number, df: number): number {
  if (!(x >= 0)) throw new RangeError(`chiSquareUpperTail requires x >= 0, got ${x}`);
  if (!(df > 0)) throw new RangeError(`chiSquareUpperTail requires df > 0, got ${df}`);
  return gammainc(x / 2, df / 2, true, true);
}
