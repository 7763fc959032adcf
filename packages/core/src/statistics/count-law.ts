import { type Fraction, reduced } from "./fraction.ts";
import { quotient } from "./quotient.ts";

/**
 * The exact law of a whole-number count: `exactly[k]` of `total` equally likely cases give k.
 *
 * `pAtLeast(k)` and `fractionAtLeast(k)` are one-sided upper tails that include k itself.
 */
export interface CountLaw {
  readonly total: bigint;
  readonly exactly: readonly bigint[];
  /** The expected count, the nearest double to the exact fraction. */
  readonly mean: number;
  /** P(count >= k), the nearest double to the exact fraction. */
  pAtLeast(k: number): number;
  /** P(count >= k) exactly, in lowest terms. */
  fractionAtLeast(k: number): Fraction;
}

/**
 * A law from its case counts.
 *
 * @param exactly case counts for 0, 1, 2, …; each 0 or more, not all 0
 * @throws RangeError when a count is negative or all are 0
 * @example countLaw([2n, 3n, 0n, 1n]).pAtLeast(1) // 0.6666666666666666
 */
export function countLaw(exactly: readonly bigint[]): CountLaw {
  const total = exactly.reduce((sum, cases) => sum + cases, 0n);
  if (exactly.some((cases) => cases < 0n) || total === 0n) {
    throw new RangeError(`countLaw requires counts >= 0 that are not all 0, got [${exactly.join(", ")}]`);
  }
  const casesAtLeast = (k: number): bigint => {
    if (!Number.isInteger(k)) throw new RangeError(`a tail requires a whole k, got ${k}`);
    return exactly.slice(Math.max(0, k)).reduce((sum, cases) => sum + cases, 0n);
  };
  const weighted = exactly.reduce((sum, cases, k) => sum + BigInt(k) * cases, 0n);
  return {
    total,
    exactly: [...exactly],
    mean: quotient(weighted, total),
    pAtLeast: (k) => quotient(casesAtLeast(k), total),
    fractionAtLeast: (k) => reduced(casesAtLeast(k), total),
  };
}
