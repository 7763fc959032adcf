import { within } from "../quantity/index.ts";
import { CYLINDERS, JUG_SHARE } from "./cylinder.data.ts";
import type { CylinderSize } from "./cylinder.data.ts";
import type { Input } from "./input.ts";
import { rectangular } from "./spreads.ts";

/** ISO 4788 class, or a kitchen jug, which has none. */
export type CylinderClass = "A" | "B" | "jug";

/**
 * A volume read in a measuring cylinder, mL: rectangular within the largest permissible error of its class and size, and
 * rectangular within a quarter of a division for reading to the nearest half division (common practice, no source).
 *
 * `capacityMl`, when not given, is the smallest standard size that holds the volume; more than 2000 mL takes the error of that
 * size in proportion. Source: ISO 4788:2005, see cylinder.data.ts.
 *
 * Domain: 0 mL or more. Accuracy: the tolerance is the standard's; a good cylinder is better. Cost: nothing.
 *
 * @throws RangeError when the volume is negative or does not fit the capacity given.
 * @example
 * standardUncertainty(cylinderVolume({ id: "pour", ml: 80, class: "A" })); // 0.322…
 */
export function cylinderVolume(reading: {
  readonly id: string;
  readonly ml: number;
  readonly class: CylinderClass;
  readonly capacityMl?: number;
  readonly words?: string;
}): Input {
  const { id, ml, words = reading.class === "jug" ? "the jug" : "the measuring cylinder" } = reading;
  const size = sizeFor(within("volume", "mL", ml, 0, Infinity), reading.capacityMl);
  const times = Math.max(1, ml / size.capacityMl);
  const spreads =
    reading.class === "jug"
      ? rectangular(JUG_SHARE * ml)
      : [
          ...rectangular(times * (reading.class === "A" ? size.classA : size.classB)),
          ...rectangular((times * size.divisionMl) / 4),
        ];
  return { id, kind: "cylinder", words, value: ml, spreads, low: 0, high: Infinity };
}

function sizeFor(ml: number, capacityMl: number | undefined): CylinderSize {
  const largest = CYLINDERS.at(-1) as CylinderSize;
  if (capacityMl === undefined) return CYLINDERS.find((size) => size.capacityMl >= ml) ?? largest;
  within("volume", "mL", ml, 0, capacityMl);
  return CYLINDERS.find((size) => size.capacityMl >= capacityMl) ?? largest;
}
