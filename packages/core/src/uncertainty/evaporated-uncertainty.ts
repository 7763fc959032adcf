import { liquidOfVolume, volumeAt20FromVolumeAt } from "../alcoholometry/index.ts";
import type { Liquid } from "../alcoholometry/index.ts";
import type { Abv20, Celsius, MillilitresRead } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./propagate.ts";

/** A level as it was read at a temperature, and a strength. */
export type MeasuredLevel = { readonly ml: Input; readonly abv20: Input; readonly celsius: Input };

/**
 * How much ethanol, water or both (g) has gone, with its uncertainty. It is a small difference of large numbers: the interval
 * may well reach below 0, which says that nothing need have gone.
 *
 * Domain: that of `evaporated`, its "no" left out: an ethanol below 0 is given as it comes. Accuracy: that of `propagate`. Source:
 * as `evaporated`. Cost: about 1 ms.
 *
 * @throws RangeError when a level, strength or temperature is outside its domain.
 * @example
 * const t = thermometer({ id: "t", celsius: celsius(20), class: "kitchen" });
 * const level = (id, ml, abv) => ({ ml: cylinderVolume({ id: `${id} ml`, ml, class: "B" }), abv20: labelStrength({ id, abv20: abv20(abv) }), celsius: t });
 * evaporatedUncertainty(level("before", 700, 62.4), level("after", 650, 61), "ethanolG").standardUncertainty; // 4.3…
 */
export function evaporatedUncertainty(
  before: MeasuredLevel,
  after: MeasuredLevel,
  figure: "ethanolG" | "waterG" | "massG",
): Uncertain {
  return propagate(
    (valueOf) => {
      const was = liquidOf(before, valueOf);
      const is = liquidOf(after, valueOf);
      const ethanolG = was.ethanolG - is.ethanolG;
      const waterG = was.waterG - is.waterG;
      return { ethanolG, waterG, massG: ethanolG + waterG }[figure];
    },
    [before, after].flatMap(({ ml, abv20, celsius }) => [ml, abv20, celsius]),
  );
}

function liquidOf({ ml, abv20, celsius }: MeasuredLevel, valueOf: (id: string) => number): Liquid {
  const strength = valueOf(abv20.id) as Abv20;
  const t = valueOf(celsius.id) as Celsius;
  return liquidOfVolume(volumeAt20FromVolumeAt(valueOf(ml.id) as MillilitresRead, t, strength), strength);
}
