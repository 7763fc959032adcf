import { betaTail, logBeta } from "./beta-law.ts";
import { rootByBrent } from "../numeric/index.ts";
import type { Interval } from "./interval.ts";

/** What is tried to be shown about a chance: that it is above `p0`, or below it. */
export interface MixtureTest {
  readonly p0: number;
  readonly shows: "above" | "below";
  /** Beta shapes of the mixture over the chances to be shown, before it is cut at p0 (and at `floor`); 1 and 1 are even. */
  readonly shapes?: readonly [number, number];
  /** No chance below this is thought of (luck's own, say). Default 0. */
  readonly floor?: number;
}

/** ln of the beta law's mass between two points. */
function logMass(low: number, high: number, a: number, b: number): number {
  const below = betaTail(low, a, b, "lower");
  const mass =
    below > 0.5
      ? betaTail(low, a, b, "upper") - betaTail(high, a, b, "upper")
      : betaTail(high, a, b, "lower") - below;
  return Math.log(Math.max(mass, Number.MIN_VALUE));
}

const times = (k: number, x: number): number => (k === 0 ? 0 : k * Math.log(x));

/**
 * ln of the evidence against "no more than p0" (or "no less") after `right` of `of` trials: the mixture martingale.
 *
 * The likelihood, averaged over the chances to be shown with a beta law cut to them, over the likelihood at p0. Under the claim to
 * be refuted its expectation is at most 1 at any moment, so the probability that it EVER reaches 1/alpha is at most alpha (Ville's
 * inequality): one may look after every trial and stop when one likes.
 *
 * Accuracy: absolute 1e-9 while the cut law keeps more than 1e-12 of its mass. Sources, from memory: Ville 1939; Robbins, Ann.
 * Math. Stat. 41 (1970) 1397.
 *
 * @throws RangeError unless 0 < p0 < 1, the floor is below the region, and the counts are whole
 * @example logEvidence(5, 5, { p0: 0.5, shows: "above" })
 */
export function logEvidence(
  right: number,
  of: number,
  { p0, shows, shapes = [1, 1], floor = 0 }: MixtureTest,
): number {
  if (!(p0 > 0 && p0 < 1)) throw new RangeError(`logEvidence requires 0 < p0 < 1, got ${p0}`);
  if (!Number.isInteger(right) || !Number.isInteger(of) || right < 0 || right > of) {
    throw new RangeError(`logEvidence requires whole 0 <= right <= of, got ${right} of ${of}`);
  }
  const [low, high] = shows === "above" ? [Math.max(p0, floor), 1] : [floor, p0];
  if (!(low < high)) throw new RangeError(`logEvidence requires a floor below p0 = ${p0}, got ${floor}`);
  const [a, b] = shapes;
  const wrong = of - right;
  return (
    logBeta(a + right, b + wrong) +
    logMass(low, high, a + right, b + wrong) -
    logBeta(a, b) -
    logMass(low, high, a, b) -
    times(right, p0) -
    times(wrong, 1 - p0)
  );
}

/**
 * The p that may be looked at after every trial: 1 over the largest evidence there has been, at most 1.
 *
 * @param results the trials in the order they were made, true for right
 * @example anytimeP([true, true, true, true, true], { p0: 1 / 3, shows: "above" })
 */
export function anytimeP(results: readonly boolean[], test: MixtureTest): number {
  let right = 0;
  let most = 0;
  results.forEach((result, i) => {
    right += Number(result);
    most = Math.max(most, logEvidence(right, i + 1, test));
  });
  return Math.exp(-most);
}

/**
 * An interval of a chance that holds at every moment together: the p that the evidence of an uncut beta mixture against
 * "exactly p" never refuted at 1 − level up to now.
 *
 * Wider than an interval for one moment chosen beforehand; it covers the truth at ALL moments with probability `level` or more. Trials
 * that are not alike may leave nothing: then low is above high.
 * Source, from memory: Robbins 1970 (above); Lai, Ann. Stat. 4 (1976) 265.
 *
 * @example anytimeInterval([true, true, false, true], 0.95)
 */
export function anytimeInterval(
  results: readonly boolean[],
  level: number,
  shapes: readonly [number, number] = [1, 1],
): Interval {
  if (!(level > 0 && level < 1)) throw new RangeError(`anytimeInterval requires 0 < level < 1, got ${level}`);
  const [a, b] = shapes;
  const bar = -Math.log(1 - level);
  let [low, high] = [0, 1];
  let right = 0;
  results.forEach((result, i) => {
    right += Number(result);
    const wrong = i + 1 - right;
    const marginal = logBeta(a + right, b + wrong) - logBeta(a, b);
    const over = (p: number): number =>
      Math.min(Number.MAX_VALUE, marginal - times(right, p) - times(wrong, 1 - p) - bar);
    const best = right / (i + 1);
    // Where even the most likely chance is refuted no p is left at this moment; that cannot happen with a proper mixture.
    if (right > 0) low = Math.max(low, over(0) > 0 ? rootByBrent(over, 0, best, 1e-14) : 0);
    if (wrong > 0) high = Math.min(high, over(1) > 0 ? rootByBrent(over, best, 1, 1e-14) : 1);
  });
  return { low, high };
}
