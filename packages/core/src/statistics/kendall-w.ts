import { type Friedman, friedman } from "./friedman.ts";

export type Concordance =
  | {
      readonly ok: true;
      /** Kendall's W with the tie correction: 0 no agreement, 1 complete. */
      readonly w: number;
      /** P(W this large or larger) when everybody ranks at random. */
      readonly p: number;
      readonly method: "exact" | "chi-square";
      /** The mean Spearman correlation of all pairs of judges, (n·W − 1)/(n − 1); null for one judge. */
      readonly meanCorrelation: number | null;
    }
  | { readonly ok: false; readonly code: "nobody_told_any_apart" };

/**
 * How far judges agree: Kendall's coefficient of concordance W, with its exact p where that is in reach.
 *
 * W is Friedman's statistic over its largest value, so the two tests are one and p is the same. The mean correlation is that of
 * the midranks (exactly so without ties).
 *
 * Source: Kendall and Babington Smith, Ann. Math. Stat. 10 (1939) 275.
 *
 * @throws RangeError as `friedman`
 * @example concordance([[1, 2, 3], [1, 2, 3], [1, 2, 3]]) // w 1, p 1/36, meanCorrelation 1
 */
export function concordance(table: readonly (readonly number[])[], exactStepLimit?: number): Concordance {
  const test: Friedman = exactStepLimit === undefined ? friedman(table) : friedman(table, { exactStepLimit });
  if (!test.ok) return { ok: false, code: test.code };
  const { kendallW: w, judges, p, method } = test;
  return { ok: true, w, p, method, meanCorrelation: judges === 1 ? null : (judges * w - 1) / (judges - 1) };
}
