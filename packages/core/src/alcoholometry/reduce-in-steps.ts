import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { adjustStrength } from "./adjust-strength.ts";
import type { NotBetween } from "./adjust-strength.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import type { DescribedLiquid, Liquid } from "./liquid.ts";

/** One day's addition and what is in the vessel after it. */
export type ReductionStep = {
  readonly addMl: Millilitres20;
  readonly addG: Grams;
  readonly after: DescribedLiquid;
};

export type ReducedInSteps = { readonly ok: true; readonly steps: readonly ReductionStep[] };

/**
 * A reduction (or fortification) over several days: the same volume added every time, or the same fall in strength every
 * time. The last step lands on the target whichever it is.
 *
 * Domain: 1 to 100 steps; else as `adjustStrength`, whose "no" it passes on. Accuracy: the last strength is the target within
 * 1e-9 % vol. That slow reduction is gentler on the taste is common practice, no source.
 *
 * Source: as `adjustStrength`. Cost: about a microsecond a step.
 *
 * @throws RangeError when a mass or strength is outside its domain, or `steps` is not a whole number from 1 to 100.
 * @example
 * const start = liquidOfVolume(millilitres20(700), abv20(60));
 * reduceInSteps({ start, to: abv20(46), add: abv20(0), steps: 2, by: "strength" }).steps[0].addMl; // 96.11…
 */
export function reduceInSteps(ask: {
  readonly start: Liquid;
  readonly to: Abv20;
  readonly add: Abv20;
  readonly steps: number;
  readonly by: "volume" | "strength";
}): ReducedInSteps | NotBetween {
  const { start, to, add, steps, by } = ask;
  if (!Number.isInteger(steps) || steps < 1 || steps > 100) {
    throw new RangeError(`steps requires a whole number from 1 to 100, got ${steps}`);
  }
  const whole = adjustStrength({ start, to, add });
  if (!whole.ok) return whole;
  const from = describeLiquid(start).abv20 as Abv20;
  const done: ReductionStep[] = [];
  let held: Liquid = start;
  for (let n = 1; n <= steps; n++) {
    // Rounding must not take the last aim past the target, which may be 0.
    const aim = n === steps ? to : ((from + ((to - from) * n) / steps) as Abv20);
    const step =
      by === "volume"
        ? poured(held, (whole.addMl / steps) as Millilitres20, add)
        : adjustStrength({ start: held, to: aim, add });
    if (!step.ok) return step;
    done.push({ addMl: step.addMl, addG: step.addG, after: step.after });
    held = step.after;
  }
  return { ok: true, steps: done };
}

function poured(held: Liquid, addMl: Millilitres20, add: Abv20): ReductionStep & { readonly ok: true } {
  const { ethanolG, waterG } = liquidOfVolume(addMl, add);
  const after = describeLiquid({
    ethanolG: (held.ethanolG + ethanolG) as Grams,
    waterG: (held.waterG + waterG) as Grams,
  });
  return { ok: true, addMl, addG: (ethanolG + waterG) as Grams, after };
}
