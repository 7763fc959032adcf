/**
 * Neumaier's compensated sum: no allocation, error about one unit in the last place of the sum plus
 * n² eps² times the sum of absolute values. Use `exactSum` where the order must not matter at all.
 *
 * Source: A. Neumaier, Z. Angew. Math. Mech. 54 (1974) 39-51.
 *
 * @example
 * compensatedSum([1, 1e100, 1, -1e100]); // 2
 */
export function compensatedSum(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const x of values) {
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
}
