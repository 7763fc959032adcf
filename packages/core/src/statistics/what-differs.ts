import { columnMeans, type NumberTable, requireTable } from "./number-table.ts";
import type { Rng } from "./rng.ts";

export interface Differing {
  /** Column of the table. */
  readonly attribute: number;
  readonly mean: number;
  /** Two-sided, of this attribute by itself. */
  readonly p: number;
  /** Made good for having looked at all attributes: P(any attribute stands out as much) when nothing differs. */
  readonly pTogether: number;
}

export interface WhatDiffers {
  /** The attributes, those that stand out most first. */
  readonly attributes: readonly Differing[];
  readonly method: "exact" | "drawn";
}

/** Most judges for whom every choice of signs is gone through: 2^15 pairs of opposites. */
const EXACT_JUDGES = 16;
const DRAWN = 9999;

/**
 * Which attributes set one thing apart from another (the winner from the rest, say), all attributes looked at together.
 *
 * Rows are judges, columns attributes, each number the judge's score of the one less that of the other. Under the claim to be refuted
 * each judge's whole row might as well have had the other sign; an attribute's measure is |Σ|/√Σ² of its column, which flips leave
 * comparable. `pTogether` is from the largest measure of all (Westfall and Young, one step), so it knows that attributes go together
 * and is rarely as strict as sharing out alpha. Exact up to 16 judges; beyond, 9999 drawn choices and the one observed.
 *
 * With n judges who all differ the smallest p there can be is 2^(1 − n): five judges can't reach 0.05.
 *
 * Source: Westfall and Young, Resampling-Based Multiple Testing, 1993, 2.3 (from memory).
 *
 * @param rng needed above 16 judges only
 * @throws RangeError with no judge, a ragged table or a number that is not finite
 * @example whatDiffers([[1, 0], [2, 1], [1, -1]], repeatableRng(6)).attributes[0] // attribute 0, mean 1.33, p 0.25
 */
export function whatDiffers(differences: NumberTable, rng: Rng): WhatDiffers {
  requireTable("whatDiffers", differences, 1, 1);
  const n = differences.length;
  const means = columnMeans(differences);
  const scale = means.map((_, j) =>
    Math.sqrt(differences.reduce((sum, row) => sum + (row[j] as number) ** 2, 0)),
  );
  const columns = means.map((_, j) =>
    differences.map((row) => (scale[j] === 0 ? 0 : (row[j] as number) / (scale[j] as number))),
  );
  const observed = columns.map((column) => Math.abs(column.reduce((sum, x) => sum + x, 0)));
  const exact = n <= EXACT_JUDGES;
  // The choice observed counts among the drawn.
  const own = observed.map((): number => (exact ? 0 : 1));
  const together = [...own];
  const meet = (signs: readonly number[]): void => {
    const measures = columns.map((column) =>
      Math.abs(column.reduce((sum, x, i) => sum + x * (signs[i] as number), 0)),
    );
    const most = Math.max(...measures);
    observed.forEach((seen, j) => {
      // Measures that differ only by rounding are the same.
      if ((measures[j] as number) >= seen - 1e-12) own[j] = (own[j] as number) + 1;
      if (most >= seen - 1e-12) together[j] = (together[j] as number) + 1;
    });
  };
  const choices = exact ? 2 ** (n - 1) : DRAWN;
  for (let choice = 0; choice < choices; choice += 1) {
    // Opposites measure the same, so the last sign stays.
    meet(differences.map((_, i) => (exact ? (choice >> i) & 1 : rng.below(2)) * -2 + 1));
  }
  const all = exact ? choices : DRAWN + 1;
  return {
    attributes: means
      .map((mean, attribute) => ({
        attribute,
        mean,
        p: (own[attribute] as number) / all,
        pTogether: (together[attribute] as number) / all,
      }))
      .toSorted((a, b) => a.pTogether - b.pTogether || a.p - b.p || a.attribute - b.attribute),
    method: exact ? "exact" : "drawn",
  };
}
