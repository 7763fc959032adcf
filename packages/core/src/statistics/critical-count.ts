import { atLeast } from "./binomial-law.ts";
import { binomialTailChance } from "./binomial-tail.ts";
import type { Fraction } from "./fraction.ts";
import { quotient } from "./quotient.ts";
import { smallestAndStable, type TrialsNeeded } from "./smallest-and-stable.ts";

function requireRisk(what: string, risk: number): void {
  if (!(risk > 0 && risk < 1)) throw new RangeError(`${what} requires a risk between 0 and 1, got ${risk}`);
}

/**
 * The fewest successes in n trials that chance p reaches or passes with a probability of at most alpha (one-sided, count
 * included), or null when not even n successes are that rare.
 *
 * For a two-sided test of p = 1/2 pass half the alpha: the larger of the two counts is then compared.
 *
 * Accuracy: the exact tail, as the nearest double, compared with alpha. Cost: two exact tails; where to take them is found by the
 * beta law.
 *
 * @throws RangeError unless 0 < alpha < 1, n is whole and p a chance
 * @example criticalCount(12, { numerator: 1n, denominator: 3n }, 0.05) // 8
 */
export function criticalCount(n: number, p: Fraction, alpha: number): number | null {
  requireRisk("criticalCount", alpha);
  const chance = quotient(p.numerator, p.denominator);
  let [low, high] = [0, n + 1];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (atLeast(n, middle, chance) <= alpha) high = middle;
    else low = middle + 1;
  }
  const rare = (k: number): boolean => binomialTailChance(n, k, p) <= alpha;
  while (low > 0 && rare(low - 1)) low -= 1;
  while (low <= n && !rare(low)) low += 1;
  return low > n ? null : low;
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
  return critical === null ? 0 : binomialTailChance(n, critical, p1);
}

/**
 * How many trials a binomial test needs until it finds what is there with a probability of 1 − beta, `power` being that probability
 * by trials and critical count.
 *
 * `stable` looks on to three times the smallest n and 60 more: the drops of the saw-tooth shrink and the power climbs, so a
 * drop below the line further out does not occur in the range this is tested for (beta 0.01 to 0.5).
 *
 * @param limit the most trials looked at, 1 to 1000
 * @returns null when `limit` trials are not enough
 * @throws RangeError unless the risks are between 0 and 1
 */
export function trialsForPower(
  { p0, alpha, beta }: { readonly p0: Fraction; readonly alpha: number; readonly beta: number },
  power: (n: number, critical: number) => number,
  limit = 400,
): TrialsNeeded | null {
  requireRisk("trialsForPower", beta);
  return smallestAndStable(
    (n) => {
      const critical = criticalCount(n, p0, alpha);
      return critical !== null && power(n, critical) >= 1 - beta ? critical : null;
    },
    limit,
    (smallest) => 3 * smallest + 60,
  );
}

/**
 * The same where the chance to be found is a fraction, so that the power is exact too.
 *
 * @throws RangeError unless p1 is above p0, and as `trialsForPower`
 * @example
 * const third = { numerator: 1n, denominator: 3n };
 * trialsNeeded({ p0: third, p1: { numerator: 2n, denominator: 3n }, alpha: 0.05, beta: 0.2 }, 200)
 */
export function trialsNeeded(
  test: BinomialTest & { readonly beta: number },
  limit = 400,
): TrialsNeeded | null {
  const { p0, p1 } = test;
  requireRisk("trialsNeeded", test.beta);
  if (p1.numerator * p0.denominator <= p0.numerator * p1.denominator) {
    throw new RangeError(
      `trialsNeeded requires p1 above p0, got ${p1.numerator}/${p1.denominator} and ${p0.numerator}/${p0.denominator}`,
    );
  }
  return trialsForPower(test, (n, critical) => binomialTailChance(n, critical, p1), limit);
}
