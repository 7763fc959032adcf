import { within } from "../quantity/index.ts";
import type { Abv15, Abv20, MassFraction } from "../quantity/index.ts";
import { T15 } from "./reference-temperatures.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";
import { massFractionOfShare, volumeShare } from "./volume-share.ts";

/**
 * % vol at 20 °C to % vol at 15 °C: the same liquid, ethanol and mixture both measured at 15 °C. 40 % vol is 39.92 % there.
 *
 * Domain 0 to 100 % vol; there and back within 1e-10. Source: the definition of OIML R 22 at another temperature.
 *
 * Accuracy: that of `density`. Cost: 0.2 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * abv15FromAbv20(abv20(40)); // 39.9…
 */
export function abv15FromAbv20(abv: Abv20): Abv15 {
  return Math.min(100, 100 * volumeShare(massFractionFromAbv20(abv), T15)) as Abv15;
}

/**
 * % vol at 15 °C to % vol at 20 °C; the inverse of `abv15FromAbv20`.
 *
 * Domain: 0 to 100 % vol. Accuracy: there and back within 1e-10. Source: as `abv15FromAbv20`. Cost: 0.2 µs.
 *
 * @throws RangeError outside 0 to 100 % vol.
 * @example
 * abv20FromAbv15(abv15(40)); // 40.0…
 */
export function abv20FromAbv15(abv: Abv15): Abv20 {
  within("strength", "% vol at 15 °C", abv, 0, 100);
  return abv20FromMassFraction(massFractionOfShare(abv / 100, T15) as MassFraction);
}
