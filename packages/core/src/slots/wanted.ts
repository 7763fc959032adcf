import { axesOf } from "./axes.ts";
import { addsOf } from "./adds.ts";
import type { FillProblem } from "./fill-problem.ts";
import { printRule } from "./print-rule.ts";

/** What would fill an empty slot best: what keeps its rule and is about this. */
export type Wanted = {
  /** From 1. */
  readonly slot: number;
  readonly rule: string;
  /** 0 to 10; where facts of the others are missing, halfway between what they may be. */
  readonly profile: Readonly<Record<string, number>>;
  /** % vol, by means, so about; null where the strength does not count. */
  readonly abv20: number | null;
};

/** For empty slots, all alike: what is missing between the others, with their shares of the whole recipe, and the original. */
export function wantedIn(
  problem: FillProblem,
  ids: readonly (string | null)[],
  empty: readonly number[],
): readonly Wanted[] {
  const axes = axesOf(problem);
  const { slots, whiskeys } = problem;
  const all = slots.reduce((sum, { parts }) => sum + parts, 0);
  const adds = ids.flatMap((id, slot) => {
    const whiskey = whiskeys.find((one) => one.id === id);
    return whiskey ? [addsOf(axes, whiskey, slots[slot]!.parts / all)] : [];
  });
  const share = empty.reduce((sum, slot) => sum + slots[slot]!.parts / all, 0);
  const missing = (axis: number, most: number): number => {
    const there = adds.reduce((sum, one) => sum + (one.low[axis]! + one.high[axis]!) / 2, 0);
    return Math.min(most, Math.max(0, (axes.target[axis]! - there) / share));
  };
  return empty.map((slot) => ({
    slot: slot + 1,
    rule: printRule(slots[slot]!.rule),
    profile: Object.fromEntries(axes.attributes.map((name, a) => [name, missing(a, 10)])),
    abv20: axes.strength ? missing(axes.size - 1, 100) : null,
  }));
}
