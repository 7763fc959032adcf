import { poissonBinomialTail } from "../statistics/index.ts";

/** Where one taster put one blend among the glasses of one ranking: 1 the best; level ones share the mean of their places. */
export type SheetPlace = {
  readonly place: number;
  readonly of: number;
  /** How many stand level with it, itself among them. */
  readonly level: number;
};

/**
 * How one blend did over sheets of different flights, beside different others: how often it was put first and alone, how often luck
 * does that, and the mean share of the others it was put before.
 *
 * Luck: rankings at random, independent, each with a chance of 1 in the number of its glasses. A tie for the first place is no first
 * place, which never makes luck look smaller than it is. Nothing is said of what others it beat: they differ from kitchen to kitchen.
 *
 * @throws RangeError for no sheets, fewer than two glasses, or a place beyond them
 * @example placesTogether([{ place: 1, of: 3, level: 1 }]) // first 1, byLuck 1/3, pAtLeast 1/3, ahead 1
 */
export function placesTogether(sheets: readonly SheetPlace[]): {
  readonly first: number;
  readonly byLuck: number;
  readonly pAtLeast: number;
  readonly ahead: number;
} {
  if (sheets.length === 0) throw new RangeError("places together requires one sheet at least, got none");
  for (const { place, of } of sheets)
    if (!(of >= 2 && place >= 1 && place <= of))
      throw new RangeError(
        `a place requires 1 to the number of glasses, two at least, got ${place} of ${of}`,
      );
  const first = sheets.filter(({ place, level }) => place === 1 && level === 1).length;
  const chances = sheets.map(({ of }) => 1 / of);
  return {
    first,
    byLuck: chances.reduce((sum, p) => sum + p, 0),
    pAtLeast: poissonBinomialTail(chances, first),
    ahead: sheets.reduce((sum, { place, of }) => sum + (of - place) / (of - 1), 0) / sheets.length,
  };
}
