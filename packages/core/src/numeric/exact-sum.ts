import { runningSum } from "./running-sum.ts";
import type { RunningSum } from "./running-sum.ts";

let reused: RunningSum | undefined;

/**
 * The sum of finite numbers, correctly rounded: the double nearest to the exact sum, so the order of the terms never
 * matters. See `runningSum` for how.
 *
 * @throws RangeError when a term is not finite, or the sum overflows.
 * @example
 * exactSum([1e16, 1, -1e16]); // 1
 */
export function exactSum(values: Iterable<number>): number {
  // Taken out of the way while terms are fetched: an iterable may itself be summing.
  const sum = reused ?? runningSum();
  reused = undefined;
  sum.clear();
  for (const value of values) sum.add(value);
  reused = sum;
  return sum.total();
}
