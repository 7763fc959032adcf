import { holm, normalCumulative, normalQuantile } from "../statistics/index.ts";
import type { KnownIntensity, KnownProfile } from "./mixed-profile.ts";

/** What became of one attribute. */
export type Became = "more" | "less" | "not told apart" | "not predicted" | "not observed";

export interface AgainstSum {
  readonly attribute: string;
  readonly predicted: KnownIntensity | null;
  readonly observed: KnownIntensity | null;
  /** Observed less predicted, and the interval that holds it at the level asked; null where one of them is unknown. */
  readonly difference: { readonly mean: number; readonly low: number; readonly high: number } | null;
  /** Two-sided, by the normal law; null where one is unknown. */
  readonly p: number | null;
  /** The same made good for all attributes compared (Holm). */
  readonly pTogether: number | null;
  readonly became: Became;
}

/** From this p on a difference may be luck: the customary level. */
const AGAINST_SUM_LEVEL = 0.05;

/** One mix: what its parts predict, and what was observed. */
export interface MixPair {
  readonly predicted: KnownProfile;
  readonly observed: KnownProfile;
}

/**
 * What mixing did to the sum, for one mix or for several looked at together: each attribute as it was observed beside what the parts
 * predict, p made good for all attributes of all of them. Unknown stays unknown: an attribute that either side is silent on is named and
 * not tested. Differences are taken as normal with variance the sum of both variances; where a spread rests on few notes that is a
 * rough law, no better than the spreads.
 *
 * @returns for each mix its rows, the surest difference first, then the unknown by attribute
 * @example mixAgainstSum([{ predicted: { a: { mean: 5, sd: 0.6 } }, observed: { a: { mean: 8, sd: 0.8 } } }])[0][0].became
 * // "more" (p 0.0027)
 */
export function mixAgainstSum(mixes: readonly MixPair[], level = 0.95): AgainstSum[][] {
  const reach = normalQuantile((1 + level) / 2);
  const rows = mixes.map(({ predicted, observed }) =>
    [...new Set([...Object.keys(predicted), ...Object.keys(observed)])]
      .toSorted()
      .map((attribute) => rowOf(attribute, predicted[attribute], observed[attribute], reach)),
  );
  const together = holm(rows.flat().flatMap(({ p }) => (p === null ? [] : [p])));
  let next = 0;
  return rows.map((own) =>
    own
      .map((row): AgainstSum => {
        if (row.p === null || row.difference === null) return row;
        const pTogether = together[next++] ?? 1;
        const differs = row.difference.mean > 0 ? "more" : "less";
        return { ...row, pTogether, became: pTogether < AGAINST_SUM_LEVEL ? differs : "not told apart" };
      })
      .toSorted((a, b) => (a.p ?? 2) - (b.p ?? 2)),
  );
}

function rowOf(
  attribute: string,
  predicted: KnownIntensity | undefined,
  observed: KnownIntensity | undefined,
  reach: number,
): AgainstSum {
  const known = { attribute, predicted: predicted ?? null, observed: observed ?? null };
  if (predicted === undefined || observed === undefined) {
    const became = predicted === undefined ? "not predicted" : "not observed";
    return { ...known, difference: null, p: null, pTogether: null, became };
  }
  const mean = observed.mean - predicted.mean;
  const sd = Math.hypot(predicted.sd, observed.sd);
  const p = mean === 0 ? 1 : Math.min(1, 2 * normalCumulative(-Math.abs(mean) / sd));
  const difference = { mean, low: mean - reach * sd, high: mean + reach * sd };
  return { ...known, difference, p, pTogether: p, became: "not told apart" };
}
