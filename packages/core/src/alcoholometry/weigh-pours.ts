import type { Celsius, Grams, MillilitresRead } from "../quantity/index.ts";
import type { Air } from "./air-buoyancy.ts";
import type { Pour } from "./mix.ts";
import { T20 } from "./reference-temperatures.ts";
import { volumeAtFromVolumeAt20 } from "./volume-at-temperature.ts";
import { weigh } from "./weigh.ts";

/** Where the pouring happens: 20 °C and vacuum unless given. */
export type Bench = { readonly celsius?: Celsius; readonly air?: Air };

/** One part on the scale. */
export type PourOnScale = {
  readonly grams: Grams;
  readonly massG: Grams;
  /** What the scale shows after this part when it was zeroed only before the first. */
  readonly runningG: Grams;
  /** The part's volume as it is at the bench's temperature. */
  readonly ml: MillilitresRead;
};

/**
 * What to pour by weight, part by part in order: each part's grams, and the running total of a scale that is not zeroed in
 * between. Pours are given by their volume at 20 °C, so what they weigh does not depend on the room but for the air.
 *
 * Domain and accuracy: those of `weigh`. In air the running total leaves out that mixed liquid displaces less air than its
 * parts (5 mg in 100 mL at most).
 *
 * Source: OIML R 22 for the density, OIML D 28 for the air. Cost: about 0.5 µs a pour.
 *
 * @throws RangeError outside the domain of `weigh`.
 * @example
 * const pours = [{ volumeMl: millilitres20(500), abv20: abv20(62.4) }, { volumeMl: millilitres20(250), abv20: abv20(46) }];
 * weighPours(pours, {})[1].runningG; // 686.27…
 */
export function weighPours(pours: readonly Pour[], bench: Bench): readonly PourOnScale[] {
  const { celsius = T20 as Celsius } = bench;
  let running = 0;
  return pours.map(({ volumeMl, abv20 }) => {
    const read = volumeAtFromVolumeAt20(volumeMl, celsius, abv20);
    const { grams, massG, ml } = weigh(read, { ...bench, abv20 });
    running += grams;
    return { grams, massG, runningG: running as Grams, ml };
  });
}
