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

/**
 * What mixing did to the sum: each attribute as it was observed beside what the parts predict. Unknown stays unknown: an attribute
 * that either side is silent on is named and not tested. Differences are taken as normal with variance the sum of both variances; where
 * a spread rests on few notes that is a rough law, and the result errs to calling too little different only as far as the spreads do.
 *
 * @returns rows with the surest difference first, then those not told apart, then the unknown, each by attribute
 * @example mixAgainstSum({ a: { mean: 5, sd: 0.6 } }, { a: { mean: 8, sd: 0.8 } })[0].became // "more" (p 0.0027)
 */
export function mixAgainstSum(predicted: KnownProfile, observed: KnownProfile, level = 0.95): AgainstSum[] {
  const attributes = [...new Set([...Object.keys(predicted), ...Object.keys(observed)])].toSorted();
  const both = attributes.flatMap((attribute) => {
    const [from, to] = [predicted[attribute], observed[attribute]];
    return from === undefined || to === undefined ? [] : [{ attribute, from, to }];
  });
  const ps = both.map(({ from, to }) => {
    const sd = Math.hypot(from.sd, to.sd);
    const off = Math.abs(to.mean - from.mean);
    return off === 0 ? 1 : Math.min(1, 2 * normalCumulative(-off / sd));
  });
  const together = holm(ps);
  const reach = normalQuantile((1 + level) / 2);
  const compared = both.map(({ attribute, from, to }, i): AgainstSum & { readonly p: number } => {
    const mean = to.mean - from.mean;
    const far = reach * Math.hypot(from.sd, to.sd);
    const pTogether = together[i] ?? 1;
    return {
      attribute,
      predicted: from,
      observed: to,
      difference: { mean, low: mean - far, high: mean + far },
      p: ps[i] ?? 1,
      pTogether,
      became: pTogether >= AGAINST_SUM_LEVEL ? "not told apart" : mean > 0 ? "more" : "less",
    };
  });
  const silent = attributes.flatMap((attribute): AgainstSum[] => {
    const [from, to] = [predicted[attribute] ?? null, observed[attribute] ?? null];
    if (from !== null && to !== null) return [];
    const became = from === null ? "not predicted" : "not observed";
    return [{ attribute, predicted: from, observed: to, difference: null, p: null, pTogether: null, became }];
  });
  return [...compared.toSorted((a, b) => a.p - b.p), ...silent];
}
