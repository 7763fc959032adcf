import type { Concave } from "../numeric/index.ts";
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
  /** `safe`: curvature kept positive; else exactly minus the second derivatives. */
  curve(x: Float64Array, safe: boolean): ReturnType<Concave["curve"]>;
}

/** Rankings (`rankingLogLikelihood`) and marks (`markLikelihood`) together, of `worths` log worths. */
export function tasteLikelihood(
  { sets, sheets, noises, differences }: TasteData,
  worths: number,
): TasteLikelihood {
  const ties = tieSizes(sets);
  const rankings = rankingLogLikelihood(sets, worths, ties);
  const tie = { mean: WORTH_PRIOR.tieMean, sd: WORTH_PRIOR.tieSd };
  if (sheets.length === 0) return { ...rankings, others: ties.map(() => tie) };
  const marks = markLikelihood(sheets, noises, differences);
  const from = rankings.size;
  const size = from + marks.extras;
  return {
    size,
    others: [...ties.map(() => tie), ...Array.from({ length: marks.extras }, () => ({ mean: 0, sd: 1 }))],
    value: (x) => rankings.value(x.subarray(0, from)) + marks.value(x, x.subarray(from)),
    curve(x, safe) {
      const ranked = rankings.curve(x.subarray(0, from));
      const gradient = new Float64Array(size);
      gradient.set(ranked.gradient);
      const curvature = new Float64Array(size * size);
      for (let i = 0; i < from; i += 1)
        curvature.set(ranked.curvature.subarray(i * from, (i + 1) * from), i * size);
      const value = marks.add({ worths: x, extras: x.subarray(from), from, safe, gradient, curvature });
      return { value: ranked.value + value, gradient, curvature };
    },
  };
}
