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

/** A normal approximation of what is believed of log worths f = mean + root·z, and of ln δ of ties after them in z. */
export interface TastePosterior {
  /** How many log worths. */
  readonly size: number;
  /** Of the log worths before any ranking. */
  readonly mean: Float64Array;
  /** Lower triangle with root·rootᵀ the prior covariance of the log worths. */
  readonly root: Square;
  /** Of z, log worths first. */
  readonly centre: Float64Array;
  /** Cholesky factor of the precision of z. */
  readonly factor: Square;
  /** ln of the probability of the rankings, by Laplace's approximation. */
  readonly logEvidence: number;
}

/** Frames of mirrored points over which slope and curvature are averaged; part of one of many log worths, whose law is nearer to normal. */
const FRAMES = 2;
const PAIRS_OF_MANY = 16;
const MANY = 60;
/** Rounds of it at most, and the step that ends them. */
const ROUNDS = 12;
const ROUNDS_OF_MANY = 3;
const SMALL = 5e-3;
const SMALL_TURN = 0.02;

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
 * What rankings say of log worths with a normal prior of the given mean and covariance: Laplace's approximation at the mode, by Newton, and
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
 * @example tastePosterior(Float64Array.of(0, 0), Float64Array.of(1, 0, 0, 1), sets, true)
 */
export function tastePosterior(
  mean: Float64Array,
  covariance: Square,
  sets: readonly RankedSet[],
  averaged: boolean,
): TastePosterior {
  const size = mean.length;
  const root = cholesky(covariance, size);
  if (root === null) throw new RangeError("tastePosterior requires a positive definite covariance");
  const ties = tieSizes(sets);
  const likelihood = rankingLogLikelihood(sets, size, ties);
  const all = size + ties.length;
  const whitened = whiten(likelihood, mean, root);
  const mode = maximiseConcave(whitened.target, new Float64Array(all));
  if (mode === null) throw new RangeError("tastePosterior requires rankings with a mode, got none");
  let logEvidence = mode.value;
  for (let i = 0; i < all; i += 1) logEvidence -= Math.log(mode.factor[i * all + i] as number);
  const own = { size, mean, root, centre: mode.at, factor: mode.factor, logEvidence };
  return averaged && sets.length > 0
    ? { ...own, ...closestNormal(likelihood, whitened, mode.at, mode.factor) }
    : own;
}

function whiten(likelihood: Concave, mean: Float64Array, root: Square): Whitened {
  const size = mean.length;
  const all = likelihood.size;
  const at = (z: Float64Array): Float64Array => {
    const x = new Float64Array(all);
    for (let i = 0; i < size; i += 1) {
      let sum = mean[i] as number;
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

/**
 * Points of frames at right angles, √size from the origin, turned at random: mirrored, every whole frame averages a cubic exactly.
 */
function squarePoints(size: number, wanted: number): Float64Array {
  const points = new Float64Array(wanted * size);
  fillNormal(points, repeatableRng(1));
  const row = (p: number): Float64Array => points.subarray(p * size, (p + 1) * size);
  for (let p = 0; p < wanted; p += 1) {
    const own = row(p);
    for (let before = p - (p % size); before < p; before += 1) {
      const other = row(before);
      let along = 0;
      for (let i = 0; i < size; i += 1) along += (own[i] as number) * (other[i] as number);
      for (let i = 0; i < size; i += 1) own[i] = (own[i] as number) - (along / size) * (other[i] as number);
    }
    const long = Math.sqrt(own.reduce((sum, v) => sum + v * v, 0));
    for (let i = 0; i < size; i += 1) own[i] = ((own[i] as number) * Math.sqrt(size)) / long;
  }
  return points;
}

/** L·Lᵀ of a lower triangle. */
function squareOf(l: Square, n: number): Float64Array {
  const square = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1)
      for (let k = 0; k <= Math.min(i, j); k += 1)
        square[i * n + j] =
          (square[i * n + j] as number) + (l[i * n + k] as number) * (l[j * n + k] as number);
  return square;
}

function closestNormal(
  likelihood: Concave,
  whitened: Whitened,
  start: Float64Array,
  startFactor: Square,
): { centre: Float64Array; factor: Square } {
  const all = likelihood.size;
  const pairs = all > MANY ? PAIRS_OF_MANY : FRAMES * all;
  const points = squarePoints(all, pairs);
  let [centre, factor] = [start, startFactor];
  let precision = squareOf(factor, all);
  const rounds = all > MANY ? ROUNDS_OF_MANY : ROUNDS;
  for (let round = 0; round < rounds; round += 1) {
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
    // Half way, as whole steps swing to and fro where rankings say next to nothing against a wide prior.
    precision = precision.map((v, i) => (v + (mean.curvature[i] as number)) / 2);
    const next = cholesky(precision, all);
    if (next === null) break;
    const step = solveCholesky(next, mean.gradient);
    centre = centre.map((v, i) => v + (step[i] as number));
    const turned = factor.some((v, i) => Math.abs(v - (next[i] as number)) > SMALL_TURN);
    factor = next;
    if (!turned && step.every((v) => Math.abs(v) < SMALL)) break;
  }
  return { centre, factor };
}
