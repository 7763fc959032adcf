import { chiSquareUpperTail } from "./chi-square-upper-tail.ts";
import { friedmanExactTail } from "./friedman-exact-tail.ts";
import { type RankTable, rankTable } from "./friedman-statistic.ts";

interface RankSummary {
  readonly judges: number;
  readonly items: number;
  /** One an item; ties share the mean rank, so halves occur. Smaller is better. */
  readonly rankSums: readonly number[];
  readonly meanRanks: readonly number[];
}

export interface FriedmanTest extends RankSummary {
  readonly ok: true;
  /** Friedman's chi-square with the tie correction, 0 to judges·(items − 1). */
  readonly statistic: number;
  readonly df: number;
  /** P(statistic this large or larger) when every judge ranks at random, ties kept. */
  readonly p: number;
  readonly method: "exact" | "chi-square";
  /** Kendall's coefficient of concordance with the tie correction, 0 (no agreement) to 1 (complete). */
  readonly kendallW: number;
}

/** The honest "no": every judge tied every item, so there is nothing to test. */
export interface NothingRanked extends RankSummary {
  readonly ok: false;
  readonly code: "nobody_told_any_apart";
}

export type Friedman = FriedmanTest | NothingRanked;

/**
 * Steps the exact law may take unless told otherwise: some 0.2 seconds' work. Without ties that covers up to
 * 227 judges of 3 items, 40 of 4, 13 of 5, 6 of 6, 3 of 7 and 2 of 8 to 10; with ties more.
 */
export const EXACT_STEP_LIMIT = 6_000_000;

function checked(table: readonly (readonly number[])[]): RankTable {
  const items = table[0]?.length ?? 0;
  if (table.length === 0) throw new RangeError("friedman requires at least 1 judge, got 0");
  if (items < 2) throw new RangeError(`friedman requires at least 2 items, got ${items}`);
  const odd = table.findIndex((row) => row.length !== items);
  if (odd >= 0) {
    throw new RangeError(`friedman requires ${items} values in row ${odd}, got ${table[odd]?.length}`);
  }
  return rankTable(table);
}

/**
 * Friedman's test that the judges' rankings of the same items are more than chance agreement.
 *
 * Rows are judges, columns items, values ranks or scores, smaller better; each row is ranked by itself and ties
 * share the mean rank. The statistic is the tie-corrected one,
 * (k − 1)·Σⱼ(Rⱼ − n(k+1)/2)² / Σᵢⱼ(rᵢⱼ − (k+1)/2)² for n judges and k items, which without ties is the textbook
 * 12/(nk(k+1))·ΣRⱼ² − 3n(k+1). W = statistic / (n(k − 1)). The test looks for any difference: one upper tail,
 * no direction.
 *
 * p is exact (the permutation law given each judge's own ties) while that takes no more than
 * `exactStepLimit` steps; beyond it p is the chi-square approximation with k − 1 degrees of freedom, and
 * `method` says which. For few judges the approximation errs to the larger p in the tail that matters (below
 * about 0.1), so it takes less as proven than the exact law would. With one judge p is 1: one ranking cannot agree with anybody.
 *
 * Sources: Friedman, J. Am. Stat. Assoc. 32 (1937) 675; Hollander, Wolfe and Chicken, Nonparametric Statistical
 * Methods, 3rd ed., section 7.1 (ties: formula 7.8); Kendall and Babington Smith, Ann. Math. Stat. 10 (1939) 275.
 *
 * @throws RangeError when there is no judge, fewer than 2 items, a row of another length, or a NaN
 * @example friedman([[1, 2, 3], [1, 2, 3], [1, 2, 3]]) // statistic 6, p 1/36, method "exact", kendallW 1
 */
export function friedman(
  table: readonly (readonly number[])[],
  { exactStepLimit = EXACT_STEP_LIMIT }: { readonly exactStepLimit?: number } = {},
): Friedman {
  const { doubled, doubledSums, between, spread } = checked(table);
  const judges = table.length;
  const items = doubledSums.length;
  const rankSums = doubledSums.map((sum) => sum / 2);
  const summary = { judges, items, rankSums, meanRanks: rankSums.map((sum) => sum / judges) };
  if (spread === 0) return { ok: false, code: "nobody_told_any_apart", ...summary };
  const df = items - 1;
  const statistic = (df * between) / spread;
  const exact = friedmanExactTail(doubled, between, exactStepLimit);
  return {
    ok: true,
    ...summary,
    statistic,
    df,
    p: exact ?? chiSquareUpperTail(statistic, df),
    method: exact === null ? "chi-square" : "exact",
    kendallW: statistic / (judges * df),
  };
}
