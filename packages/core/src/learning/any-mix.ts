import {
  cholesky,
  dot,
  product,
  solveLowerRows,
  solveUpper,
  type Square,
  timesRows,
} from "../numeric/index.ts";
import { fillNormal, type Rng } from "../statistics/index.ts";
import type { Taste } from "./learn-taste.ts";
import type { PlacedMix } from "./mixture-kernel.ts";

/** Covariance of what all tasters have in common of two mixes. */
export const commonCovariance = ({ kernel, shape, ownShare }: Taste, a: PlacedMix, b: PlacedMix): number =>
  (1 - ownShare) * kernel.covariance(a, b, shape);

/** How mixes, as all taste them, hang on what was tried: their covariances with z of the prior, row after row a mix. */
export function tiesTo(taste: Taste, mixes: readonly PlacedMix[]): Float64Array {
  const { root, size } = taste.posterior;
  const { kernel, shape, ownShare } = taste;
  const placed = taste.tasted.map(({ recipe }) => (taste.recipes[recipe] as Taste["recipes"][number]).placed);
  const rows = new Float64Array(mixes.length * size);
  for (const [m, mix] of mixes.entries()) {
    const ties = kernel.withOthers(mix, placed, shape);
    for (let i = 0; i < size; i += 1) rows[m * size + i] = (1 - ownShare) * (ties[i] as number);
  }
  solveLowerRows(root, size, rows);
  return rows;
}

/**
 * Mean and spread of mixes' log worths, as all tasters have them in common (0: what the middle of all is worth beforehand).
 *
 * @example anyMixes(taste, [taste.kernel.place([0.5, 0.5])])[0].mean
 */
export function anyMixes(
  taste: Taste,
  mixes: readonly PlacedMix[],
): { readonly mean: number; readonly sd: number }[] {
  const { kernel, shape, posterior } = taste;
  const { centre, factor, size } = posterior;
  const all = centre.length;
  const own = tiesTo(taste, mixes);
  const left = new Float64Array(mixes.length * all);
  const rowOf = (m: number): Float64Array => own.subarray(m * size, (m + 1) * size);
  for (const m of mixes.keys()) left.set(rowOf(m), m * all);
  solveLowerRows(factor, all, left);
  return mixes.map((mix, m) => {
    const row = rowOf(m);
    const variance =
      commonCovariance(taste, mix, mix) - dot(row, row) + product(left, m * all, left, m * all, all);
    return { mean: kernel.mean(mix, shape) + dot(row, centre), sd: Math.sqrt(Math.max(0, variance)) };
  });
}

/**
 * Draws of the log worths of several mixes together, one row a draw: what a palate could be like after all that was tasted.
 *
 * @param tried how many of the mixes, first of them, are the recipes tried, in their order
 * @example drawMixes(taste, [[1, 0], [0, 1]].map(taste.kernel.place), 400, repeatableRng(6))
 */
export function drawMixes(
  taste: Taste,
  mixes: readonly PlacedMix[],
  count: number,
  rng: Rng,
  tried = 0,
): readonly Float64Array[] {
  const { kernel, shape, ownShare, posterior } = taste;
  const { centre, factor, root, size } = posterior;
  // Where tasters are one, what was tried was tasted as it is: nothing of it hangs on anything else.
  const known = ownShare === 0 ? tried : 0;
  const more = mixes.slice(known);
  const n = more.length;
  const ties = tiesTo(taste, more);
  const spread = cholesky(restOf(taste, more, ties), n);
  if (spread === null) throw new RangeError("drawMixes requires mixes that differ, got the same one twice");
  const rows = new Float64Array(mixes.length * size);
  rows.set(root.subarray(0, known * size));
  rows.set(ties, known * size);
  const means = Float64Array.from(mixes, (mix) => kernel.mean(mix, shape));
  const ofTried = new Float64Array(count * size);
  const ofRest = new Float64Array(count * n);
  const drawn = new Float64Array(centre.length);
  for (let d = 0; d < count; d += 1) {
    fillNormal(drawn, rng);
    const off = solveUpper(factor, drawn);
    for (let k = 0; k < size; k += 1) ofTried[d * size + k] = (centre[k] as number) + (off[k] as number);
    fillNormal(ofRest.subarray(d * n, (d + 1) * n), rng);
  }
  const draws = timesRows(ofTried, count, rows, mixes.length, known);
  const offs = timesRows(ofRest, count, spread, n, n);
  for (let d = 0; d < count; d += 1) {
    const [draw, off] = [draws[d] as Float64Array, offs[d] as Float64Array];
    for (let i = 0; i < means.length; i += 1) draw[i] = (draw[i] as number) + (means[i] as number);
    for (let m = 0; m < n; m += 1) draw[known + m] = (draw[known + m] as number) + (off[m] as number);
  }
  return draws;
}

/** What of mixes hangs on nothing that was tried: its covariances. */
function restOf({ kernel, shape, ownShare }: Taste, mixes: readonly PlacedMix[], ties: Float64Array): Square {
  const n = mixes.length;
  const rest = new Float64Array(n * n);
  const tied = timesRows(ties, n, ties, n, 0);
  for (const [i, mix] of mixes.entries()) {
    const both = kernel.withOthers(mix, mixes, shape);
    const own = tied[i] as Float64Array;
    for (let j = 0; j < n; j += 1)
      rest[i * n + j] = (1 - ownShare) * (both[j] as number) - (own[j] as number);
    // What rounding takes from a mix that was tried itself.
    rest[i * (n + 1)] = (rest[i * (n + 1)] as number) + 1e-5 * shape.scale ** 2;
  }
  return rest;
}
