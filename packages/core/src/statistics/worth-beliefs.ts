import type { Interval } from "./interval.ts";
import { posteriorDraws, type PosteriorDraws } from "./posterior-draws.ts";
import { type RankedSet, tieSizes } from "./ranked-set.ts";
import { rankingLogLikelihood } from "./ranking-likelihood.ts";
import type { Rng } from "./rng.ts";

/** What is thought of the worths before any ranking. */
export interface WorthPrior {
  /** Of each item's log worth, normal around 0. 1: four to one between two items is nothing special, a hundred to one is. */
  readonly worthSd: number;
  /** Of what the order of serving does to an item's log worth, normal around 0. */
  readonly extraSd: number;
  /** Of ln δ of each size of tie. At the mean, e⁻¹, equals tie in about 1 of 6 pairs. */
  readonly tieMean: number;
  readonly tieSd: number;
}

export const WORTH_PRIOR: WorthPrior = { worthSd: 1, extraSd: 0.5, tieMean: -1, tieSd: 1.5 };

export interface WorthBeliefs {
  /** Of each item's log worth less the mean of all of them. */
  readonly mean: readonly number[];
  readonly sd: readonly number[];
  readonly interval: readonly Interval[];
  /** `better[i][j]`: probability that i is the better one of the two. */
  readonly better: readonly (readonly number[])[];
  /** `preferred[i][j]`: probability that the next one to compare the two puts i first (ties left out). */
  readonly preferred: readonly (readonly number[])[];
  /** `ranks[i][r]`: probability that i is in place r + 1. */
  readonly ranks: readonly (readonly number[])[];
  readonly expectedRank: readonly number[];
  /** Of the other parameters, in their order. */
  readonly extra: readonly { readonly mean: number; readonly interval: Interval }[];
  readonly level: number;
  readonly draws: number;
  /** What the draws are worth; below 400 the shares are rough. */
  readonly effective: number;
  /** The largest standard error of any probability here from drawing: 1/(2√effective). */
  readonly monteCarloError: number;
}

/** Values below which given shares of the weight lie. */
function weightedQuantiles(values: Float64Array, weights: Float64Array, shares: readonly number[]): number[] {
  const order = Uint32Array.from(values.keys()).toSorted(
    (a, b) => (values[a] as number) - (values[b] as number),
  );
  const found: number[] = [];
  let sum = 0;
  for (const at of order) {
    sum += weights[at] as number;
    while (found.length < shares.length && sum >= (shares[found.length] as number))
      found.push(values[at] as number);
  }
  while (found.length < shares.length) found.push(values[order.at(-1) ?? 0] ?? Number.NaN);
  return found;
}

/** One column of the draws, with `less` taken off. */
const column = ({ draws, size, weights }: PosteriorDraws, parameter: number): Float64Array =>
  Float64Array.from(weights, (_, d) => draws[d * size + parameter] as number);

function interval(values: Float64Array, weights: Float64Array, level: number): Interval {
  const [low = Number.NaN, high = Number.NaN] = weightedQuantiles(values, weights, [
    (1 - level) / 2,
    (1 + level) / 2,
  ]);
  return { low, high };
}

