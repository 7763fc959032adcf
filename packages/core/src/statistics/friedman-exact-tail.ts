import { arrangements } from "./arrangements.ts";
import { betweenSquares } from "./friedman-statistic.ts";

const orders = (row: readonly number[]): number => {
  const seen = new Map<number, number>();
  // n! divided by the factorials of the tie sizes, one factor at a time.
  return row.reduce((product, value, i) => {
    const times = (seen.get(value) ?? 0) + 1;
    seen.set(value, times);
    return (product * (i + 1)) / times;
  }, 1);
};

/**
 * P(Σ(rank sum − mean)² >= `between`) when every judge's row, with the ties it has, falls in any of its orders
 * with equal chance: the exact permutation law, each judge's tie pattern kept.
 *
 * Works judge by judge over the possible rank-sum vectors. Every vector has the same chance as its
 * rearrangements, so only the sorted one is kept. The judges with most orders come first, the last one is
 * summed without being stored.
 *
 * Accuracy: sums of positive doubles only; relative error below 1e-12 (compared with whole-number enumeration).
 *
 * @param doubled rows of twice the midranks
 * @param between the observed Σ(doubled rank sum − mean)²
 * @param stepLimit most steps (a rank-sum vector met by one order of a row) that may be spent
 * @returns the probability, or null when it would take more steps than `stepLimit`
 */
export function friedmanExactTail(
  doubled: readonly (readonly number[])[],
  between: number,
  stepLimit: number,
): number | null {
  const rows = doubled.map((row) => [...row].sort((a, b) => a - b)).sort((a, b) => orders(b) - orders(a));
  const items = rows[0]?.length ?? 0;
  const base = 2 * items * rows.length + 1;
  // A vector is stored as one whole number in this base; beyond 2^53 the count of vectors is out of reach anyway.
  if (base ** (items - 1) > Number.MAX_SAFE_INTEGER) return null;
  const known = new Map<string, number[][]>();
  let states = new Map<number, { sums: number[]; p: number }>([
    [0, { sums: Array.from({ length: items }, () => 0), p: 1 }],
  ]);
  let steps = 0;
  let tail = 0;
  for (const [index, row] of rows.entries()) {
    const last = index === rows.length - 1;
    // The first judge's orders are all rearrangements of one another: one will do.
    const count = index === 0 ? 1 : orders(row);
    steps += states.size * count;
    if (steps > stepLimit) return null;
    const pattern = row.join();
    const ways = index === 0 ? [row] : (known.get(pattern) ?? arrangements(row));
    if (index > 0) known.set(pattern, ways);
    const next = new Map<number, { sums: number[]; p: number }>();
    for (const { sums, p } of states.values()) {
      for (const way of ways) {
        const moved = sums.map((sum, item) => sum + (way[item] ?? 0));
        if (last) {
          if (betweenSquares(moved, rows.length) >= between) tail += p / count;
          continue;
        }
        moved.sort((a, b) => a - b);
        let key = 0;
        for (let item = 1; item < items; item += 1) key = key * base + (moved[item] ?? 0);
        const found = next.get(key);
        if (found) found.p += p / count;
        else next.set(key, { sums: moved, p: p / count });
      }
    }
    states = next;
  }
  return Math.min(1, tail);
}
