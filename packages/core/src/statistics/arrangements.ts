/**
 * Every different order of a list in which some values may be equal.
 *
 * A list of n with t₁, t₂, … equal values has n!/(t₁!·t₂!·…) of them.
 *
 * @example arrangements([1, 1, 2]) // [[1, 1, 2], [1, 2, 1], [2, 1, 1]]
 */
export function arrangements(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]];
  const distinct = [...new Set(values)].sort((a, b) => a - b);
  return distinct.flatMap((first) => {
    const rest = [...values];
    rest.splice(rest.indexOf(first), 1);
    return arrangements(rest).map((tail) => [first, ...tail]);
  });
}
