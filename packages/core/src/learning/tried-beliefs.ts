import { inverseOf } from "../numeric/index.ts";
import type { Taste } from "./learn-taste.ts";

/** Of each recipe's log worth less the mean over all recipes tried. */
export interface TriedBeliefs {
  readonly mean: readonly number[];
  readonly sd: readonly number[];
}

/**
 * What is believed of the recipes tried, in the order of `taste.recipes`. Only differences can be learned from rankings, so that the
 * mean of all is taken off, errors included.
 *
 * @example triedBeliefs(taste).mean
 */
export function triedBeliefs({ posterior }: Taste): TriedBeliefs {
  const { size: n, mean: before, root, centre, factor } = posterior;
  const all = centre.length;
  if (n === 0) return { mean: [], sd: [] };
  const rows = Array.from({ length: n }, (_, i) => root.slice(i * n, (i + 1) * n));
  const middle = new Float64Array(n);
  for (const row of rows) row.forEach((v, k) => (middle[k] = (middle[k] as number) + v / n));
  const inverse = inverseOf(factor, all);
  const mean: number[] = [];
  const sd: number[] = [];
  const level = before.reduce((sum, v) => sum + v / n, 0);
  for (const [i, row] of rows.entries()) {
    const own = row.map((v, k) => v - (middle[k] as number));
    let [sum, variance] = [(before[i] as number) - level, 0];
    for (let k = 0; k < n; k += 1) {
      const v = own[k] as number;
      sum += v * (centre[k] as number);
      for (let l = 0; l < n; l += 1) variance += v * (inverse[k * all + l] as number) * (own[l] as number);
    }
    mean.push(sum);
    sd.push(Math.sqrt(Math.max(0, variance)));
  }
  return { mean, sd };
}
