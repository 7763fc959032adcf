import { within } from "../quantity/index.ts";
import type { Abv20, Celsius, MassFraction, Millilitres20, MillilitresRead } from "../quantity/index.ts";
import { density } from "./density.ts";
import { densityFormula } from "./density-formula.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/**
 * Volume at 20 °C of a liquid whose volume was read at `t`: its mass does not change, so V20 = V rho(t) / rho(20).
 *
 * Domain: 0 mL or more, -20 to 40 °C and liquid, 0 to 100 % vol. Accuracy: that of `density`; the measure's own expansion
 * (glass 0.0025 % per °C) is not counted. A whiskey of 46 % vol read at 30 °C is 0.8 % less at 20 °C.
 *
 * Source: OIML R 22 (density formula). Cost: 0.2 µs.
 *
 * @throws RangeError outside the domain, a frozen mixture included.
 * @example
 * volumeAt20FromVolumeAt(millilitresRead(100), celsius(30), abv20(46)); // 99.21…
 */
export function volumeAt20FromVolumeAt(ml: MillilitresRead, t: Celsius, strength: Abv20): Millilitres20 {
  within("volume", "mL", ml, 0, Infinity);
  return (ml * growth(strength, t)) as Millilitres20;
}

/**
 * Volume at `t` of a liquid whose volume at 20 °C is known; the inverse of `volumeAt20FromVolumeAt`.
 *
 * Accuracy: there and back within 1e-10 of itself. Source and cost: as `volumeAt20FromVolumeAt`. Cost: 0.2 µs.
 *
 * @throws RangeError outside the domain of `volumeAt20FromVolumeAt`.
 * @example
 * volumeAtFromVolumeAt20(millilitres20(100), celsius(30), abv20(46)); // 100.79…
 */
export function volumeAtFromVolumeAt20(ml: Millilitres20, t: Celsius, strength: Abv20): MillilitresRead {
  within("volume", "mL", ml, 0, Infinity);
  return (ml / growth(strength, t)) as MillilitresRead;
}

/** rho(t) / rho(20): what one mL read at `t` comes to at 20 °C. */
function growth(strength: Abv20, t: Celsius): number {
  const p: MassFraction = massFractionFromAbv20(strength);
  return density(p, t) / densityFormula(p, T20);
}
