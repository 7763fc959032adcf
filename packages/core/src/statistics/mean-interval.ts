import type { Interval } from "./interval.ts";
import { studentHalfWidth } from "./student-and-f-laws.ts";

export interface MeanEstimate {
  readonly mean: number;
  /** Sample standard deviation (divisor n − 1); null for one value. */
  readonly sd: number | null;
  /** Student's two-sided interval; null for one value, which says nothing about its own uncertainty. */
  readonly interval: Interval | null;
  readonly count: number;
}

/**
 * The mean of some values and how well it is known.
 *
 * The interval takes the values as independent draws from one normal law; for scores on a short scale it is an approximation that is
 * good unless nearly all of them sit at one end. Values that are all equal give an interval of no width: then say so, it is not
 * certainty.
 *
 * @throws RangeError when there is no value, one is not finite, or the level is not between 0 and 1
 * @example meanInterval([4, 5, 6]) // mean 5, interval 2.52 to 7.48
 */
export function meanInterval(values: readonly number[], level = 0.95): MeanEstimate {
  const count = values.length;
  if (count === 0) throw new RangeError("meanInterval requires at least 1 value, got 0");
  const bad = values.find((x) => !Number.isFinite(x));
  if (bad !== undefined) throw new RangeError(`meanInterval requires finite values, got ${bad}`);
  const mean = values.reduce((sum, x) => sum + x, 0) / count;
  if (count === 1) return { mean, sd: null, interval: null, count };
  const sd = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (count - 1));
  const half = (studentHalfWidth(level, count - 1) * sd) / Math.sqrt(count);
  return { mean, sd, interval: { low: mean - half, high: mean + half }, count };
}
