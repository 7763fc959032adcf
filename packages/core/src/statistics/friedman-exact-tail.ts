import { arrangementCount, arrangements } from "./arrangements.ts";
import { betweenSquares } from "./friedman-statistic.ts";

/** A sorted vector of doubled rank sums and its weight: the ways to it, or its chance. */
interface State {
  readonly sums: readonly number[];
  weight: number;
}

function insertionSort(list: number[]): void {
  for (let i = 1; i < list.length; i += 1) {
    const value = list[i] as number;
    let j = i - 1;
    for (; j >= 0 && (list[j] as number) > value; j -= 1) list[j + 1] = list[j] as number;
    list[j + 1] = value;
  }
}

/** Calls `visit` with each sum of a state and an order of the row, in one array that is used again. */
function eachSum(
  states: Iterable<State>,
  row: readonly number[],
  share: number,
  visit: (sums: number[], weight: number) => void,
): void {
  const moved = row.map(() => 0);
  for (const { sums, weight } of states) {
    for (const order of arrangements(row)) {
      for (let item = 0; item < moved.length; item += 1) {
        moved[item] = (sums[item] as number) + (order[item] as number);
      }
      visit(moved, weight * share);
    }
  }
}

/**
 * P(Σ(doubled rank sum − its mean)² >= `between`) when every judge's row, with the ties it has, falls in any of
 * its orders with equal chance: the exact permutation law, each judge's tie pattern kept.
 *
 * Works judge by judge over the possible rank-sum vectors. Every vector has the same chance as its
 * rearrangements, so only the sorted one is kept, and the first judge may be held still. The judges with most
 * orders come first, when there are fewest vectors; the last one is summed without being stored.
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
  const base = 2 * first.length * doubled.length + 1;
  // A vector's key is one whole number in this base; past 2^53 there are more vectors than any limit lets by.
  if (base ** (first.length - 1) > Number.MAX_SAFE_INTEGER) return null;
  const orders = others.reduce((product, row) => product * arrangementCount(row), 1);
  const whole = orders <= Number.MAX_SAFE_INTEGER;
  let states: State[] = [{ sums: first.toSorted((a, b) => a - b), weight: 1 }];
  let steps = 0;
  let tail = 0;
  for (const [index, row] of others.entries()) {
    const count = arrangementCount(row);
    const share = whole ? 1 : 1 / count;
    steps += states.length * count;
    if (steps > stepLimit) return null;
    if (index === others.length - 1) {
      eachSum(states, row, share, (sums, weight) => {
        if (betweenSquares(sums, doubled.length) >= between) tail += weight;
      });
      break;
    }
    const next = new Map<number, State>();
    eachSum(states, row, share, (sums, weight) => {
      insertionSort(sums);
      // The total is fixed, so the smallest sum need not be in the key.
      let key = 0;
      for (let item = 1; item < sums.length; item += 1) key = key * base + (sums[item] as number);
      const found = next.get(key);
      if (found) found.weight += weight;
      else next.set(key, { sums: [...sums], weight });
    });
    states = [...next.values()];
  }
  return Math.min(1, whole ? tail / orders : tail);
}
