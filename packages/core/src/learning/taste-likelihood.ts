import type { Square } from "../numeric/index.ts";
import { type RankedSet, rankingLogLikelihood, tieSizes, WORTH_PRIOR } from "../statistics/index.ts";
import { markLikelihood } from "./mark-likelihood.ts";
import type { TastedMarks } from "./marks.ts";

/** What was said of what was tasted, by number. */
export interface TasteData {
  readonly sets: readonly RankedSet[];
  readonly sheets: readonly TastedMarks[];
  /** Of every scorer: how much chance is in a mark, against that in a ranking. */
  readonly noises: readonly number[];
  /** How large differences in log worth are beforehand: the scale of the taste's shape. */
  readonly differences: number;
}

/** ln of the chance of all that was said, over log worths and then what else is not known, each of that with a normal prior. */
export interface TasteLikelihood {
  readonly size: number;
  readonly others: readonly { readonly mean: number; readonly sd: number }[];
  value(x: Float64Array): number;
  /**
   * Adds gradient and curvature; the value comes back. `safe`: curvature kept positive; else exactly minus the second derivatives.
   */
  add(x: Float64Array, safe: boolean, gradient: Float64Array, curvature: Square): number;
}

/** Rankings (`rankingLogLikelihood`) and marks (`markLikelihood`) together, of `worths` log worths. */
export function tasteLikelihood(
  { sets, sheets, noises, differences }: TasteData,
  worths: number,
): TasteLikelihood {
  const ties = tieSizes(sets);
  const rankings = rankingLogLikelihood(sets, worths, ties);
  const tie = { mean: WORTH_PRIOR.tieMean, sd: WORTH_PRIOR.tieSd };
  if (sheets.length === 0)
    return {
      size: rankings.size,
      others: ties.map(() => tie),
      value: (x) => rankings.value(x),
      add: (x, _, gradient, curvature) => rankings.add(x, gradient, curvature),
    };
  const marks = markLikelihood(sheets, noises, differences);
  const from = rankings.size;
  const size = from + marks.extras;
  return {
    size,
    others: [...ties.map(() => tie), ...Array.from({ length: marks.extras }, () => ({ mean: 0, sd: 1 }))],
    value: (x) => rankings.value(x.subarray(0, from)) + marks.value(x, x.subarray(from)),
    add: (x, safe, gradient, curvature) =>
      rankings.add(x, gradient, curvature) +
      marks.add({ worths: x, extras: x.subarray(from), from, safe, gradient, curvature }),
  };
}
