import { type MostLikelyWorths, mostLikelyWorths } from "./most-likely-worths.ts";
import { rankedSet, type Ranking } from "./plackett-luce.ts";
import type { RankedSet } from "./ranked-set.ts";
import type { NoMaximum } from "./win-graph.ts";

/** A ranking with the order in which its items were served, first one first. */
export interface ServedRanking {
  readonly ranking: Ranking;
  readonly served: readonly number[];
}

/** How many parameters the place in the serving adds: first, last. */
export const PLACE_EFFECTS = 2;

/**
 * A ranking as the model reads it, with what it does to an item to be served first (parameter `items`) or last (`items + 1`); those in
 * between are the measure.
 *
 * @throws RangeError when the ranking and the serving don't hold the same items
 */
export function servedSet({ ranking, served }: ServedRanking, items: number): RankedSet {
  const set = rankedSet(ranking, items);
  const order = ranking.flat();
  if (
    new Set(served).size !== order.length ||
    served.length !== order.length ||
    order.some((item) => !served.includes(item))
  ) {
    throw new RangeError(
      `a served ranking requires the ranked items [${order.join(", ")}], got [${served.join(", ")}] served`,
    );
  }
  const [first, last] = [served[0], served.at(-1)];
  return {
    ...set,
    appeals: set.appeals.map((appeal, i) => [
      ...appeal,
      ...(order[i] === first ? [[items, 1] as const] : []),
      ...(order[i] === last ? [[items + 1, 1] as const] : []),
    ]),
  };
}

/**
 * The most likely worths with the effect of being served first (`extra[0]`) and last (`extra[1]`) estimated and taken out: the log
 * worths are those of a glass in the middle.
 *
 * The effects can be told from the worths only where items changed places between servings; where they did not, no maximum exists.
 * With two items to a serving first and last are each other's opposites: use `bradleyTerryServed`.
 *
 * @throws RangeError as `servedSet`
 */
export const plackettLuceServed = (
  rankings: readonly ServedRanking[],
  items: number,
): MostLikelyWorths | NoMaximum =>
  mostLikelyWorths(
    rankings.map((one) => servedSet(one, items)),
    items,
    PLACE_EFFECTS,
  );
