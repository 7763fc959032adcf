import {
  atLeast,
  atMost,
  binomialTail,
  binomialTailChance,
  criticalCount,
  type Fraction,
  reduced,
  smallestAndStable,
  trialsForPower,
  type TrialsNeeded,
} from "../statistics/index.ts";
import { CHANCE_RIGHT, type DifferenceTest } from "./difference-tests.data.ts";
import { chanceRight, probabilityRight } from "./probability-right.ts";

/** What is claimed to be there: a distance, or the share of tasters that can tell while the others guess. */
export type Effect = { readonly dPrime: number } | { readonly share: number };

/** The chance of a right answer when the effect is there. */
export function chanceWith(test: DifferenceTest, effect: Effect): number {
  if ("dPrime" in effect) return probabilityRight(test, effect.dPrime);
  if (!(effect.share >= 0 && effect.share <= 1)) {
    throw new RangeError(`a share requires 0 to 1, got ${effect.share}`);
  }
  return chanceRight(test) + effect.share * (1 - chanceRight(test));
}

function requireCounts(what: string, right: number, of: number): void {
  if (!Number.isInteger(right) || !Number.isInteger(of) || right < 0 || right > of) {
    throw new RangeError(`${what} requires whole 0 <= right <= of, got ${right} of ${of}`);
  }
}

interface Counted {
  readonly test: DifferenceTest;
  readonly right: number;
  readonly of: number;
}

/** The count whose upper tail is looked at: of two sides the larger of right and wrong. */
function tailFrom({ test, right, of }: Counted, sides: 1 | 2): number {
  requireCounts("differenceP", right, of);
  if (sides === 2 && test !== "two_afc") {
    throw new RangeError(`differenceP requires two_afc for two sides, got ${test}`);
  }
  return sides === 2 ? Math.max(right, of - right) : right;
}

/**
 * Whether more were right than luck gives: P(as many right or more by luck), one-sided, exact.
 *
 * `sides: 2` is for the directional pair alone, where a preference may go either way: twice the smaller tail, at most 1.
 *
 * @throws RangeError unless 0 <= right <= of are whole; for two sides of another test than two_afc
 * @example differenceP({ test: "triangle", right: 10, of: 15 }) // 0.0085…
 */
export const differenceP = (counted: Counted, sides: 1 | 2 = 1): number =>
  Math.min(1, sides * binomialTailChance(counted.of, tailFrom(counted, sides), CHANCE_RIGHT[counted.test]));

/** The same in lowest terms. */
export function differenceFraction(counted: Counted, sides: 1 | 2 = 1): Fraction {
  const tail = binomialTail(counted.of, tailFrom(counted, sides), CHANCE_RIGHT[counted.test]);
  const { numerator, denominator } = reduced(BigInt(sides) * tail.numerator, tail.denominator);
  return numerator > denominator ? { numerator: 1n, denominator: 1n } : { numerator, denominator };
}

/**
 * Whether so few were right that the difference is smaller than one that would matter: P(as few right or fewer | that difference),
 * one-sided. Small p: alike to within it. A test of non-inferiority; "not shown to differ" is not this.
 *
 * Accuracy: relative 1e-11.
 *
 * @example likenessP({ test: "triangle", right: 20, of: 66 }, { share: 0.3 })
 */
export function likenessP({ test, right, of }: Counted, matters: Effect): number {
  requireCounts("likenessP", right, of);
  return atMost(of, right, chanceWith(test, matters));
}

/** The most right answers that still show likeness at risk alpha, or null when not even none do. */
export function likenessCritical(
  test: DifferenceTest,
  of: number,
  matters: Effect,
  alpha: number,
): number | null {
  if (!(alpha > 0 && alpha < 1))
    throw new RangeError(`likenessCritical requires a risk between 0 and 1, got ${alpha}`);
  const chance = chanceWith(test, matters);
  let most = -1;
  while (most < of && atMost(of, most + 1, chance) <= alpha) most += 1;
  return most < 0 ? null : most;
}

/** The probability that n trials show a difference that is there, at risk alpha (one-sided, exact critical count). */
export function differencePower(test: DifferenceTest, of: number, there: Effect, alpha: number): number {
  const critical = criticalCount(of, CHANCE_RIGHT[test], alpha);
  return critical === null ? 0 : atLeast(of, critical, chanceWith(test, there));
}

/** The probability that n trials show likeness to within `matters` when the difference is really `there` (smaller, mostly none). */
export function likenessPower(test: DifferenceTest, of: number, ask: LikenessAsk): number {
  const critical = likenessCritical(test, of, ask.matters, ask.alpha);
  return critical === null ? 0 : atMost(of, critical, chanceWith(test, ask.there));
}

export interface LikenessAsk {
  readonly matters: Effect;
  readonly there: Effect;
  /** Risk of calling alike what differs by `matters` or more. */
  readonly alpha: number;
}

/**
 * Trials needed to show a difference with a probability of 1 − beta: the first n, and the n from which on it stays so (looked on
 * to three times the first and 60 more).
 *
 * @returns null when `limit` trials are not enough
 * @throws RangeError unless the effect is more than none
 */
export function differenceNeeds(
  test: DifferenceTest,
  { there, alpha, beta }: { readonly there: Effect; readonly alpha: number; readonly beta: number },
  limit = 400,
): TrialsNeeded | null {
  const chance = chanceWith(test, there);
  if (!(chance > chanceRight(test)))
    throw new RangeError(`differenceNeeds requires an effect above 0, got ${JSON.stringify(there)}`);
  return trialsForPower(
    { p0: CHANCE_RIGHT[test], alpha, beta },
    (n, critical) => atLeast(n, critical, chance),
    limit,
  );
}

/** Trials needed to show likeness with a probability of 1 − beta; `critical` counts are the most right answers allowed. */
export function likenessNeeds(
  test: DifferenceTest,
  { matters, there, alpha, beta }: LikenessAsk & { readonly beta: number },
  limit = 400,
): TrialsNeeded | null {
  const [far, near] = [chanceWith(test, matters), chanceWith(test, there)];
  if (!(far > near))
    throw new RangeError(
      `likenessNeeds requires a difference that matters above the one there, got ${far} and ${near}`,
    );
  let critical = -1;
  return smallestAndStable(
    (n) => {
      // A trial more never lowers the most that may be right.
      while (critical < n && atMost(n, critical + 1, far) <= alpha) critical += 1;
      return critical >= 0 && atMost(n, critical, near) >= 1 - beta ? critical : null;
    },
    limit,
    (smallest) => 3 * smallest + 60,
  );
}
