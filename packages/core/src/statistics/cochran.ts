import { friedman } from "./friedman.ts";

export type CochranTest =
  | {
      readonly ok: true;
      readonly q: number;
      readonly df: number;
      readonly p: number;
      readonly method: "exact" | "chi-square";
    }
  /** Every judge said the same of every item. */
  | { readonly ok: false; readonly code: "nobody_told_any_apart" };

/**
 * Cochran's Q: whether something said or not said (a word used, a test passed) goes with the items.
 *
 * Rows are judges, columns items, true where it was said. It is Friedman's test with ties on a table of two values, so p is exact by
 * the same law (each judge says it as often as they did, of any items) while in reach, else chi-square with items − 1 degrees.
 *
 * Source: Cochran, Biometrika 37 (1950) 256.
 *
 * @throws RangeError as `friedman`
 * @example cochranQ([[true, false], [true, false], [true, false]]) // q 3, p 0.25
 */
export function cochranQ(said: readonly (readonly boolean[])[], exactStepLimit?: number): CochranTest {
  const table = said.map((row) => row.map(Number));
  const test = exactStepLimit === undefined ? friedman(table) : friedman(table, { exactStepLimit });
  return test.ok
    ? { ok: true, q: test.statistic, df: test.df, p: test.p, method: test.method }
    : { ok: false, code: test.code };
}
