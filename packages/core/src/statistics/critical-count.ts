import { binomialTail } from "./binomial-tail.ts";
import type { Fraction } from "./fraction.ts";
import { quotient } from "./quotient.ts";
import { smallestAndStable, type TrialsNeeded } from "./smallest-and-stable.ts";

/** P(at least k of n), the double nearest to the exact fraction. */
const tail = (n: number, k: number, p: Fraction): number => {
  const { numerator, denominator } = binomialTail(n, k, p);
  return quotient(numerator, denominator);
};

function requireRisk(what: string, risk: number): void {
  if (!(risk > 0 && risk < 1)) throw new RangeError(`${what} requires a risk between 0 and 1, got ${risk}`);
}

/**
 * The fewest successes in n trials that chance p reaches or passes with a probability of at most alpha (one-sided, count
 * included), or null when not even n successes are that rare.
 *
 * For a two-sided test of p = 1/2 pass half the alpha: the larger of the two counts is then compared.
 *
 * Accuracy: the exact tail, as the nearest double, compared with alpha. Cost: a few exact tails.
 *
 * @param from where to start looking, a count known to be no larger than the answer; saves work when n is stepped up
 * @throws RangeError unless 0 < alpha < 1, n is whole and p a chance
 * @example criticalCount(12, { numerator: 1n, denominator: 3n }, 0.05) // 8
 */
export function criticalCount(n: number, p: Fraction, alpha: number, from = 0): number | null {
  requireRisk("criticalCount", alpha);
  // At least half of the law lies at the whole part of its mean or above, so no count there is rarer than 1 in 2.
  const mean = Number((BigInt(n) * p.numerator) / p.denominator);
  for (let k = alpha < 0.5 ? Math.max(from, mean) : from; k <= n; k += 1)
    if (tail(n, k, p) <= alpha) return k;
  return null;
}

/** What a binomial test is set up to tell apart, and the risks it may run. */
export interface BinomialTest {
  /** Chance of a success when there is nothing to find. */
  readonly p0: Fraction;
  /** Chance of a success when there is. Above p0. */
  readonly p1: Fraction;
  /** Risk of finding something that is not there, one-sided. */
  readonly alpha: number;
}

/**
 * The probability that a binomial test of n trials finds what is there: P(at least the critical count | p1). 0 when no
 * count is critical.
 *
 * @example binomialPower(16, { p0: { numerator: 1n, denominator: 3n }, p1: { numerator: 2n, denominator: 3n }, alpha: 0.05 })
 */
export function binomialPower(n: number, { p0, p1, alpha }: BinomialTest): number {
  const critical = criticalCount(n, p0, alpha);
  return critical === null ? 0 : tail(n, critical, p1);
}

/**
 * How many trials a binomial test needs so that it misses what is there with a probability of at most beta.
 *
 * `stable` looks on to three times the smallest n and 60 more: the drops of the saw-tooth shrink and the power climbs, so a
 * drop below the line further out does not occur in the range this is tested for (beta 0.01 to 0.5).
 *
 * @param limit the most trials looked at, 1 to 1000
 * @returns null when `limit` trials are not enough
 * @throws RangeError unless p1 is above p0 and the risks are between 0 and 1
 * @example
 * const third = { numerator: 1n, denominator: 3n };
 * trialsNeeded({ p0: third, p1: { numerator: 2n, denominator: 3n }, alpha: 0.05, beta: 0.2 }, 200)
 */
export function trialsNeeded(
  test: BinomialTest & { readonly beta: number },
  limit = 400,
): TrialsNeeded | null {
  const { p0, p1, alpha, beta } = test;
  requireRisk("trialsNeeded", beta);
  if (p1.numerator * p0.denominator <= p0.numerator * p1.denominator) {
    throw new RangeError(
      `trialsNeeded requires p1 above p0, got ${p1.numerator}/${p1.denominator} and ${p0.numerator}/${p0.denominator}`,
    );
  }
  let critical = 0;
  return smallestAndStable(
    (n) => {
      const here = criticalCount(n, p0, alpha, critical);
      // The critical count never falls when a trial is added.
      critical = here ?? critical;
      return here !== null && tail(n, here, p1) >= 1 - beta ? here : null;
    },
    limit,
    (smallest) => 3 * smallest + 60,
  );
}
