import type { PlacedMixes } from "./noted-mix.ts";

/** What an exponent foretells of the mixes, before they are noted: means, and how they vary together as the parts may. */
export interface Foretold {
  readonly mean: Float64Array;
  /** Row after row. */
  readonly covariance: Float64Array;
}

/**
 * Means and covariances of the mixes over drawn levels of their parts.
 *
 * @param exponent as in `mixedBy` of blending: 1 the mean, Infinity the strongest
 * @param drawn from `drawLevels`, one array a part
 */
export function foretold(exponent: number, { mixes }: PlacedMixes, drawn: readonly Float64Array[]): Foretold {
  const draws = drawn[0]?.length ?? 0;
  const plain = exponent === 1 || exponent === Infinity;
  const powers = plain ? drawn : drawn.map((levels) => levels.map((level) => level ** exponent));
  const rows = mixes.map(({ places, shares }) => {
    const row = new Float64Array(draws);
    for (const [i, place] of places.entries()) {
      const levels = powers[place]!;
      const share = shares[i]!;
      for (let n = 0; n < draws; n += 1)
        row[n] = exponent === Infinity ? Math.max(row[n]!, levels[n]!) : row[n]! + share * levels[n]!;
    }
    return plain ? row : row.map((power) => power ** (1 / exponent));
  });
  const mean = Float64Array.from(rows, (row) => row.reduce((sum, level) => sum + level, 0) / draws);
  const covariance = new Float64Array(rows.length ** 2);
  for (const [a, row] of rows.entries())
    for (let b = 0; b <= a; b += 1) {
      const other = rows[b]!;
      let sum = 0;
      for (let n = 0; n < draws; n += 1) sum += (row[n]! - mean[a]!) * (other[n]! - mean[b]!);
      covariance[a * rows.length + b] = sum / draws;
      covariance[b * rows.length + a] = sum / draws;
    }
  return { mean, covariance };
}
