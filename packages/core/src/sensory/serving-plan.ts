import type { Rng } from "../statistics/index.ts";
import { lateness } from "./lateness.ts";
import { balanceWords, contentWords, type PlannedOrders } from "./plan-words.ts";
import { servingOrders } from "./serving-orders.ts";

/** Designs drawn, of which the best is taken. */
const DRAWS = 60;

export interface ServingPlan extends PlannedOrders {
  /** What is balanced, what is not, and what was given up, in plain sentences. */
  readonly said: readonly string[];
  /** Of these, what may be told before the glasses are known: nothing in it follows from weights or pairs. */
  readonly saidBlind: readonly string[];
}

/** How often the two glasses of a pair are neighbours. */
const neighbours = (
  orders: readonly (readonly number[])[],
  pairs: readonly (readonly [number, number])[],
): number =>
  orders.reduce(
    (sum, order) =>
      sum + pairs.filter(([a, b]) => Math.abs(order.indexOf(a) - order.indexOf(b)) === 1).length,
    0,
  );

const before = (a: readonly number[], b: readonly number[]): boolean => {
  const i = a.findIndex((value, at) => value !== b[at]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
};

/**
 * Serving orders for a panel of any size, the most even of many drawn: first by carry-over (turns are always even to within
 * one), then by keeping twins apart, then by lateness. A plan that is less even is never taken to have a glass late.
 *
 * @param ask.late weight of each glass (`lateWeights`); left out, the order is pure chance. With it the order itself says a
 * little about the glasses, so leave it out where they are to be recognised.
 * @param ask.apart pairs of glasses of the same whiskey, not to stand side by side where that can be had
 * @throws RangeError for glasses outside 1 to 12, no taster, or weights that are not one a glass and 0 or more
 * @example servingPlan({ glasses: 5, tasters: 3, rng }).said
 */
export function servingPlan(ask: {
  readonly glasses: number;
  readonly tasters: number;
  readonly rng: Rng;
  readonly late?: readonly number[];
  readonly apart?: readonly (readonly [number, number])[];
}): ServingPlan {
  const { glasses, tasters, rng, late = [], apart = [] } = ask;
  if (ask.late !== undefined && (late.length !== glasses || !late.every((weight) => weight >= 0))) {
    throw new RangeError(`servingPlan requires ${glasses} weights of 0 or more, got [${late.join(", ")}]`);
  }
  const drawn = Array.from({ length: DRAWS }, () => {
    const plan = servingOrders(glasses, tasters, rng);
    const sideBySide = neighbours(plan.orders, apart);
    const rank = [plan.carryOverImbalance, sideBySide, -(lateness(plan.orders, late) ?? 0)];
    return { ...plan, sideBySide, rank };
  });
  const best = drawn.reduce((so, next) => (before(next.rank, so.rank) ? next : so));
  const meanTurn = lateness(best.orders, late);
  const plan = {
    orders: best.orders,
    positionImbalance: best.positionImbalance,
    carryOverImbalance: best.carryOverImbalance,
    wholeSquare: glasses % 2 === 0 || glasses === 1 ? glasses : 2 * glasses,
    sideBySide: best.sideBySide,
    late: meanTurn === null ? null : { meanTurn, byChance: (glasses + 1) / 2 },
  };
  const saidBlind = balanceWords(plan);
  const content = glasses < 2 ? [] : contentWords(plan, apart.length > 0);
  return { ...plan, said: [...saidBlind, ...content], saidBlind };
}
