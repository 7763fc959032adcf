import { within } from "../quantity/index.ts";
import type { Celsius, KgPerM3, MassFraction } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { requireLiquid } from "./require-liquid.ts";

/** From this mass fraction on a mixture is liquid in the whole domain: 30 % freezes near -19 °C. */
const LIQUID = 0.3;

/**
 * Density of a mixture of ethanol and water, kg/m³, by the OIML R 22 (1975) general formula.
 *
 * Domain: mass fraction 0 to 1, -20 to 40 °C, liquid. A mixture that is frozen at `t` is refused; since published freezing
 * points differ and liquids can be undercooled, only from 15 % (of the °C) below `freezingPoint` on. Between the two the
 * figure is that of an undercooled liquid.
 *
 * Accuracy: within 0.005 kg/m³ of the printed Table I of OIML R 22 (its rounding). In vacuum, at normal pressure. Holds for
 * ethanol and water only: sugar, oak extract and colour add density that this does not know of.
 *
 * Source: OIML R 22, general formula; oiml-r22.data.ts. Cost: 54 terms by Horner's rule, nothing allocated.
 *
 * @throws RangeError outside the domain.
 * @example
 * density(massFraction(0.4), celsius(20)); // 935.14…
 */
export function density(p: MassFraction, t: Celsius): KgPerM3 {
  within("mass fraction", "", p, 0, 1);
  within("temperature", "°C", t, -20, 40);
  if (t < 0 && p < LIQUID) requireLiquid(p, t);
  return densityFormula(p, t) as KgPerM3;
}
