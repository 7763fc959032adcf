import gammaln from "@stdlib/math-base-special-gammaln";
import {
  cholesky,
  type Concave,
  inverseOf,
  maximiseConcave,
  solveUpper,
  type Square,
} from "../numeric/index.ts";
import { evenChiSquareDraw, fillNormal } from "./draws.ts";
import type { Rng } from "./rng.ts";

/** Independent normal priors, one a parameter. */
export interface NormalPrior {
  readonly mean: readonly number[];
  readonly sd: readonly number[];
}

/** Weighted draws from a posterior. */
export interface PosteriorDraws {
  readonly size: number;
  /** `count` draws, row after row. */
  readonly draws: Float64Array;
  /** Adding up to 1. */
  readonly weights: Float64Array;
  /** How many equally weighted draws they are worth: 1/Σ weight². */
  readonly effective: number;
  /** ln of the probability of the data with the parameters averaged over the prior. */
  readonly logEvidence: number;
}

/** Degrees of freedom of the proposal: tails heavier than any posterior with a normal prior. */
const DF = 8;

const withPrior = (f: Concave, { mean, sd }: NormalPrior): Concave => ({
  size: f.size,
  value: (x) =>
    f.value(x) - x.reduce((sum, v, i) => sum + ((v - (mean[i] as number)) / (sd[i] as number)) ** 2 / 2, 0),
  curve(x) {
    const { value, gradient, curvature } = f.curve(x);
    let drop = 0;
    x.forEach((v, i) => {
      const [off, precision] = [v - (mean[i] as number), (sd[i] as number) ** -2];
      drop += (off * off * precision) / 2;
      gradient[i] = (gradient[i] as number) - off * precision;
      curvature[i * f.size + i] = (curvature[i * f.size + i] as number) + precision;
    });
    return { value: value - drop, gradient, curvature };
  },
});

interface Weighed {
  readonly draws: Float64Array;
  readonly logWeights: Float64Array;
}

/** Draws from a multivariate t around `centre` whose inverse spread has the Cholesky factor `factor`, weighed by target/proposal. */
function propose(target: Concave, centre: Float64Array, factor: Square, count: number, rng: Rng): Weighed {
  const n = target.size;
  let logScale = gammaln((DF + n) / 2) - gammaln(DF / 2) - (n / 2) * Math.log(DF * Math.PI);
  for (let i = 0; i < n; i += 1) logScale += Math.log(factor[i * n + i] as number);
  const draws = new Float64Array(count * n);
  const logWeights = new Float64Array(count);
  const normal = new Float64Array(n);
  for (let d = 0; d < count; d += 2) {
    fillNormal(normal, rng);
    const spread = Math.sqrt(DF / evenChiSquareDraw(DF, rng));
    const step = solveUpper(factor, normal);
    const reach = normal.reduce((sum, z) => sum + z * z, 0) * spread * spread;
    const logDensity = logScale - ((DF + n) / 2) * Math.log1p(reach / DF);
    // Every draw with its mirror image: what is odd about the centre cancels.
    for (const [turn, sign] of [1, -1].entries()) {
      if (d + turn >= count) break;
      const x = draws.subarray((d + turn) * n, (d + turn + 1) * n);
      for (let i = 0; i < n; i += 1) x[i] = (centre[i] as number) + sign * spread * (step[i] as number);
      logWeights[d + turn] = target.value(x) - logDensity;
    }
  }
  return { draws, logWeights };
}

function normalised(logWeights: Float64Array): { weights: Float64Array; effective: number; logMean: number } {
  const top = logWeights.reduce((most, w) => Math.max(most, w), -Infinity);
  const weights = logWeights.map((w) => Math.exp(w - top));
  const sum = weights.reduce((total, w) => total + w, 0);
  for (let i = 0; i < weights.length; i += 1) weights[i] = (weights[i] as number) / sum;
  const squares = weights.reduce((total, w) => total + w * w, 0);
  return { weights, effective: 1 / squares, logMean: top + Math.log(sum / weights.length) };
}

/** The Cholesky factor of the inverse of the draws' weighted covariance, and their weighted mean. */
function fitted(
  { draws }: Weighed,
  weights: Float64Array,
  n: number,
): { centre: Float64Array; factor: Square } | null {
  const centre = new Float64Array(n);
  const spread = new Float64Array(n * n);
  weights.forEach((w, d) => {
    for (let i = 0; i < n; i += 1) centre[i] = (centre[i] as number) + w * (draws[d * n + i] as number);
  });
  weights.forEach((w, d) => {
    for (let i = 0; i < n; i += 1) {
      const off = w * ((draws[d * n + i] as number) - (centre[i] as number));
      for (let j = 0; j <= i; j += 1) {
        const at = i * n + j;
        spread[at] = (spread[at] as number) + off * ((draws[d * n + j] as number) - (centre[j] as number));
      }
    }
  });
  const own = cholesky(spread, n);
  const factor = own === null ? null : cholesky(inverseOf(own, n), n);
  return factor === null ? null : { centre, factor };
}

/** The same from draws that are worth enough for it; null where they are not. */
function bettered(tried: Weighed, n: number): ReturnType<typeof fitted> {
  const { weights, effective } = normalised(tried.logWeights);
  return effective > 50 * n ? fitted(tried, weights, n) : null;
}

/**
 * Draws from the posterior of a concave log likelihood under normal priors: importance sampling, the same every time for the same
 * `rng`.
 *
 * First from a multivariate t (8 degrees of freedom) with the mode and curvature of the posterior, then, where those draws are many
 * enough for the parameters, from one with their mean and covariance. `effective` says what the draws are worth; a share of x % is
 * off by some √(x(1 − x)/effective).
 *
 * Sources, from memory: Geweke, Econometrica 57 (1989) 1317; Cappé et al., J. Comput. Graph. Stat. 13 (2004) 907 (two rounds).
 *
 * @throws RangeError when a prior does not fit the parameters or an sd is not above 0
 * @example posteriorDraws(likelihood, { mean: [0, 0], sd: [1, 1] }, repeatableRng(6), 4000)
 */
export function posteriorDraws(f: Concave, prior: NormalPrior, rng: Rng, count: number): PosteriorDraws {
  const n = f.size;
  if (prior.mean.length !== n || prior.sd.length !== n || prior.sd.some((sd) => !(sd > 0))) {
    throw new RangeError(
      `posteriorDraws requires ${n} prior means and sds above 0, got sds [${prior.sd.join(", ")}]`,
    );
  }
  const target = withPrior(f, prior);
  const mode = maximiseConcave(target, Float64Array.from(prior.mean));
  if (mode === null) throw new RangeError("posteriorDraws requires a concave log likelihood, got none");
  const logPrior = prior.sd.reduce((sum, sd) => sum - Math.log(sd) - Math.log(2 * Math.PI) / 2, 0);
  // A covariance needs many draws for each parameter, else it is worse than the curvature at the mode: then none are tried.
  const trial = Math.max(1000, Math.floor(count / 4));
  const better = trial > 50 * n ? bettered(propose(target, mode.at, mode.factor, trial, rng), n) : null;
  const { centre, factor } = better ?? { centre: mode.at, factor: mode.factor };
  const last = propose(target, centre, factor, count, rng);
  const { weights, effective, logMean } = normalised(last.logWeights);
  return { size: n, draws: last.draws, weights, effective, logEvidence: logMean + logPrior };
}
