import { type Fraction, reduced } from "./fraction.ts";
import { quotient } from "./quotient.ts";

/** The tail as cases of all cases, not in lowest terms. */
function tailCases(n: number, k: number, p: Fraction): Fraction {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`binomialTail requires a whole n >= 0, got ${n}`);
  if (!Number.isInteger(k)) throw new RangeError(`binomialTail requires a whole k, got ${k}`);
  const { numerator: hit, denominator } = p;
  const miss = denominator - hit;
  if (hit < 0n || miss < 0n || denominator === 0n) {
    throw new RangeError(`binomialTail requires a chance from 0 to 1, got ${hit}/${denominator}`);
  }
  if (k <= 0) return { numerator: 1n, denominator: 1n };
  if (k > n || hit === 0n) return { numerator: 0n, denominator: 1n };
  // From all n down to k: each term follows from the one before by an exact division.
  let term = hit ** BigInt(n);
  let sum = term;
  for (let i = n; i > k; i -= 1) {
    term = (term * BigInt(i) * miss) / (BigInt(n - i + 1) * hit);
    sum += term;
  }
  return { numerator: sum, denominator: denominator ** BigInt(n) };
}

/**
 * P(at least k of n independent trials succeed), each with chance p, exactly: one-sided, k included.
 *
 * Domain: whole n >= 0, whole k (at most 0 gives 1, above n gives 0), p from 0 to 1. Accuracy: exact. Source: the binomial
 * law. Cost: n - k products of numbers of n·log₂(denominator) bits; n = 400 and p in 300ths take a fraction of a millisecond.
 *
 * @throws RangeError outside that domain
 * @example binomialTail(3, 3, { numerator: 1n, denominator: 3n }) // { numerator: 1n, denominator: 27n }
 */
export function binomialTail(n: number, k: number, p: Fraction): Fraction {
  const { numerator, denominator } = tailCases(n, k, p);
  return reduced(numerator, denominator);
}

/**
 * The same as the double nearest to the exact fraction. The only place where an exact tail becomes a double.
 *
 * @example binomialTailChance(3, 3, { numerator: 1n, denominator: 3n }) // 0.037037037037037035
 */
export function binomialTailChance(n: number, k: number, p: Fraction): number {
  const { numerator, denominator } = tailCases(n, k, p);
  return quotient(numerator, denominator);
}
