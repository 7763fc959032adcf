import { betaTail } from "./beta-law.ts";

function check(what: string, n: number, k: number, p: number): void {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`${what} requires a whole n >= 0, got ${n}`);
  if (!Number.isInteger(k)) throw new RangeError(`${what} requires a whole k, got ${k}`);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`${what} requires a chance from 0 to 1, got ${p}`);
}

/**
 * P(at least k of n trials succeed) for a chance p that is no simple fraction (else `binomialTail` is exact).
 *
 * Accuracy: relative 1e-11 (that of `betaTail`). Source: the binomial tail is a beta tail (Abramowitz and Stegun 26.5.24).
 *
 * @throws RangeError unless n is whole and >= 0, k is whole and p from 0 to 1
 * @example atLeast(3, 2, 0.5) // 0.5
 */
export function atLeast(n: number, k: number, p: number): number {
  check("atLeast", n, k, p);
  if (k <= 0) return 1;
  return k > n ? 0 : betaTail(p, k, n - k + 1, "lower");
}

/**
 * P(at most k of n trials succeed), computed as such, so that small tails keep their digits.
 *
 * @example atMost(3, 1, 0.5) // 0.5
 */
export function atMost(n: number, k: number, p: number): number {
  check("atMost", n, k, p);
  if (k < 0) return 0;
  return k >= n ? 1 : betaTail(p, k + 1, n - k, "upper");
}
