import { exactShare, type Interval, likelyShare, type Sides } from "../statistics/index.ts";
import type { DifferenceTest } from "./difference-tests.data.ts";
import { chanceRight, dPrimeAt } from "./probability-right.ts";

export interface DPrimeEstimate {
  /** Most likely d′: 0 when no more were right than luck gives, Infinity when all were right. */
  readonly dPrime: number;
  /** Likelihood interval: covers the truth about as often as the level says. */
  readonly interval: Interval;
  /** Clopper and Pearson's interval carried over to d′: covers it at least as often as the level says. */
  readonly exactInterval: Interval;
  /** Most likely share of tasters (or trials) that told the difference, the rest guessing: (p − chance)/(1 − chance), at least 0. */
  readonly share: number;
  readonly shareInterval: Interval;
}

/**
 * How far apart two whiskeys tasted, from the right answers in a difference test.
 *
 * Trials are taken as independent and alike. d′ and its intervals are the chance of a right answer carried over by Thurstone's
 * model (`probabilityRight`), which rises with d′, so the coverage is carried over too. With sides "lower" the claim is "at least
 * low", with "upper" "at most high".
 *
 * @param level e.g. 0.95
 * @throws RangeError unless 0 <= right <= of are whole, of >= 1 and 0 < level < 1
 * @example estimateDPrime({ test: "triangle", right: 10, of: 15 }, { level: 0.95, sides: "both" }).dPrime // 2.3…
 */
export function estimateDPrime(
  { test, right, of }: { readonly test: DifferenceTest; readonly right: number; readonly of: number },
  { level = 0.95, sides = "both" }: { readonly level?: number; readonly sides?: Sides } = {},
): DPrimeEstimate {
  const chance = chanceRight(test);
  const likely = likelyShare(right, of, { level, sides, floor: chance });
  const exact = exactShare(right, of, level, sides);
  const distance = ({ low, high }: Interval): Interval => ({
    low: dPrimeAt(test, low),
    high: dPrimeAt(test, high),
  });
  const told = (p: number): number => Math.max(0, (p - chance) / (1 - chance));
  return {
    dPrime: dPrimeAt(test, right / of),
    interval: distance(likely),
    exactInterval: distance(exact),
    share: told(right / of),
    shareInterval: { low: told(exact.low), high: told(exact.high) },
  };
}
