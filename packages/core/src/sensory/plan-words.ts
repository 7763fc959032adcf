import type { OrderBalance } from "./order-balance.ts";

/** Serving orders with everything that is measured about them. */
export interface PlannedOrders extends OrderBalance {
  /** One row a taster: the glasses 0 … n − 1 in the order that taster meets them. */
  readonly orders: readonly (readonly number[])[];
  /** Tasters that make a whole square, with every glass equally often at every turn and after every other. */
  readonly wholeSquare: number;
  /** Times that two glasses to be kept apart stand side by side. */
  readonly sideBySide: number;
  /** Mean turn of the late glasses, and by chance; null when none was asked to be late. */
  readonly late: { readonly meanTurn: number; readonly byChance: number } | null;
}

const times = (n: number): string => (n === 1 ? "once" : n === 2 ? "twice" : `${n} times`);

/** What a serving plan balances and leaves uneven: nothing here follows from what is in which glass. */
export function balanceWords(plan: PlannedOrders): string[] {
  const { orders, positionImbalance, carryOverImbalance, wholeSquare } = plan;
  const tasters = orders.length;
  if ((orders[0]?.length ?? 0) < 2) return ["One glass has no order."];
  const said: string[] = [];
  if (positionImbalance === 0 && carryOverImbalance === 0) {
    said.push(
      "Every glass stands at every turn equally often and comes straight after every other equally often.",
    );
  } else {
    said.push(
      positionImbalance === 0
        ? "Every glass stands at every turn equally often."
        : `At a turn no glass stands more than ${times(positionImbalance)} more often than another.`,
      `One glass comes straight after another up to ${times(carryOverImbalance)} more often than some other pair does.`,
      `${wholeSquare - (tasters % wholeSquare)} more would make ${tasters < wholeSquare ? "a whole square" : "whole squares"} and leave neither.`,
    );
  }
  return said;
}

/** What a serving plan does with twins and with late glasses, and gives up for it: this says something of what is in a glass. */
export function contentWords({ sideBySide, late }: PlannedOrders, twins: boolean): string[] {
  const said: string[] = [];
  if (twins) {
    said.push(
      sideBySide === 0
        ? "Two glasses of the same whiskey never stand side by side."
        : `Two glasses of the same whiskey stand side by side ${times(sideBySide)}.`,
    );
  }
  if (late !== null) {
    const { meanTurn, byChance } = late;
    said.push(
      meanTurn - byChance > 1e-9
        ? `The strong and smoky glasses come at turn ${meanTurn.toFixed(1)} on average (${byChance.toFixed(1)} by chance). Given up for it: the order says a little about what is in the glass.`
        : "The strong and smoky glasses come no later than chance has it: the design leaves no room.",
    );
  }
  return said;
}