/** What draws of the posterior say about the first `items` parameters as log worths, and the `extras` after them. */
export function beliefsFrom(
  posterior: PosteriorDraws,
  items: number,
  extras: number,
  level: number,
): WorthBeliefs {
  const { draws, size, weights, effective } = posterior;
  const zeros = (): number[] => Array.from({ length: items }, () => 0);
  const [better, preferred, ranks] = [zeros().map(zeros), zeros().map(zeros), zeros().map(zeros)];
  const centred = zeros().map(() => new Float64Array(weights.length));
  const place = new Int32Array(items);
  const worth = new Float64Array(items);
  weights.forEach((w, d) => {
    const x = draws.subarray(d * size, d * size + items);
    const middle = x.reduce((sum, v) => sum + v, 0) / items;
    place.fill(0);
    const top = x.reduce((most, v) => Math.max(most, v), -Infinity);
    for (let i = 0; i < items; i += 1) worth[i] = Math.exp((x[i] as number) - top);
    for (let i = 0; i < items; i += 1) {
      const own = x[i] as number;
      (centred[i] as Float64Array)[d] = own - middle;
      const [ahead, chosen] = [better[i] as number[], preferred[i] as number[]];
      for (let j = i + 1; j < items; j += 1) {
        const [here, there] = [worth[i] as number, worth[j] as number];
        chosen[j] = (chosen[j] as number) + (w * here) / (here + there);
        if (own > (x[j] as number)) {
          ahead[j] = (ahead[j] as number) + w;
          place[j] = (place[j] as number) + 1;
        } else place[i] = (place[i] as number) + 1;
      }
    }
    for (let i = 0; i < items; i += 1) {
      const row = ranks[i] as number[];
      const at = place[i] as number;
      row[at] = (row[at] as number) + w;
    }
  });
  for (let i = 0; i < items; i += 1) {
    for (let j = 0; j < i; j += 1) {
      for (const table of [better, preferred])
        (table[i] as number[])[j] = 1 - ((table[j] as number[])[i] as number);
    }
  }
  const means = centred.map((values) => values.reduce((sum, v, d) => sum + v * (weights[d] as number), 0));
  return {
    mean: means,
    sd: centred.map((values, i) =>
      Math.sqrt(
        values.reduce((sum, v, d) => sum + (weights[d] as number) * (v - (means[i] as number)) ** 2, 0),
      ),
    ),
    interval: centred.map((values) => interval(values, weights, level)),
    better,
    preferred,
    ranks,
    expectedRank: ranks.map((row) => row.reduce((sum, p, r) => sum + p * (r + 1), 0)),
    extra: Array.from({ length: extras }, (_, i) => {
      const values = column(posterior, items + i);
      return {
        mean: values.reduce((sum, v, d) => sum + v * (weights[d] as number), 0),
        interval: interval(values, weights, level),
      };
    }),
    level,
    draws: weights.length,
    effective,
    monteCarloError: 0.5 / Math.sqrt(effective),
  };
}

export interface BeliefOptions {
  readonly rng: Rng;
  readonly prior?: WorthPrior;
  /** Sizes of ties the model allows; by default those that occur. */
  readonly ties?: readonly number[];
  readonly extras?: number;
  readonly level?: number;
  readonly draws?: number;
}

/**
 * What rankings say about the worths of `items` items, by Bayes' rule from proper priors: finite and sensible however few the
 * rankings, also when one item always wins, or two were never compared.
 *
 * Model as in `rankingLogLikelihood`; priors independent and normal (`WORTH_PRIOR`); draws by `posteriorDraws`, deterministic for a
 * given `rng`. Intervals are the middle `level` of the posterior. Coverage averaged over the prior is the level (calibrated by
 * simulation in the tests); at any one truth it need not be.
 *
 * @throws RangeError with fewer than 2 items or a level outside 0 to 1
 * @example worthBeliefs(sets, 3, { rng: repeatableRng(6) }).better[2]?.[0] // 0.87…
 */
export function worthBeliefs(
  sets: readonly RankedSet[],
  items: number,
  options: BeliefOptions,
): WorthBeliefs {
  const { rng, prior = WORTH_PRIOR, ties = tieSizes(sets), extras = 0, level = 0.95, draws = 8000 } = options;
  if (!Number.isInteger(items) || items < 2)
    throw new RangeError(`worthBeliefs requires 2 items or more, got ${items}`);
  if (!(level > 0 && level < 1)) throw new RangeError(`worthBeliefs requires 0 < level < 1, got ${level}`);
  const f = rankingLogLikelihood(sets, items + extras, ties);
  const repeat = (times: number, x: number): number[] => Array.from({ length: times }, () => x);
  const posterior = posteriorDraws(
    f,
    {
      mean: [...repeat(items + extras, 0), ...repeat(ties.length, prior.tieMean)],
      sd: [
        ...repeat(items, prior.worthSd),
        ...repeat(extras, prior.extraSd),
        ...repeat(ties.length, prior.tieSd),
      ],
    },
    rng,
    draws,
  );
  return beliefsFrom(posterior, items, extras, level);
}
