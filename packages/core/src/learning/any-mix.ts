import { cholesky, dot, product, solveLower, solveUpper } from "../numeric/index.ts";
import { fillNormal, type Rng } from "../statistics/index.ts";
import type { Taste } from "./learn-taste.ts";
import type { PlacedMix } from "./mixture-kernel.ts";

/** Covariance of what all tasters have in common of two mixes. */
export const commonCovariance = ({ kernel, shape, ownShare }: Taste, a: PlacedMix, b: PlacedMix): number =>
  (1 - ownShare) * kernel.covariance(a, b, shape);

/** How a mix, as all taste it, hangs on what was tried: its covariance with z of the prior. */
export function tiesTo(taste: Taste, mix: PlacedMix): Float64Array {
  const common = taste.recipes.map(({ placed }) => commonCovariance(taste, placed, mix));
  return solveLower(
    taste.posterior.root,
    Float64Array.from(taste.tasted, ({ recipe }) => common[recipe] as number),
  );
}

/**
 * Mean and spread of a mix's log worth, as all tasters have it in common (0: what the middle of all is worth beforehand).
 *
 * @example anyMix(taste, taste.kernel.place([0.5, 0.5])).mean
 */
export function anyMix(taste: Taste, mix: PlacedMix): { readonly mean: number; readonly sd: number } {
  const { kernel, shape, posterior } = taste;
  const { centre, factor, size } = posterior;
  const own = tiesTo(taste, mix);
  const padded = new Float64Array(centre.length);
  padded.set(own);
  const left = solveLower(factor, padded);
  const variance = commonCovariance(taste, mix, mix) - dot(own, own) + dot(left, left);
  const before = kernel.mean(mix, shape);
  return { mean: before + dot(own, centre.subarray(0, size)), sd: Math.sqrt(Math.max(0, variance)) };
}

/**
 * Draws of the log worths of several mixes together, one row a draw: what a palate could be like after all that was tasted.
 *
 * @example drawMixes(taste, [[1, 0], [0, 1]].map(taste.kernel.place), 400, repeatableRng(6))
 */
export function drawMixes(
  taste: Taste,
  mixes: readonly PlacedMix[],
  count: number,
  rng: Rng,
): readonly Float64Array[] {
  const { kernel, shape, posterior } = taste;
  const { centre, factor, size } = posterior;
  const n = mixes.length;
  const own = mixes.map((mix) => tiesTo(taste, mix));
  const rest = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1)
      rest[i * n + j] =
        commonCovariance(taste, mixes[i] as PlacedMix, mixes[j] as PlacedMix) -
        dot(own[i] as Float64Array, own[j] as Float64Array) +
        // What rounding takes from a mix that was tried itself.
        (i === j ? 1e-5 * shape.scale ** 2 : 0);
  const means = mixes.map((mix) => kernel.mean(mix, shape));
  const spread = cholesky(rest, n);
  if (spread === null) throw new RangeError("drawMixes requires mixes that differ, got the same one twice");
  const [ofTried, ofRest] = [new Float64Array(centre.length), new Float64Array(n)];
  return Array.from({ length: count }, () => {
    fillNormal(ofTried, rng);
    fillNormal(ofRest, rng);
    const off = solveUpper(factor, ofTried);
    const z = centre.subarray(0, size).map((v, k) => v + (off[k] as number));
    const worths = new Float64Array(n);
    for (let i = 0; i < n; i += 1)
      worths[i] =
        (means[i] as number) + dot(own[i] as Float64Array, z) + product(spread, i * n, ofRest, 0, i + 1);
    return worths;
  });
}
