import { rootByNewton } from "../numeric/index.ts";
import type { Celsius, KgPerM3, MassFraction } from "../quantity/index.ts";
import { densityFormula, densitySlopeFormula } from "./density-formula.ts";
import { within } from "./within.ts";

/**
 * The mass fraction of ethanol whose mixture with water has density `rho` at `t`; the inverse of `density`.
 *
 * Null when no mixture has that density at that temperature (heavier than water or lighter than ethanol), which is what
 * a liquid with sugar or extract in it can give.
 *
 * @throws RangeError when `t` is outside -20 to 40 °C or `rho` is not a number.
 * @example
 * massFractionFromDensity(kgPerM3(935.15), celsius(20)); // 0.400…
 */
export function massFractionFromDensity(rho: KgPerM3, t: Celsius): MassFraction | null {
  within("temperature", "°C", t, -20, 40);
  within("density", "kg/m³", rho, 0, Number.MAX_VALUE);
  const water = densityFormula(0, t);
  const ethanol = densityFormula(1, t);
  if (rho > water || rho < ethanol) return null;
  return rootByNewton(
    (p) => densityFormula(p, t) - rho,
    (p) => densitySlopeFormula(p, t),
    0,
    1,
    1e-13,
  ) as MassFraction;
}
