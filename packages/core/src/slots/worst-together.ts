import { addsOf } from "./adds.ts";
import { axesOf, yearsOff } from "./axes.ts";
import type { FillProblem } from "./fill-problem.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";

/**
 * How far off the original a recipe can be at most, whichever of these whiskeys stands in each slot: every attribute, the strength and the age at their
 * own worst at once, which may be more than any one filling comes to and is never less. What is not known may be anything.
 */
export function worstTogether(problem: FillProblem, mayStand: readonly (readonly RuledWhiskey[])[]): number {
  const axes = axesOf(problem);
  const all = problem.slots.reduce((sum, { parts }) => sum + parts, 0);
  const low = new Float64Array(axes.size);
  const high = new Float64Array(axes.size);
  let [youngest, oldest] = [Infinity, Infinity];
  for (const [s, whiskeys] of mayStand.entries()) {
    const adds = whiskeys.map((whiskey) => addsOf(axes, whiskey, problem.slots[s]!.parts / all));
    for (let a = 0; a < axes.size; a += 1) {
      low[a]! += Math.min(...adds.map((one) => one.low[a]!));
      high[a]! += Math.max(...adds.map((one) => one.high[a]!));
    }
    youngest = Math.min(youngest, ...adds.map((one) => one.youngestLow));
    oldest = Math.min(oldest, Math.max(...adds.map((one) => one.youngestHigh)));
  }
  let sum = 0;
  for (let a = 0; a < axes.size; a += 1) {
    const strength = axes.strength && a === axes.size - 1;
    const under = axes.target[a]! - (low[a]! - (strength ? axes.below : 0));
    const over = strength && axes.onlyWeak ? 0 : high[a]! + (strength ? axes.above : 0) - axes.target[a]!;
    sum += axes.weight[a]! * Math.max(0, under, over) ** 2;
  }
  if (axes.years !== null)
    sum += axes.yearsWeight * Math.max(yearsOff(youngest, axes.years), yearsOff(oldest, axes.years)) ** 2;
  return Math.sqrt(sum / axes.total);
}
