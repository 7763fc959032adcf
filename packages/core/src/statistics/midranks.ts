/**
 * Ranks from 1, smallest value first; equal values share the mean of the ranks they take up.
 *
 * Every midrank is a whole number of halves, so the result is exact.
 *
 * @throws RangeError when a value is not a number (NaN); infinities are ordered as usual
 * @example midranks([10, 30, 10, 20]) // [1.5, 4, 1.5, 3]
 */
export function midranks(values: readonly number[]): number[] {
  const bad = values.findIndex((value) => Number.isNaN(value));
  if (bad >= 0) throw new RangeError(`midranks requires numbers, got NaN at index ${bad}`);
  return values.map((value) => {
    const below = values.filter((other) => other < value).length;
    const equal = values.filter((other) => other === value).length;
    return below + (equal + 1) / 2;
  });
}
