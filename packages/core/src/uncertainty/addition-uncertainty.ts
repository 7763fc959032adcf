import { adjustStrength } from "../alcoholometry/index.ts";
import type { Abv20 } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { inputsOfMeasured, mixtureOfMeasured } from "./measured-pour.ts";
import type { MeasuredPour, MeasuringBench } from "./measured-pour.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/**
 * How much of a liquid (mL at 20 °C) takes what was measured to a strength, when what was measured may be off. The target is
 * exact; what must be added is not known better than the start is, and never below 0.
 *
 * Domain: that of `adjustStrength`; the target must lie between the two strengths by more than their errors. Accuracy: that of
 * `propagate`. Source: as `adjustStrength`. Cost: about 1 ms.
 *
 * @throws RangeError when the target does not lie between the strengths, or as `propagate` does.
 * @example
 * const warm = thermometer({ id: "t", celsius: celsius(20), class: "room" });
 * const start = [{ by: "volume", amount: cylinderVolume({ id: "ml", ml: 500, class: "B" }), abv20: labelStrength({ id: "rye", abv20: abv20(62.4) }) }];
 * const water = labelStrength({ id: "water", abv20: abv20(0), rule: "exact" });
 * additionUncertainty({ start, add: water, to: abv20(46) }, { celsius: warm }).standardUncertainty; // 2.2…
 */
export function additionUncertainty(
  ask: { readonly start: readonly MeasuredPour[]; readonly add: Input; readonly to: Abv20 },
  bench: MeasuringBench,
): Uncertain {
  const { start, add, to } = ask;
  return propagate(
    (valueOf) => {
      const held = mixtureOfMeasured(start, bench, valueOf);
      const added = valueOf(add.id) as Abv20;
      const answer = adjustStrength({ start: held, to, add: added });
      if (answer.ok) return answer.addMl;
      // The start's errors alone have it at the target's other side already.
      if (Math.sign(to - added) === Math.sign(to - add.value) && isBetween(ask, bench)) return 0;
      throw new RangeError(answer.issue.message);
    },
    [...inputsOfMeasured(start, bench), add],
  );
}

/** Whether the target lies between the two strengths as they were read. */
function isBetween(
  { start, add, to }: Parameters<typeof additionUncertainty>[0],
  bench: MeasuringBench,
): boolean {
  const asRead = new Map([...inputsOfMeasured(start, bench), add].map((input) => [input.id, input.value]));
  const held = mixtureOfMeasured(start, bench, (id) => asRead.get(id) as number);
  return (held.abv20 - to) * (to - add.value) > 0;
}
