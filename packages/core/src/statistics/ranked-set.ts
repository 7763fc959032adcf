/** What makes an item's appeal: parameters with their coefficients. Usually its own log worth, once. */
export type Appeal = readonly (readonly [parameter: number, coefficient: number])[];

/** One ranking of some items, best first; `sizes` are the sizes of its groups of ties, adding up to the items. */
export interface RankedSet {
  readonly appeals: readonly Appeal[];
  readonly sizes: readonly number[];
  /** How often this very ranking was made. */
  readonly times: number;
}

/** Sizes of ties above 1 that occur, ascending. */
export const tieSizes = (sets: readonly RankedSet[]): number[] =>
  [...new Set(sets.flatMap(({ sizes }) => sizes.filter((size) => size > 1)))].toSorted((a, b) => a - b);
