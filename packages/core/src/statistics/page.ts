import { midranks } from "./midranks.ts";
import { normalCumulative } from "./normal-law.ts";

export interface PageTest {
  /** Page's L: Σ over items of (place in the order foretold)·(rank sum). */
  readonly l: number;
  /** L's mean and standard deviation when everybody ranks at random, each judge's ties kept. */
  readonly mean: number;
  readonly sd: number;
  /** P(L this large or larger) by chance: one-sided, towards the order foretold. */
  readonly p: number;
  readonly method: "exact" | "normal";
}

/** Most items for which the exact law is worked out: 2^items sets of ranks are gone through for every pattern of ties. */
export const PAGE_EXACT_ITEMS = 12;

/** The law of Σ place·(doubled rank) for one judge: chances by sum, from `lowest` on in steps of 1. */
interface SumLaw {
  readonly lowest: number;
  readonly chances: Float64Array;
}

function judgeLaw(doubled: readonly number[]): SumLaw {
  const n = doubled.length;
  const most = doubled.toSorted((a, b) => a - b).reduce((sum, rank, i) => sum + (i + 1) * rank, 0);
  // by[set]: ways by sum, the set's ranks having been given to the first places.
  const by: (Float64Array | undefined)[] = Array.from({ length: 1 << n });
  by[0] = Float64Array.of(1);
  for (let set = 0; set < (1 << n) - 1; set += 1) {
    const ways = by[set];
    if (ways === undefined) continue;
    let place = 1;
    for (let rest = set; rest > 0; rest &= rest - 1) place += 1;
    for (let i = 0; i < n; i += 1) {
      if ((set & (1 << i)) !== 0) continue;
      const gain = place * (doubled[i] as number);
      const to = set | (1 << i);
      const old = by[to];
      const merged = new Float64Array(Math.max(old?.length ?? 0, ways.length + gain));
      if (old !== undefined) merged.set(old);
      for (let s = 0; s < ways.length; s += 1) {
        if (ways[s] !== 0) merged[s + gain] = (merged[s + gain] as number) + (ways[s] as number);
      }
      by[to] = merged;
    }
    by[set] = undefined;
  }
  const whole = by[(1 << n) - 1] ?? Float64Array.of(1);
  const lowest = whole.findIndex((ways) => ways > 0);
  const all = whole.reduce((sum, ways) => sum + ways, 0);
  return { lowest, chances: whole.slice(lowest, most + 1).map((ways) => ways / all) };
}

function sumOf(a: SumLaw, b: SumLaw): SumLaw {
  const chances = new Float64Array(a.chances.length + b.chances.length - 1);
  for (let i = 0; i < a.chances.length; i += 1) {
    const x = a.chances[i] as number;
    if (x === 0) continue;
    for (let j = 0; j < b.chances.length; j += 1) {
      chances[i + j] = (chances[i + j] as number) + x * (b.chances[j] as number);
    }
  }
  return { lowest: a.lowest + b.lowest, chances };
}

/**
 * Page's test that judges rank items in an order foretold: better than Friedman's where the order was named before tasting.
 *
 * Rows are judges, columns items in the order foretold, smallest value first; each row is ranked by itself and ties share the mean
 * rank. L = Σⱼ j·Rⱼ. p is one-sided and exact up to 12 items, whatever the number of judges: every judge's law, given that judge's
 * ties, is found by going through sets of ranks, and the laws are convolved. Beyond, the normal approximation with the exact mean and
 * variance, and `method` says so.
 *
 * Accuracy of the exact p: sums of positive chances, relative 1e-12 (counts of one judge are exact to 2^53, 12! included).
 * Source: Page, J. Am. Stat. Assoc. 58 (1963) 216; Hollander, Wolfe and Chicken, 7.2 (from memory).
 *
 * @throws RangeError when there is no judge, fewer than 2 items, a row of another length, or a NaN
 * @example page([[1, 2, 3], [1, 2, 3]]) // l 28, p 1/36
 */
export function page(table: readonly (readonly number[])[]): PageTest {
  const items = table[0]?.length ?? 0;
  if (table.length === 0) throw new RangeError("page requires at least 1 judge, got 0");
  if (items < 2) throw new RangeError(`page requires at least 2 items, got ${items}`);
  const odd = table.findIndex((row) => row.length !== items);
  if (odd >= 0)
    throw new RangeError(`page requires ${items} values in row ${odd}, got ${table[odd]?.length}`);
  const doubled = table.map((row) => midranks(row).map((rank) => 2 * rank));
  const twiceL = doubled.reduce(
    (sum, row) => sum + row.reduce((part, rank, i) => part + (i + 1) * rank, 0),
    0,
  );
  const middle = (items + 1) / 2;
  const places = (items * (items * items - 1)) / 12;
  const mean = (table.length * items * (items + 1) ** 2) / 4;
  const variance = doubled.reduce(
    (sum, row) =>
      sum + (places * row.reduce((part, rank) => part + (rank / 2 - middle) ** 2, 0)) / (items - 1),
    0,
  );
  const summary = { l: twiceL / 2, mean, sd: Math.sqrt(variance) };
  if (items > PAGE_EXACT_ITEMS) {
    const p = variance === 0 ? 1 : normalCumulative((mean - summary.l) / summary.sd);
    return { ...summary, p, method: "normal" };
  }
  const laws = new Map<string, SumLaw>();
  const pooled = doubled
    .map((row) => {
      const pattern = row.toSorted((a, b) => a - b);
      const key = pattern.join();
      const law = laws.get(key) ?? judgeLaw(pattern);
      laws.set(key, law);
      return law;
    })
    .reduce(sumOf);
  let p = 0;
  for (let i = pooled.chances.length - 1; i >= Math.max(0, twiceL - pooled.lowest); i -= 1) {
    p += pooled.chances[i] as number;
  }
  return { ...summary, p: Math.min(1, p), method: "exact" };
}
