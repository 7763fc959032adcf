import { adjustStrength, describeLiquid, type Liquid } from "@partsproof/core/alcoholometry";
import { abv20 } from "@partsproof/core/quantity";
import { liquidOf } from "./liquid-of.ts";
import type { Poured, Pouring } from "./pouring.ts";

/** Water for the strength once every part has come to its goal, what is in already counted. */
export function waterGoal(pouring: Pouring, goals: readonly number[], poured: readonly Poured[]): number {
  if (pouring.waterTo === null) return 0;
  const start: Liquid = liquidOf(pouring, goals, poured);
  if (describeLiquid(start).massG === 0) return 0;
  const done = adjustStrength({ start, to: abv20(pouring.waterTo), add: abv20(0) });
  return done.ok ? done.addMl : 0;
}
