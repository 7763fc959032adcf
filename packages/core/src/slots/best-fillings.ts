import { addsOf, type Adds } from "./adds.ts";
import { alikeOrder } from "./alike-order.ts";
import { axesOf, yearsOff } from "./axes.ts";
import type { Axes } from "./axes.ts";
import type { FillProblem } from "./fill-problem.ts";
import { type Filling, measureFilling } from "./filling.ts";
import { pairCosts } from "./pair-costs.ts";
import { togetherIn } from "./together.ts";
import { walkSlots } from "./walk-slots.ts";

export type BestFillings = {
  /** The closest first. */
  readonly fillings: readonly Filling[];
  /** True when no other filling is closer than the last of the list, or there is no other. */
  readonly proven: boolean;
  /** Choices looked at. */
  readonly looked: number;
};

/** Rounding of sums of pairs: what is so close to the limit is measured exactly. */
const ROUNDING = 1e-9;

/** The closest fillings, proven. `places` has for every slot the whiskeys that may stand in it, by their places in the shelf. */
export function bestFillings(
  problem: FillProblem,
  places: readonly (readonly number[])[],
  top: number,
  most: number,
): BestFillings {
  const axes = axesOf(problem);
  const tables = tableSteps(places, axes.size);
  if (tables > most) return { fillings: [], proven: false, looked: 0 };
  const all = problem.slots.reduce((sum, { parts }) => sum + parts, 0);
  // The largest shares first: what they settle bounds the most.
  const order = problem.slots
    .map((_, slot) => slot)
    .toSorted(
      (a, b) => problem.slots[b]!.parts - problem.slots[a]!.parts || places[a]!.length - places[b]!.length,
    );
  const slots = order.map((slot) => {
    const share = problem.slots[slot]!.parts / all;
    const rows = places[slot]!.map((place) => ({
      place,
      adds: addsOf(axes, problem.whiskeys[place]!, share),
    }));
    const alike = alikeOrder(rows.map(({ adds }) => adds.low)).map((n) => rows[n]!);
    return { share, places: alike.map(({ place }) => place), adds: alike.map(({ adds }) => adds) };
  });
  const together = togetherIn(problem);
  const list: Filling[] = [];
  const limit = Float64Array.of(Infinity);

  const offer = (chosen: Int32Array): void => {
    const picks = slots.map(({ adds }, x) => adds[chosen[x]!]!);
    if (list.length === top && leastCost(axes, picks) >= limit[0]!) return;
    const picked = problem.slots.map((_, slot) => {
      const x = order.indexOf(slot);
      return problem.whiskeys[slots[x]!.places[chosen[x]!]!]!;
    });
    const filling = measureFilling(problem, picked, axes);
    if (list.length === top && filling.distance >= list.at(-1)!.distance) return;
    const at = list.findIndex(({ distance }) => distance > filling.distance);
    list.splice(at < 0 ? list.length : at, 0, filling);
    if (list.length > top) list.pop();
    if (list.length < top) return;
    const square = list.at(-1)!.distance ** 2 * axes.total;
    limit[0] = square > 0 ? square + ROUNDING * (1 + square) : 0;
  };

  const last = axes.size - 1;
  const walked = walkSlots({
    costs: pairCosts(axes, slots),
    strength: axes.strength
      ? {
          adds: slots.map(({ adds }) => Float64Array.from(adds, (one) => one.low[last]!)),
          low: axes.target[last]! - axes.above,
          high: axes.onlyWeak ? Infinity : axes.target[last]! + axes.below,
          weight: axes.weight[last]!,
        }
      : null,
    young: slots.map(({ adds }) => Float64Array.from(adds, (one) => youthCost(axes, one.youngestHigh))),
    fits: (a, n, b, m) => together(order[a]!, slots[a]!.places[n]!, order[b]!, slots[b]!.places[m]!),
    limit,
    offer,
    most: most - tables,
  });
  return { fillings: list, proven: walked.through, looked: tables + walked.looked };
}

/** Sums that are done in the time of one choice looked at. */
const SUMS_A_STEP = 8;

/** What the tables of pairs cost, in choices looked at, so that a limit on these holds for the whole. */
function tableSteps(places: readonly (readonly number[])[], size: number): number {
  const sum = places.reduce((all, { length }) => all + length, 0);
  const squares = places.reduce((all, { length }) => all + length ** 2, 0);
  return Math.ceil((((sum ** 2 - squares) / 2) * size) / SUMS_A_STEP);
}

/** What a mix with a part of this age costs at least: it is no older. */
const youthCost = ({ years, yearsWeight }: Axes, age: number): number =>
  years === null || age >= years ? 0 : yearsWeight * yearsOff(age, years) ** 2;

/** What a filling costs at least: exact but for its strength, which lies within the bound on its mean. */
function leastCost(axes: Axes, picks: readonly Adds[]): number {
  let sum = 0;
  for (let a = 0; a < axes.attributes.length; a += 1) {
    let [low, high] = [-axes.target[a]!, -axes.target[a]!];
    for (const one of picks) {
      low += one.low[a]!;
      high += one.high[a]!;
    }
    sum += axes.weight[a]! * Math.max(-low, high) ** 2;
  }
  if (axes.strength) {
    const mean = picks.reduce((all, one) => all + one.low[axes.size - 1]!, 0);
    const wanted = axes.target[axes.size - 1]!;
    const off = Math.max(0, wanted - axes.above - mean, axes.onlyWeak ? 0 : mean - axes.below - wanted);
    sum += axes.weight[axes.size - 1]! * off * off;
  }
  if (axes.years !== null) {
    const low = Math.min(...picks.map((one) => one.youngestLow));
    const high = Math.min(...picks.map((one) => one.youngestHigh));
    sum += axes.yearsWeight * Math.max(yearsOff(low, axes.years), yearsOff(high, axes.years)) ** 2;
  }
  return sum;
}
