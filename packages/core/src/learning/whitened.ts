import { type Concave, fourProducts, product, solveLower, type Square } from "../numeric/index.ts";
import type { TasteLikelihood } from "./taste-likelihood.ts";

/** A likelihood over z, whose prior is standard normal: log worths are mean + root·z, all others their own mean and sd times z. */
export interface Whitened {
  /** With the prior. Its curvature is kept positive. */
  readonly target: Concave;
  /** Log worths and others at z. */
  at(z: Float64Array): Float64Array;
  /** z at log worths and others. */
  from(x: Float64Array): Float64Array;
  /** Slope and curvature of the likelihood carried from there to z, prior counted in. */
  carried(
    z: Float64Array,
    gradient: Float64Array,
    curvature: Square,
  ): { gradient: Float64Array; curvature: Square };
}

/** @param root lower triangle of the log worths' covariance */
export function whiten(likelihood: TasteLikelihood, mean: Float64Array, root: Square): Whitened {
  const size = mean.length;
  const all = likelihood.size;
  // Columns of what takes z to log worths and others, each from its diagonal down: sums run along them.
  const columns = new Float64Array(all * all);
  for (let k = 0; k < size; k += 1)
    for (let i = k; i < size; i += 1) columns[k * all + i] = root[i * size + k] as number;
  for (const [i, { sd }] of likelihood.others.entries()) columns[(size + i) * (all + 1)] = sd;
  // And its rows, each up to its diagonal.
  const rows = new Float64Array(all * all);
  for (let k = 0; k < all; k += 1)
    for (let i = k; i < all; i += 1) rows[i * all + k] = columns[k * all + i] as number;
  const endOf = (k: number): number => (k < size ? size : k + 1);
  const at = (z: Float64Array): Float64Array => {
    const x = new Float64Array(all);
    x.set(mean);
    for (const [i, own] of likelihood.others.entries()) x[size + i] = own.mean;
    for (let i = 0; i < all; i += 1) x[i] = (x[i] as number) + product(rows, i * all, z, 0, i + 1);
    return x;
  };
  const slopeOf = (z: Float64Array, gradient: Float64Array): Float64Array => {
    const slope = new Float64Array(all);
    for (let k = 0; k < all; k += 1)
      slope[k] = product(columns, k * all + k, gradient, k, endOf(k) - k) - (z[k] as number);
    return slope;
  };
  // Large, and the same at every step.
  const [half, raw] = [new Float64Array(all * all), new Float64Array(all * all)];
  const carried: Whitened["carried"] = (z, gradient, curvature) => {
    half.fill(0);
    const along = new Float64Array(all);
    for (let i = 0; i < all; i += 1) {
      along.fill(0);
      let most = 0;
      for (let j = 0; j < all; j += 1) {
        const w = curvature[i * all + j] as number;
        // Glasses that never stood in one flight curve nothing together.
        if (w === 0) continue;
        most = j + 1;
        for (let b = j < size ? 0 : j; b <= j; b += 1)
          along[b] = (along[b] as number) + w * (rows[j * all + b] as number);
      }
      for (let b = 0; b < most; b += 1) half[b * all + i] = along[b] as number;
    }
    const square = new Float64Array(all * all);
    const put = (a: number, b: number, sum: number): void => {
      square[a * all + b] = sum;
      square[b * all + a] = sum;
    };
    const four = new Float64Array(4);
    // Two columns and two rows at a time; of an odd last one, twice the same.
    for (let a = 0; a < all; a += 2) {
      const a2 = Math.min(a + 1, all - 1);
      const run = endOf(a2) - a;
      for (let b = 0; b <= a; b += 2) {
        const b2 = Math.min(b + 1, all - 1);
        fourProducts(columns, a * all + a, a2 * all + a, half, b * all + a, b2 * all + a, run, four);
        put(a, b, four[0] as number);
        put(a, b2, four[1] as number);
        put(a2, b, four[2] as number);
        put(a2, b2, four[3] as number);
      }
    }
    for (let b = 0; b < all; b += 1) square[b * all + b] = (square[b * all + b] as number) + 1;
    return { gradient: slopeOf(z, gradient), curvature: square };
  };
  const from = (x: Float64Array): Float64Array => {
    const z = new Float64Array(all);
    z.set(
      solveLower(
        root,
        mean.map((v, i) => (x[i] as number) - v),
      ),
    );
    for (const [i, own] of likelihood.others.entries())
      z[size + i] = ((x[size + i] as number) - own.mean) / own.sd;
    return z;
  };
  const prior = (z: Float64Array): number => z.reduce((sum, v) => sum - (v * v) / 2, 0);
  return {
    at,
    from,
    carried,
    target: {
      size: all,
      value: (z) => likelihood.value(at(z)) + prior(z),
      curve(z) {
        const gradient = new Float64Array(all);
        raw.fill(0);
        const value = likelihood.add(at(z), true, gradient, raw);
        return { value: value + prior(z), ...carried(z, gradient, raw) };
      },
      slope(z) {
        const gradient = new Float64Array(all);
        const value = likelihood.add(at(z), true, gradient, raw);
        return { value: value + prior(z), gradient: slopeOf(z, gradient) };
      },
    },
  };
}
