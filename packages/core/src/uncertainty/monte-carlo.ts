import { within } from "../quantity/index.ts";
import type { Rng } from "../statistics/index.ts";
import { distinct } from "./distinct.ts";
import type { Input, Spread } from "./input.ts";
import type { Model } from "./model.ts";

/** A result by drawing: no budget, since draws do not tell the inputs apart. */
export type Drawn = {
  /** Mean of the draws. */
  readonly value: number;
  readonly standardUncertainty: number;
  /** From the 2.5 % to the 97.5 % quantile of the draws. */
  readonly interval95: readonly [low: number, high: number];
};

const WORDS = 2 ** 32;

/**
 * Propagates the inputs' errors through a model by Monte Carlo: every draw takes each input's errors at random by their shapes,
 * keeps the input within its range, and runs the model. Right for models that bend, and a check on `propagate`.
 *
 * Accuracy: with n draws the standard uncertainty is good to about 0.6 / sqrt n of itself, an end of the interval to about
 * 1.3 / sqrt n of its distance: 10⁶ draws give a third digit. Cost: n runs of the model.
 *
 * Source: JCGM 101:2008, 5.9, 6.4, 7.7 (from memory).
 *
 * Domain: 40 to 10⁸ draws.
 *
 * @param rng given, so that a seeded one gives the same answer again
 * @throws RangeError when `draws` is not a whole number of at least 40, or the model throws.
 * @example
 * // A generator that always says the least: every rectangle at its lower end.
 * const label = labelStrength({ id: "rye", abv20: abv20(46) });
 * monteCarlo((valueOf) => valueOf("rye"), [label], 40, { below: () => 0 }).interval95; // [45.7…, 45.7…]
 */
export function monteCarlo(model: Model, inputs: readonly Input[], draws: number, rng: Rng): Drawn {
  within("draws", "", draws, 40, 1e8);
  if (!Number.isInteger(draws)) throw new RangeError(`draws requires a whole number, got ${draws}`);
  const all = distinct(inputs);
  const values = new Map<string, number>();
  const results = new Float64Array(draws);
  const valueOf = (id: string): number => values.get(id) as number;
  for (let n = 0; n < draws; n++) {
    for (const input of all.values()) {
      let x = input.value;
      for (const spread of input.spreads) x += drawn(spread, rng);
      values.set(input.id, Math.min(input.high, Math.max(input.low, x)));
    }
    results[n] = model(valueOf);
  }
  const mean = results.reduce((sum, x) => sum + x, 0) / draws;
  const variance = results.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (draws - 1);
  results.sort();
  return {
    value: mean,
    standardUncertainty: Math.sqrt(variance),
    interval95: [quantile(results, 0.025), quantile(results, 0.975)],
  };
}

/** Strictly between 0 and 1. */
const uniform = (rng: Rng): number => (rng.below(WORDS) + 0.5) / WORDS;

/** One error by its shape; the normal one by Box and Muller (1958), one of its two values used. */
function drawn(spread: Spread, rng: Rng): number {
  if (spread.shape === "normal") {
    const radius = Math.sqrt(-2 * Math.log(uniform(rng)));
    return spread.standardDeviation * radius * Math.cos(2 * Math.PI * uniform(rng));
  }
  const first = 2 * uniform(rng) - 1;
  if (spread.shape === "rectangular") return spread.halfWidth * first;
  return (spread.halfWidth * (first + 2 * uniform(rng) - 1)) / 2;
}

/** By straight lines between the sorted draws. */
function quantile(sorted: Float64Array, share: number): number {
  const at = share * (sorted.length - 1);
  const k = Math.floor(at);
  const low = sorted[k] as number;
  return low + (at - k) * ((sorted[k + 1] ?? low) - low);
}
