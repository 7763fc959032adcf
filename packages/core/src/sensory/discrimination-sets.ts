import { type Rng, shuffled } from "../statistics/index.ts";
import { DISCRIMINATION, type DiscriminationMethod } from "./discrimination-methods.data.ts";

export interface DiscriminationSets {
  /** One order a set, such as "ABA". */
  readonly orders: readonly string[];
  /** Most minus fewest of the times an order is used: 0 or 1. */
  readonly orderImbalance: number;
  /** Glasses of A and of B poured over all sets. */
  readonly glasses: Readonly<Record<"A" | "B", number>>;
  /** What is balanced and what is not, in plain sentences; nothing in it tells which of the two is which. */
  readonly said: readonly string[];
}

const times = (n: number): string => (n === 1 ? "once" : n === 2 ? "twice" : `${n} times`);

function words(used: readonly number[], glasses: Readonly<Record<"A" | "B", number>>): string[] {
  const [fewest, most] = [Math.min(...used), Math.max(...used)];
  const sets = used.reduce((sum, count) => sum + count, 0);
  const more = used.length - (sets % used.length);
  const apart = Math.abs(glasses.A - glasses.B);
  return [
    fewest === most
      ? `Each of the ${used.length} orders of a set is used ${times(most)}.`
      : fewest === 0
        ? `Only ${sets} of the ${used.length} orders of a set are used, each once; ${more} more sets would use each.`
        : `Some of the ${used.length} orders of a set are used ${times(most)} and some ${times(fewest)}; ${more} more sets would even that out.`,
    apart === 0
      ? "Both are poured equally often."
      : `One of the two is poured in ${apart === 1 ? "one glass" : `${apart} glasses`} more than the other.`,
    "Which orders a taster gets is chance.",
  ];
}

const swapped = (order: string): string => order.replace(/[AB]/g, (glass) => (glass === "A" ? "B" : "A"));

/**
 * The orders of `sets` discrimination sets: whole rounds of every order once, the rest drawn without repeating, each order
 * followed by its mirror in A and B where there is room, so that what is left over favours neither whiskey by more than one
 * set. The sets come in random order.
 *
 * @param reference duo-trio only: always this whiskey as the reference (the constant-reference form), or both in turn
 * @throws RangeError for no sets, or a reference with another method
 * @example discriminationSets("triangle", 6, rng).glasses // { A: 9, B: 9 }
 */
export function discriminationSets(
  method: DiscriminationMethod,
  sets: number,
  rng: Rng,
  reference: "A" | "B" | "both" = "both",
): DiscriminationSets {
  if (!Number.isInteger(sets) || sets < 1) {
    throw new RangeError(`discriminationSets requires a whole 1 or more sets, got ${sets}`);
  }
  if (reference !== "both" && method !== "duo_trio") {
    throw new RangeError(`discriminationSets requires duo_trio for a constant reference, got ${method}`);
  }
  const all = DISCRIMINATION[method].orders.filter(
    (order) => reference === "both" || order.startsWith(reference),
  );
  const dealt: string[] = [];
  while (dealt.length < sets) {
    const round: string[] = [];
    for (const order of shuffled(all, rng)) {
      if (round.includes(order)) continue;
      round.push(order);
      if (all.includes(swapped(order))) round.push(swapped(order));
    }
    dealt.push(...round.slice(0, sets - dealt.length));
  }
  const used = all.map((order) => dealt.filter((one) => one === order).length);
  const poured = (glass: string): number => dealt.join("").split(glass).length - 1;
  const glasses = { A: poured("A"), B: poured("B") };
  return {
    orders: shuffled(dealt, rng),
    orderImbalance: Math.max(...used) - Math.min(...used),
    glasses,
    said: words(used, glasses),
  };
}
