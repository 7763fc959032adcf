import { within } from "../quantity/index.ts";
import type { Celsius, KgPerM3, MassFraction } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";

/**
 * Density of a mixture of ethanol and water, kg/m³, by the OIML R 22 (1975) general formula.
 *
 * Domain: mass fraction 0 to 1, -20 to 40 °C. Accuracy: within 0.005 kg/m³ of the printed Table I of OIML R 22 (its
 * rounding). In vacuum, at normal pressure. Holds for ethanol and water only: sugar, oak extract and colour add density
 * that this does not know of.
 *
 * Below its freezing point a weak mixture is ice and the formula gives a supercooled liquid's figure at best; it is not
 * checked here which mixtures those are.
 *
 * @throws RangeError outside the domain.
 * @example
 * density(massFraction(0.4), celsius(20)); // 935.14…
 */
export function density(p: MassFraction, t: Celsius): KgPerM3 {
  within("mass fraction", "", p, 0, 1);
  within("temperature", "°C", t, -20, 40);
  return densityFormula(p, t) as KgPerM3;
}
