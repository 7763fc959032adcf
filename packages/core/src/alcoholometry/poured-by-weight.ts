import type { Abv20, Grams } from "../quantity/index.ts";
import { mix } from "./mix.ts";
import type { Mixture, Pour } from "./mix.ts";
import { volumeFromWeight } from "./weigh.ts";
import type { Bench } from "./weigh-pours.ts";

/** What was really poured of one liquid, as the scale showed it. */
export type PouredWeight = { readonly grams: Grams; readonly abv20: Abv20 };

/** The mixture that was really poured, and the pours as volumes at 20 °C. */
export type PouredByWeight = { readonly pours: readonly Pour[]; readonly mixture: Mixture };

/**
 * What was made, from the grams really poured of each liquid: back to volumes at 20 °C, and to the mixture's strength and volume.
 *
 * Domain and accuracy: those of `volumeFromWeight` and `mix`.
 *
 * Source: OIML D 28 for air, else as `mix`. Cost: about 0.5 µs a pour.
 *
 * @throws RangeError when nothing was poured, or a weight or strength is outside its domain.
 * @example
 * pouredByWeight([{ grams: grams(94.8), abv20: abv20(40) }], {}).mixture.volumeMl; // 99.99…
 */
export function pouredByWeight(weights: readonly PouredWeight[], bench: Bench): PouredByWeight {
  const pours = weights.map(({ grams, abv20 }) => ({
    volumeMl: volumeFromWeight(grams, { ...bench, abv20 }).ml20,
    abv20,
  }));
  return { pours, mixture: mix(pours) };
}
