import {
  cholesky,
  type Concave,
  maximiseConcave,
  solveCholesky,
  solveUpper,
  type Square,
} from "../numeric/index.ts";
import {
  fillNormal,
  type RankedSet,
  rankingLogLikelihood,
  repeatableRng,
  tieSizes,
  WORTH_PRIOR,
} from "../statistics/index.ts";

/** A normal approximation of what is believed of log worths f = root·z, and of ln δ of ties after them in z. */
export interface TastePosterior {
  /** How many log worths. */
  readonly size: number;
  /** Lower triangle with root·rootᵀ the prior covariance of the log worths. */
  readonly root: Square;
  /** Of z, log worths first. */
  readonly centre: Float64Array;
  /** Cholesky factor of the precision of z. */
  readonly factor: Square;
  /** ln of the probability of the rankings, by Laplace's approximation. */
  readonly logEvidence: number;
}

/** Pairs of mirrored points over which slope and curvature are averaged; fewer of many log worths, whose law is nearer to normal. */
const PAIRS = 160;
const PAIRS_OF_MANY = 16;
const MANY = 60;
/** Rounds of it at most, and the step that ends them. */
const ROUNDS = 6;
const SMALL = 1e-3;

interface Whitened {
  readonly target: Concave;
  /** Log worths and ln δ at z. */
  at(z: Float64Array): Float64Array;
  /** Slope and curvature of the rankings carried from there to z, prior counted in. */
  carried(
    z: Float64Array,
    gradient: Float64Array,
    curvature: Square,
  ): { gradient: Float64Array; curvature: Square };
}

/**
 * What rankings say of log worths with a normal prior of the given covariance: Laplace's approximation at the mode, by Newton, and
 * then, with `averaged`, the normal law closest to the posterior: slope and curvature averaged over the law itself instead of taken
 * at its top, as the mode of few rankings lies off the mean.
 *
 * Rankings as in `rankingLogLikelihood` (ties by Davidson and Luce); ln δ of each size of tie has the prior `WORTH_PRIOR`.
 * Deterministic: the points of the average are always the same. Accuracy: SPEC.md L2, against long MCMC.
 *
 * Sources, from memory: Chu and Ghahramani, ICML 2005 (preferences); Opper and Archambeau, Neural Comput. 21 (2009) 786 (the closest
 * normal law: mean slope 0, precision the mean curvature).
 *
 * @param covariance size·size, positive definite
 * @throws RangeError when it is not
 * @example tastePosterior(Float64Array.of(1, 0, 0, 1), 2, sets, true)
 */
export function tastePosterior(
  covariance: Square,
  size: number,
  sets: readonly RankedSet[],
  averaged: boolean,
): TastePosterior {
  const root = cholesky(covariance, size);
  if (root === null) throw new RangeError("tastePosterior requires a positive definite covariance");
  const ties = tieSizes(sets);
  const likelihood = rankingLogLikelihood(sets, size, ties);
  const all = size + ties.length;
  const whitened = whiten(likelihood, root, size);
  const mode = maximiseConcave(whitened.target, new Float64Array(all));
  if (mode === null) throw new RangeError("tastePosterior requires rankings with a mode, got none");
  let logEvidence = mode.value;
  for (let i = 0; i < all; i += 1) logEvidence -= Math.log(mode.factor[i * all + i] as number);
  const own = { size, root, centre: mode.at, factor: mode.factor, logEvidence };
  return averaged && sets.length > 0
    ? { ...own, ...closestNormal(likelihood, whitened, mode.at, mode.factor) }
    : own;
}

