const swap = (list: number[], i: number, j: number): void => {
  const kept = list[i] as number;
  list[i] = list[j] as number;
  list[j] = kept;
};

/**
 * Every different order of a list in which some values may be equal, in dictionary order from the ascending one.
 *
 * A list of n with t₁, t₂, … equal values has n!/(t₁!·t₂!·…) of them. To spare memory each one is given in the
 * same array, changed in place: copy what is to be kept.
 *
 * Source: Knuth, The Art of Computer Programming 4A, 7.2.1.2, Algorithm L.
 *
 * @example Array.from(arrangements([1, 1, 2]), (order) => [...order]) // [[1, 1, 2], [1, 2, 1], [2, 1, 1]]
 */
export function* arrangements(values: readonly number[]): Generator<readonly number[], void> {
  const order = values.toSorted((a, b) => a - b);
  const at = (i: number): number => order[i] as number;
  for (;;) {
    yield order;
    let pivot = order.length - 2;
    while (pivot >= 0 && at(pivot) >= at(pivot + 1)) pivot -= 1;
    if (pivot < 0) return;
    let next = order.length - 1;
    while (at(next) <= at(pivot)) next -= 1;
    swap(order, pivot, next);
    for (let i = pivot + 1, j = order.length - 1; i < j; i += 1, j -= 1) swap(order, i, j);
  }
}

/** How many different orders `arrangements` gives. Exact up to 2^53, that is for up to 18 values. */
export function arrangementCount(values: readonly number[]): number {
  const seen = new Map<number, number>();
  // n! over the factorials of the tie sizes, one factor at a time: every step is a whole number.
  return values.reduce((count, value, i) => {
    const times = (seen.get(value) ?? 0) + 1;
    seen.set(value, times);
    return (count * (i + 1)) / times;
  }, 1);
}
