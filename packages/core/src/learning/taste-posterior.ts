import { cholesky, maximiseConcave, type Square } from "../numeric/index.ts";
import { closestNormal } from "./closest-normal.ts";
import { type TasteData, tasteLikelihood } from "./taste-likelihood.ts";
import { whiten } from "./whitened.ts";

/** A normal approximation of what is believed of log worths f = mean + root·z, and, after them in z, of all else that is not known. */
export interface TastePosterior {
  /** How many log worths. */
  readonly size: number;
  /** Of the log worths before anything was said. */
  readonly mean: Float64Array;
  /** Lower triangle with root·rootᵀ the prior covariance of the log worths. */
  readonly root: Square;
  /** Of z, log worths first. */
  readonly centre: Float64Array;
  /** Cholesky factor of the precision of z. */
  readonly factor: Square;
  /** ln of the probability of all that was said, by Laplace's approximation. */
  readonly logEvidence: number;
  /** Log worths and all else at the mode. */
  readonly mode: Float64Array;
}

/** What is asked of a fit besides its data. */
export interface Fitting {
  /** The closest normal law, not that at the mode. */
  readonly averaged: boolean;
  /** Where the mode may be near, as another fit of the same data found it. */
  readonly near?: Float64Array | undefined;
}

/** Where only the evidence is wanted, a step that promises less ends the search: it is then known to a millionth. */
const ENOUGH = 1e-9;

/**
 * What rankings and marks say of log worths with a normal prior of the given mean and covariance: Laplace's approximation at the mode,
 * by Newton, and then, with `averaged`, the normal law closest to the posterior: slope and curvature averaged over the law itself
 * instead of taken at its top, as the mode of few rankings lies off the mean.
 *
 * Rankings as in `rankingLogLikelihood` (ties by Davidson and Luce), ln δ of each size of tie with the prior `WORTH_PRIOR`; marks as in
 * `markLikelihood`, each sheet's level and each scorer's gain integrated out as well.
 * Deterministic: the points of the average are always the same. Accuracy: SPEC.md L2 and L13, against long MCMC.
 *
 * Sources, from memory: Chu and Ghahramani, ICML 2005 (preferences); Opper and Archambeau, Neural Comput. 21 (2009) 786 (the closest
 * normal law: mean slope 0, precision the mean curvature).
 *
 * @param covariance size·size, positive definite
 * @throws RangeError when it is not
 * @example tastePosterior(Float64Array.of(0, 0), Float64Array.of(1, 0, 0, 1), { sets, sheets: [], noises: [], differences: 2 }, { averaged: true })
 */
export function tastePosterior(
  mean: Float64Array,
  covariance: Square,
  data: TasteData,
  { averaged, near }: Fitting,
): TastePosterior {
  const size = mean.length;
  const root = cholesky(covariance, size);
  if (root === null) throw new RangeError("tastePosterior requires a positive definite covariance");
  const likelihood = tasteLikelihood(data, size);
  const all = likelihood.size;
  const whitened = whiten(likelihood, mean, root);
  const start = near === undefined ? new Float64Array(all) : whitened.from(near);
  const mode = maximiseConcave(whitened.target, start, 100, averaged ? 1e-15 : ENOUGH);
  if (mode === null) throw new RangeError("tastePosterior requires rankings with a mode, got none");
  let logEvidence = mode.value;
  for (let i = 0; i < all; i += 1) logEvidence -= Math.log(mode.factor[i * all + i] as number);
  const own = {
    size,
    mean,
    root,
    centre: mode.at,
    factor: mode.factor,
    logEvidence,
    mode: whitened.at(mode.at),
  };
  return averaged && data.sets.length + data.sheets.length > 0
    ? { ...own, ...closestNormal(likelihood, whitened, mode.at, mode.factor) }
    : own;
}