function whiten(likelihood: Concave, root: Square, size: number): Whitened {
  const all = likelihood.size;
  const at = (z: Float64Array): Float64Array => {
    const x = new Float64Array(all);
    for (let i = 0; i < size; i += 1) {
      let sum = 0;
      for (let k = 0; k <= i; k += 1) sum += (root[i * size + k] as number) * (z[k] as number);
      x[i] = sum;
    }
    for (let i = size; i < all; i += 1) x[i] = WORTH_PRIOR.tieMean + WORTH_PRIOR.tieSd * (z[i] as number);
    return x;
  };
  /** Entry of the lower triangle that takes z to log worths and ln δ. */
  const entry = (i: number, k: number): number =>
    i < size ? (k < size ? (root[i * size + k] as number) : 0) : i === k ? WORTH_PRIOR.tieSd : 0;
  const lower = new Float64Array(all * all);
  for (let i = 0; i < all; i += 1) for (let k = 0; k <= i; k += 1) lower[i * all + k] = entry(i, k);
  const carried: Whitened["carried"] = (z, gradient, curvature) => {
    const slope = z.map((v) => -v);
    const half = new Float64Array(all * all);
    for (let i = 0; i < all; i += 1) {
      for (let k = 0; k <= i; k += 1)
        slope[k] = (slope[k] as number) + (lower[i * all + k] as number) * (gradient[i] as number);
      for (let j = 0; j < all; j += 1) {
        const w = curvature[i * all + j] as number;
        // Glasses that never stood in one flight curve nothing together.
        if (w === 0) continue;
        for (let k = 0; k <= j; k += 1)
          half[i * all + k] = (half[i * all + k] as number) + w * (lower[j * all + k] as number);
      }
    }
    const square = new Float64Array(all * all);
    for (let i = 0; i < all; i += 1) {
      for (let a = 0; a <= i; a += 1) {
        const l = lower[i * all + a] as number;
        if (l === 0) continue;
        for (let b = 0; b <= a; b += 1)
          square[a * all + b] = (square[a * all + b] as number) + l * (half[i * all + b] as number);
      }
    }
    for (let a = 0; a < all; a += 1) {
      square[a * all + a] = (square[a * all + a] as number) + 1;
      for (let b = 0; b < a; b += 1) square[b * all + a] = square[a * all + b] as number;
    }
    return { gradient: slope, curvature: square };
  };
  const prior = (z: Float64Array): number => z.reduce((sum, v) => sum - (v * v) / 2, 0);
  return {
    at,
    carried,
    target: {
      size: all,
      value: (z) => likelihood.value(at(z)) + prior(z),
      curve(z) {
        const { value, gradient, curvature } = likelihood.curve(at(z));
        return { value: value + prior(z), ...carried(z, gradient, curvature) };
      },
    },
  };
}

function closestNormal(
  likelihood: Concave,
  whitened: Whitened,
  start: Float64Array,
  startFactor: Square,
): { centre: Float64Array; factor: Square } {
  const all = likelihood.size;
  const pairs = all > MANY ? PAIRS_OF_MANY : PAIRS;
  const points = new Float64Array(pairs * all);
  fillNormal(points, repeatableRng(1));
  let [centre, factor] = [start, startFactor];
  for (let round = 0; round < ROUNDS; round += 1) {
    const gradient = new Float64Array(all);
    const curvature = new Float64Array(all * all);
    for (let p = 0; p < pairs; p += 1) {
      const off = solveUpper(factor, points.subarray(p * all, (p + 1) * all));
      for (const sign of [1, -1]) {
        const there = likelihood.curve(whitened.at(centre.map((v, i) => v + sign * (off[i] as number))));
        for (let i = 0; i < all; i += 1)
          gradient[i] = (gradient[i] as number) + (there.gradient[i] as number) / (2 * pairs);
        for (let i = 0; i < all * all; i += 1)
          curvature[i] = (curvature[i] as number) + (there.curvature[i] as number) / (2 * pairs);
      }
    }
    const mean = whitened.carried(centre, gradient, curvature);
    const next = cholesky(mean.curvature, all);
    if (next === null) break;
    const step = solveCholesky(next, mean.gradient);
    centre = centre.map((v, i) => v + (step[i] as number));
    factor = next;
    if (step.every((v) => Math.abs(v) < SMALL)) break;
  }
  return { centre, factor };
}
