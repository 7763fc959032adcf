import type { FillProblem } from "./fill-problem.ts";
import { sameVerdict } from "./verdict.ts";

/** Whether whiskeys, by their places in the shelf, may stand together in two slots. */
export type Together = (slotA: number, a: number, slotB: number, b: number) => boolean;

/** Not the same whiskey twice, and what either slot asks of the other is kept: what is not known keeps nothing. */
export function togetherIn({ whiskeys, slots }: FillProblem): Together {
  const asks = slots.map(({ rule }) => rule.filter((condition) => condition.about === "same"));
  const oneWay = (slot: number, one: number, other: number, two: number): boolean =>
    asks[slot]!.every(
      (condition) =>
        condition.slot !== other + 1 ||
        sameVerdict(condition, whiskeys[one]!, whiskeys[two]!).state === "kept",
    );
  return (slotA, a, slotB, b) => a !== b && oneWay(slotA, a, slotB, b) && oneWay(slotB, b, slotA, a);
}
