import { columnMeans, covarianceOf, type NumberTable, requireTable } from "./number-table.ts";
import type { Interval } from "./interval.ts";
import { studentHalfWidth } from "./student-and-f-laws.ts";
import type { Rng } from "./rng.ts";

export interface Distance {
  /** Root mean square difference over the attributes, what the judges' scatter adds by itself taken off; 0 when that is all there is. */
  readonly distance: number;
  /** The same with the scatter left in: never below the truth on average. */
  readonly plain: number;
  /** Normal approximation. */
  readonly interval: Interval;
  /** By drawing judges again and again. */
  readonly bootstrap: Interval;
}

const RESAMPLES = 2000;

/** The mean square of the mean differences, and what scatter adds to it on average. */
function squared(table: NumberTable): { square: number; scatter: number } {
  const means = columnMeans(table);
  const n = table.length;
  const variance = means.map(
    (mean, j) => table.reduce((sum, row) => sum + ((row[j] as number) - mean) ** 2, 0) / (n - 1),
  );
  const width = means.length;
  return {
    square: means.reduce((sum, x) => sum + x * x, 0) / width,
    scatter: variance.reduce((sum, x) => sum + x, 0) / n / width,
  };
}

/**
 * How far something lies from a target over several attributes, from each judge's differences.
 *
 * Rows are judges, columns attributes, each number the judge's score of the thing less that of the target (their own score of it, or a
 * fixed profile). The mean differences' mean square is too large by what scatter adds (the trace of the covariance over n); that is
 * taken off. Both intervals are for the mean square and carried over by the root, so they may start at 0.
 *
 * Few judges make both intervals rough: see the coverage printed by the test; the normal one is the safer for fewer than 8.
 *
 * @throws RangeError with fewer than 2 judges, a ragged table or a number that is not finite
 * @example distanceTo([[1, 0], [2, 1], [1, -1]], repeatableRng(6)).distance
 */
export function distanceTo(differences: NumberTable, rng: Rng, level = 0.95): Distance {
  requireTable("distanceTo", differences, 2, 1);
  if (!(level > 0 && level < 1)) throw new RangeError(`distanceTo requires 0 < level < 1, got ${level}`);
  const n = differences.length;
  const { square, scatter } = squared(differences);
  const means = columnMeans(differences);
  const covariance = covarianceOf(differences);
  const width = means.length;
  // Var(Σ mean²) = 4 d'Σd/n + 2 tr(Σ²)/n² for normal differences; d'Σd is itself too large by tr(Σ²)/n on average.
  const spread = covariance.flat().reduce((sum, x) => sum + x * x, 0);
  const along = means.reduce(
    (sum, x, i) => sum + x * means.reduce((part, y, j) => part + (covariance[i]?.[j] as number) * y, 0),
    0,
  );
  const error = Math.sqrt((4 * along) / n + (2 * spread) / (n * n)) / width;
  const rooted = (x: number): number => Math.sqrt(Math.max(0, x));
  const half = studentHalfWidth(level, n - 1) * error;
  const squares = Array.from({ length: RESAMPLES }, () => {
    const again = squared(Array.from({ length: n }, () => differences[rng.below(n)] as readonly number[]));
    // The scatter is added twice: once in the judges drawn from, once by drawing from them.
    return again.square - 2 * scatter;
  }).toSorted((a, b) => a - b);
  const at = (share: number): number =>
    squares[Math.min(RESAMPLES - 1, Math.max(0, Math.floor(share * RESAMPLES)))] as number;
  return {
    distance: rooted(square - scatter),
    plain: rooted(square),
    interval: { low: rooted(square - scatter - half), high: rooted(square - scatter + half) },
    bootstrap: { low: rooted(at((1 - level) / 2)), high: rooted(at((1 + level) / 2)) },
  };
}
