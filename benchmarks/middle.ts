/** The middle of an odd count of numbers, the upper of the two middle ones of an even count. */
export const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
