import { arrangements } from "./arrangements.ts";
import { centredColumns, type NumberTable, requireTable } from "./number-table.ts";
import type { Rng } from "./rng.ts";
import { shuffled } from "./shuffled.ts";

export interface RvTest {
  /** 0: nothing in common; 1: the same picture but for turning and size. */
  readonly rv: number;
  /** The RV that rows put together at random give on average: never near 0 for few items, so compare with it. */
  readonly byChance: number;
  /** P(RV this large or larger) when one table's rows are put in any order. */
  readonly p: number;
  readonly method: "exact" | "drawn";
}

/** Most items for which every order is gone through (8! = 40320). */
const EXACT_ITEMS = 8;
const DRAWN = 4999;

/** Products of all pairs of rows, the columns centred. */
const products = (table: NumberTable): number[][] => {
  const centred = centredColumns(table);
  return centred.map((a) => centred.map((b) => a.reduce((sum, x, j) => sum + x * (b[j] as number), 0)));
};

/**
 * How much two pictures of the same items have in common (two tasters' profiles, say): Escoufier's RV coefficient with a
 * permutation test.
 *
 * Rows are the same items in both, columns any. p is exact up to 8 items, else from 4999 drawn orders and the one observed.
 *
 * Source: Robert and Escoufier, Appl. Stat. 25 (1976) 257 (from memory).
 *
 * @param rng needed above 8 items only
 * @throws RangeError with fewer than 3 items, different numbers of rows, or a table whose rows are all alike
 * @example rvCoefficient([[0, 0], [1, 0], [0, 1]], [[0], [1], [2]]).rv
 */
export function rvCoefficient(one: NumberTable, other: NumberTable, rng: Rng): RvTest {
  requireTable("rvCoefficient", one, 3, 1);
  requireTable("rvCoefficient", other, 3, 1);
  if (one.length !== other.length) {
    throw new RangeError(
      `rvCoefficient requires the same items in both, got ${one.length} and ${other.length}`,
    );
  }
  const n = one.length;
  const [a, b] = [products(one), products(other)];
  const size = (m: readonly (readonly number[])[]): number =>
    Math.sqrt(m.flat().reduce((sum, x) => sum + x * x, 0));
  const scale = size(a) * size(b);
  if (!(scale > 0))
    throw new RangeError("rvCoefficient requires items that differ, got a table of equal rows");
  const rvOf = (order: readonly number[]): number => {
    let sum = 0;
    for (let i = 0; i < n; i += 1) {
      const [left, right] = [a[i] as number[], b[order[i] as number] as number[]];
      for (let j = 0; j < n; j += 1) sum += (left[j] as number) * (right[order[j] as number] as number);
    }
    return sum / scale;
  };
  const places = Array.from({ length: n }, (_, i) => i);
  const rv = rvOf(places);
  const exact = n <= EXACT_ITEMS;
  let [large, sum, all] = exact ? [0, 0, 0] : [1, 0, 1];
  const meet = (order: readonly number[]): void => {
    const here = rvOf(order);
    if (here >= rv - 1e-12) large += 1;
    sum += here;
    all += 1;
  };
  if (exact) for (const order of arrangements(places)) meet(order);
  else for (let i = 0; i < DRAWN; i += 1) meet(shuffled(places, rng));
  return { rv, byChance: sum / (exact ? all : DRAWN), p: large / all, method: exact ? "exact" : "drawn" };
}
