import type { Adds } from "./adds.ts";
import type { Axes } from "./axes.ts";

/**
 * The squared distance over the attributes as a sum over slots and over pairs of slots. With x = share × (intensity - target), whatever
 * is chosen: |sum of x|² = sum of |x|² + sum over pairs of 2 x·y. So a choice costs as many additions as it has pairs, however many
 * attributes there are. What is not known stands at the middle of what it may be, which is never further off than the worst.
 */
export type PairCosts = {
  /** By slot and candidate: |x|². */
  readonly own: readonly Float64Array[];
  /** By slot, later slot, candidate × the later slot's candidates + candidate of it: 2 x·y. */
  readonly pair: readonly (readonly (Float64Array | null)[])[];
};

export function pairCosts(
  axes: Axes,
  slots: readonly { readonly share: number; readonly adds: readonly Adds[] }[],
): PairCosts {
  const size = axes.attributes.length;
  const rows = slots.map(({ share, adds }) => {
    const all = new Float64Array(adds.length * size);
    for (const [n, { low, high }] of adds.entries())
      for (let a = 0; a < size; a += 1)
        all[n * size + a] = Math.sqrt(axes.weight[a]!) * ((low[a]! + high[a]!) / 2 - share * axes.target[a]!);
    return all;
  });
  const along = (one: Float64Array, n: number, two: Float64Array, m: number): number => {
    let sum = 0;
    for (let a = 0; a < size; a += 1) sum += one[n * size + a]! * two[m * size + a]!;
    return sum;
  };
  const count = (slot: number): number => slots[slot]!.adds.length;
  return {
    own: rows.map((row, slot) => Float64Array.from({ length: count(slot) }, (_, n) => along(row, n, row, n))),
    pair: rows.map((row, slot) =>
      rows.map((other, later) => {
        if (later <= slot) return null;
        const table = new Float64Array(count(slot) * count(later));
        for (let n = 0; n < count(slot); n += 1)
          for (let m = 0; m < count(later); m += 1) table[n * count(later) + m] = 2 * along(row, n, other, m);
        return table;
      }),
    ),
  };
}
