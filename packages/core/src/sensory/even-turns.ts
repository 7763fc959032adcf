import { type Rng, shuffled } from "../statistics/index.ts";

/**
 * The same servings, each in an order found so that every whiskey stands at every turn, and straight after every other, about
 * equally often. What is left uneven is measured by `blockBalance`.
 *
 * From random orders, two turns of a serving are exchanged whenever the sum of squared counts does not grow; turns weigh four
 * times what carry-over does. Which whiskey stands first stays chance.
 */
export function evenTurns(blocks: readonly (readonly number[])[], v: number, rng: Rng): number[][] {
  const orders = blocks.map((block) => shuffled(block, rng));
  const k = orders[0]?.length ?? 0;
  if (k < 2) return orders;
  const turns = Array.from({ length: v * k }, () => 0);
  const follows = Array.from({ length: v * v }, () => 0);
  const add = (counts: number[], at: number, by: number, weight: number): number => {
    const was = counts[at] ?? 0;
    counts[at] = was + by;
    return weight * ((was + by) ** 2 - was ** 2);
  };
  const count = (order: readonly number[], by: number): number =>
    order.reduce((grown, thing, place) => {
      const last = order[place - 1];
      return (
        grown +
        add(turns, thing * k + place, by, 4) +
        (last === undefined ? 0 : add(follows, last * v + thing, by, 1))
      );
    }, 0);
  for (const order of orders) count(order, 1);
  for (let swap = 0; swap < 60 * k * orders.length; swap += 1) {
    const row = rng.below(orders.length);
    const order = orders[row] ?? [];
    const i = rng.below(k);
    const j = (i + 1 + rng.below(k - 1)) % k;
    const turned = order.with(i, order[j] ?? 0).with(j, order[i] ?? 0);
    const grown = count(order, -1) + count(turned, 1);
    if (grown > 0) {
      count(turned, -1);
      count(order, 1);
    } else orders[row] = turned;
  }
  return orders;
}
