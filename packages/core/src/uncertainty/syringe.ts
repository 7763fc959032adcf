import { within } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { rectangular } from "./spreads.ts";
import { SYRINGE } from "./syringe.data.ts";

/**
 * A volume pushed out of a single-use syringe, mL: rectangular within the tolerance on graduated capacity.
 *
 * Source: ISO 7886-1, see syringe.data.ts. 10 mL from a 10 mL syringe may be off by 0.4 mL: a scale is better.
 *
 * Domain: 0 mL to what it holds. Accuracy: the tolerance is the standard's. Cost: nothing.
 *
 * @throws RangeError when the volume is negative or more than the syringe holds.
 * @example
 * syringeVolume({ id: "pour", ml: 4, capacityMl: 10 }).spreads[0].halfWidth; // 0.19
 */
export function syringeVolume(reading: {
  readonly id: string;
  readonly ml: number;
  readonly capacityMl: number;
  readonly words?: string;
}): Input {
  const { id, ml, capacityMl, words = "the syringe" } = reading;
  within("capacity", "mL", capacityMl, 0, Infinity);
  within("volume", "mL", ml, 0, capacityMl);
  const shares = capacityMl < SYRINGE.largestSmallMl ? SYRINGE.small : SYRINGE.large;
  const halfWidth =
    ml < capacityMl / 2 ? shares.ofCapacity * capacityMl + shares.ofPushed * ml : shares.fromHalf * ml;
  return { id, kind: "syringe", words, value: ml, spreads: rectangular(halfWidth), low: 0, high: Infinity };
}
