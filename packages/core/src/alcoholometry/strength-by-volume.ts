import { within } from "../quantity/index.ts";
import type { Abv20, MassFraction } from "../quantity/index.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionOfShare, volumeShare } from "./volume-share.ts";

/**
 * Strength by volume at 20 °C (% vol) from the mass fraction: 100 p rho(p, 20) / rho(1, 20), the definition of
 * OIML R 22. Domain 0 to 1; there and back within 1e-10 % vol.
 *
 * Accuracy: that of `density`. Source: OIML R 22, definition of q. Cost: 0.03 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * abv20FromMassFraction(massFraction(0.333)); // 40.0004…
 */
export function abv20FromMassFraction(p: MassFraction): Abv20 {
  within("mass fraction", "", p, 0, 1);
  return Math.min(100, 100 * volumeShare(p, T20)) as Abv20;
}

/**
 * Mass fraction of ethanol from the strength by volume at 20 °C. Domain 0 to 100 % vol.
 *
 * Accuracy: there and back within 1e-10 % vol. Source: OIML R 22, definition of q, solved by Halley steps in a bracket.
 * Cost: 0.12 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * massFractionFromAbv20(abv20(40)); // 0.33299…
 */
export function massFractionFromAbv20(abv: Abv20): MassFraction {
  within("strength", "% vol", abv, 0, 100);
  return massFractionOfShare(abv / 100, T20) as MassFraction;
}
