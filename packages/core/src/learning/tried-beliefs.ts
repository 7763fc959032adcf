import { dot, product, solveLowerRows } from "../numeric/index.ts";
import { commonCovariance, tiesTo } from "./any-mix.ts";
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
export function triedBeliefs(taste: Taste): TriedBeliefs {
  const { recipes, kernel, shape, ownShare, posterior } = taste;
  const { root, centre, factor, size } = posterior;
  const n = recipes.length;
  if (n === 0) return { mean: [], sd: [] };
  const all = centre.length;
  // Where tasters are one, each recipe was tasted as it is: nothing of it hangs on anything else.
  const one = ownShare === 0;
  const ties = one
    ? root
    : tiesTo(
        taste,
        recipes.map(({ placed }) => placed),
      );
  const rows = recipes.map((_, i) => ties.subarray(i * size, (i + 1) * size));
  const before = recipes.map(({ placed }) => kernel.mean(placed, shape));
  const level = meanOf(before);
  const middle = Float64Array.from({ length: size }, (_, k) => meanOf(rows.map((row) => row[k] as number)));
  const rest = recipes.map(({ placed: a }, i) =>
    recipes.map(({ placed: b }, j) =>
      one ? 0 : commonCovariance(taste, a, b) - dot(rows[i] as Float64Array, rows[j] as Float64Array),
    ),
  );
  const restOf = rest.map(meanOf);
  const restAll = meanOf(restOf);
  const off = new Float64Array(n * all);
  for (const [i, row] of rows.entries())
    for (let k = 0; k < size; k += 1) off[i * all + k] = (row[k] as number) - (middle[k] as number);
  const mean = before.map((own, i) => own - level + product(off, i * all, centre, 0, size));
  solveLowerRows(factor, all, off);
  const sd = rest.map((own, i) => {
    const unlearned = (own[i] as number) - 2 * (restOf[i] as number) + restAll;
    return Math.sqrt(Math.max(0, unlearned + product(off, i * all, off, i * all, all)));
  });
  return { mean, sd };
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
