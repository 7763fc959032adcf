import betainc from "@stdlib/math-base-special-betainc";
import gammaln from "@stdlib/math-base-special-gammaln";
import { rootByBrent } from "../numeric/index.ts";

function requireShapes(what: string, a: number, b: number): void {
  if (!(a > 0 && b > 0)) throw new RangeError(`${what} requires shapes > 0, got ${a} and ${b}`);
}

/**
 * P(X <= x) for X with the beta law of shapes a and b; `upper` gives P(X > x), with its own digits.
 *
 * Accuracy: relative 1e-11 for a and b up to 2000 and tails above 1e-250 (the reference test).
 *
 * @throws RangeError unless a and b are above 0 and x is from 0 to 1
 * @example betaTail(0.5, 2, 3, "lower") // 0.6875
 */
export function betaTail(x: number, a: number, b: number, side: "lower" | "upper"): number {
  requireShapes("betaTail", a, b);
  if (!(x >= 0 && x <= 1)) throw new RangeError(`betaTail requires x from 0 to 1, got ${x}`);
  return betainc(x, a, b, true, side === "upper");
}

/** The logarithm of the beta function, ln B(a, b). */
export function logBeta(a: number, b: number): number {
  requireShapes("logBeta", a, b);
  return gammaln(a) + gammaln(b) - gammaln(a + b);
}

/**
 * The x with P(X <= x) = p for the beta law.
 *
 * Accuracy: absolute 1e-13.
 *
 * @throws RangeError unless a, b > 0 and 0 < p < 1
 * @example betaQuantile(0.6875, 2, 3) // 0.5
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`betaQuantile requires 0 < p < 1, got ${p}`);
  return p <= 0.5
    ? rootByBrent((x) => betaTail(x, a, b, "lower") - p, 0, 1)
    : rootByBrent((x) => 1 - p - betaTail(x, a, b, "upper"), 0, 1);
}
