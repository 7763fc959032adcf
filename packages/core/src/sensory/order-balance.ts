/** How even a set of serving orders is; 0 is perfect. */
export interface OrderBalance {
  /** Most minus fewest, over glasses and positions, of the times a glass stands at a position. */
  readonly positionImbalance: number;
  /** Most minus fewest, over ordered pairs of glasses, of the times the second comes straight after the first. */
  readonly carryOverImbalance: number;
}

const range = (counts: readonly number[]): number =>
  counts.length === 0 ? 0 : Math.max(...counts) - Math.min(...counts);

/**
 * Measures serving orders.
 *
 * @param orders one permutation of 0 … n − 1 a taster
 * @throws RangeError when a row is not such a permutation
 * @example orderBalance([[0, 1], [1, 0]]) // { positionImbalance: 0, carryOverImbalance: 0 }
 */
export function orderBalance(orders: readonly (readonly number[])[]): OrderBalance {
  const n = orders[0]?.length ?? 0;
  const positions = Array.from({ length: n * n }, () => 0);
  const follows = Array.from({ length: n * n }, () => 0);
  for (const [row, order] of orders.entries()) {
    const sorted = order.toSorted((a, b) => a - b);
    if (order.length !== n || sorted.some((glass, i) => glass !== i)) {
      throw new RangeError(
        `orderBalance requires row ${row} to order glasses 0 to ${n - 1}, got [${order.join()}]`,
      );
    }
    order.forEach((glass, place) => {
      positions[glass * n + place] = (positions[glass * n + place] ?? 0) + 1;
      const before = order[place - 1];
      if (before !== undefined) follows[before * n + glass] = (follows[before * n + glass] ?? 0) + 1;
    });
  }
  const pairs = follows.filter((_, i) => Math.floor(i / n) !== i % n);
  return { positionImbalance: range(positions), carryOverImbalance: range(pairs) };
}
