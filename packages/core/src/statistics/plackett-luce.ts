import { type MostLikelyWorths, mostLikelyWorths } from "./most-likely-worths.ts";
import type { RankedSet } from "./ranked-set.ts";
import type { NoMaximum } from "./win-graph.ts";

/** Items by number, best first; inner lists are ties; items left out were not there. */
export type Ranking = readonly (readonly number[])[];

/**
 * A ranking as the model reads it.
 *
 * @throws RangeError when it is empty, an item is not 0 to items − 1, or one comes twice
 */
export function rankedSet(ranking: Ranking, items: number): RankedSet {
  const order = ranking.flat();
  const bad = order.find((item) => !Number.isInteger(item) || item < 0 || item >= items);
  if (bad !== undefined) throw new RangeError(`a ranking requires items from 0 to ${items - 1}, got ${bad}`);
  if (new Set(order).size !== order.length) {
    throw new RangeError(`a ranking requires every item once, got [${order.join(", ")}]`);
  }
  if (order.length === 0 || ranking.some((group) => group.length === 0)) {
    throw new RangeError("a ranking requires at least 1 item in every place, got none");
  }
  return {
    appeals: order.map((item) => [[item, 1]] as const),
    sizes: ranking.map((group) => group.length),
    times: 1,
  };
}

/**
 * Plackett and Luce's worths from rankings with ties (Davidson and Luce's) and of any part of the items, by maximum likelihood.
 *
 * Log worths are natural logs with the first item at 0; P(i before j) = wᵢ/(wᵢ + wⱼ) where ties don't occur. When no maximum exists
 * the answer says which items were never behind which others.
 *
 * Cost: 87 items in 36 full rankings take some tens of milliseconds.
 *
 * @throws RangeError as `rankedSet`, or with fewer than 2 items
 * @example plackettLuce([[[0], [1]], [[1], [0]], [[0], [1]]], 2).logWorth // [0, -0.693…]
 */
export const plackettLuce = (rankings: readonly Ranking[], items: number): MostLikelyWorths | NoMaximum =>
  mostLikelyWorths(
    rankings.map((ranking) => rankedSet(ranking, items)),
    items,
  );
