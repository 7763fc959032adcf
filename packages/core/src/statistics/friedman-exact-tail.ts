import { arrangementCount, arrangements } from "./arrangements.ts";
import { betweenSquares } from "./friedman-statistic.ts";

/** Sorted vectors of doubled rank sums, one after the other, and their weights: the ways to them, or their chances. */
class Vectors {
  readonly items: number;
  readonly base: number;
  count = 0;
  sums: Int32Array;
  weights: Float64Array;
  private readonly places = new Map<number, number>();

  constructor(items: number, base: number) {
    this.items = items;
    this.base = base;
    this.sums = new Int32Array(64 * items);
    this.weights = new Float64Array(64);
  }

  add(sorted: Int32Array, weight: number): void {
    const { items } = this;
    // The total is fixed, so the smallest sum need not be in the key.
    let key = 0;
    for (let i = 1; i < items; i += 1) key = key * this.base + (sorted[i] as number);
    const found = this.places.get(key);
    if (found !== undefined) {
      this.weights[found] = (this.weights[found] as number) + weight;
      return;
    }
    if (this.count === this.weights.length) {
      const [sums, weights] = [this.sums, this.weights];
      this.sums = new Int32Array(2 * sums.length);
      this.weights = new Float64Array(2 * weights.length);
      this.sums.set(sums);
      this.weights.set(weights);
    }
    this.places.set(key, this.count);
    this.sums.set(sorted, this.count * items);
    this.weights[this.count] = weight;
    this.count += 1;
  }
}

function insertionSort(list: Int32Array): void {
  for (let i = 1; i < list.length; i += 1) {
    const value = list[i] as number;
    let j = i - 1;
    for (; j >= 0 && (list[j] as number) > value; j -= 1) list[j + 1] = list[j] as number;
    list[j + 1] = value;
  }
}

/** Turns a sorted vector into its mirror image about half of `twice` where that comes first in the dictionary. */
function canonical(sorted: Int32Array, twice: number): void {
  const n = sorted.length;
  for (let i = 0; i < n; i += 1) {
    const difference = (sorted[i] as number) - (twice - (sorted[n - 1 - i] as number));
    if (difference < 0) return;
    if (difference > 0) break;
    if (i === n - 1) return;
  }
  for (let i = 0, j = n - 1; i <= j; i += 1, j -= 1) {
    const [low, high] = [sorted[i] as number, sorted[j] as number];
    sorted[i] = twice - high;
    sorted[j] = twice - low;
  }
}

const isSymmetric = (row: readonly number[]): boolean => {
  const sorted = row.toSorted((a, b) => a - b);
  return sorted.every((x, i) => x + (sorted[sorted.length - 1 - i] ?? 0) === 2 * (row.length + 1));
};

/** Every order of a row, one after the other. */
function ordersOf(row: readonly number[], count: number): Int32Array {
  const flat = new Int32Array(count * row.length);
  let at = 0;
  for (const order of arrangements(row)) {
    flat.set(order, at);
    at += row.length;
  }
  return flat;
}

/**
 * P(Σ(doubled rank sum − its mean)² >= `between`) when every judge's row, with the ties it has, falls in any of
 * its orders with equal chance: the exact permutation law, each judge's tie pattern kept.
 *
 * Works judge by judge over the possible rank-sum vectors. Every vector has the same chance as its
 * rearrangements, so only the sorted one is kept, and the first judge may be held still. Where every judge's ranks are
 * as symmetric as without ties, a vector and its mirror image share one place too. The judges with most orders come
 * first, when there are fewest vectors; the last one is summed without being stored.
 *
 * Accuracy: whole numbers of ways while all orders together are at most 2^53, so that only the last division
 * rounds; beyond, sums of positive chances, relative error below 1e-12 (compared with whole-number enumeration).
 *
 * @param doubled rows of twice the midranks
 * @param between the observed Σ(doubled rank sum − mean)², an exact whole number
 * @param stepLimit most steps (a rank-sum vector met by one order of a row) that may be spent
 * @returns the probability, or null when it would take more steps than `stepLimit`
 */
export function friedmanExactTail(
  doubled: readonly (readonly number[])[],
  between: number,
  stepLimit: number,
): number | null {
  const [first = [], ...others] = doubled.toSorted((a, b) => arrangementCount(b) - arrangementCount(a));
  // One judge: every order gives the same sum of squares.
  if (others.length === 0) return betweenSquares(first, 1) >= between ? 1 : 0;
  const items = first.length;
  const base = 2 * items * doubled.length + 1;
  // A vector's key is one whole number in this base; past 2^53 there are more vectors than any limit lets by.
  if (base ** (items - 1) > Number.MAX_SAFE_INTEGER) return null;
  const allOrders = others.reduce((product, row) => product * arrangementCount(row), 1);
  const whole = allOrders <= Number.MAX_SAFE_INTEGER;
  const mirrored = doubled.every(isSymmetric);
  let states = new Vectors(items, base);
  states.add(Int32Array.from(first.toSorted((a, b) => a - b)), 1);
  const moved = new Int32Array(items);
  const centre = doubled.length * (items + 1);
  let steps = 0;
  let tail = 0;
  for (const [index, row] of others.entries()) {
    const count = arrangementCount(row);
    const share = whole ? 1 : 1 / count;
    steps += states.count * count;
    if (steps > stepLimit) return null;
    const last = index === others.length - 1;
    const orders = ordersOf(row, count);
    const next = new Vectors(items, base);
    // Twice the mean of the sums once this row is added.
    const twice = 2 * (index + 2) * (items + 1);
    for (let state = 0; state < states.count; state += 1) {
      const from = state * items;
      const weight = (states.weights[state] as number) * share;
      for (let at = 0; at < orders.length; at += items) {
        let squares = 0;
        for (let item = 0; item < items; item += 1) {
          const sum = (states.sums[from + item] as number) + (orders[at + item] as number);
          moved[item] = sum;
          squares += (sum - centre) * (sum - centre);
        }
        if (last) {
          if (squares >= between) tail += weight;
          continue;
        }
        insertionSort(moved);
        if (mirrored) canonical(moved, twice);
        next.add(moved, weight);
      }
    }
    states = next;
  }
  return Math.min(1, whole ? tail / allOrders : tail);
}
