import { type Rng, shuffled } from "../statistics/index.ts";
import { type OrderBalance, orderBalance } from "./order-balance.ts";
import { MAX_GLASSES, williamsSquare } from "./williams-square.ts";

export interface ServingOrders extends OrderBalance {
  /** One row a taster: the glasses 0 … n − 1 in the order that taster meets them. */
  readonly orders: readonly (readonly number[])[];
}

/** `count` rows of one freshly relabelled square, taken so that position counts differ by at most 1. */
function someRows(glasses: number, count: number, rng: Rng): number[][] {
  const labels = shuffled([...Array(glasses).keys()], rng);
  const square = williamsSquare(glasses).map((row) => row.map((thing) => labels[thing] ?? thing));
  // Each run of `glasses` rows is a Latin square: rows are taken from one half until it is used up, because rows
  // of the two halves of an odd square put the same glass at the same position.
  const halves = [square.slice(0, glasses), square.slice(glasses)].filter((half) => half.length > 0);
  return shuffled(halves, rng)
    .flatMap((half) => shuffled(half, rng))
    .slice(0, count);
}

/**
 * One serving order for each taster, drawn from Williams squares with the glasses relabelled at random and the
 * rows chosen at random.
 *
 * Positions come first: over the panel each glass stands at each position equally often, give or take one.
 * Whole squares are used while the tasters last, so that with a multiple of n tasters (of 2n for odd n) what
 * comes straight before is even too; otherwise `carryOverImbalance` says how uneven it is.
 *
 * @param glasses whole number, 1 to 12
 * @param tasters whole number, 1 or more
 * @throws RangeError outside those ranges
 * @example servingOrders(5, 3, rng).orders.length // 3
 */
export function servingOrders(glasses: number, tasters: number, rng: Rng): ServingOrders {
  if (!Number.isInteger(glasses) || glasses < 1 || glasses > MAX_GLASSES) {
    throw new RangeError(`servingOrders requires a whole 1 to ${MAX_GLASSES} glasses, got ${glasses}`);
  }
  if (!Number.isInteger(tasters) || tasters < 1) {
    throw new RangeError(`servingOrders requires a whole 1 or more tasters, got ${tasters}`);
  }
  if (glasses === 1) {
    return {
      orders: Array.from({ length: tasters }, () => [0]),
      positionImbalance: 0,
      carryOverImbalance: 0,
    };
  }
  const rows = glasses % 2 === 0 ? glasses : 2 * glasses;
  const drawn: number[][] = [];
  while (drawn.length < tasters)
    drawn.push(...someRows(glasses, Math.min(rows, tasters - drawn.length), rng));
  // Shuffled once more, so that which square a row came from says nothing about which taster has it.
  const orders = shuffled(drawn, rng);
  return { orders, ...orderBalance(orders) };
}
