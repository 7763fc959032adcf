import type { Abv20, Celsius } from "../quantity/index.ts";
import { density } from "./density.ts";
import { T60F } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/**
 * What a volume read at `t` has to be multiplied by to be the volume at 60 °F: the factor of US Gauging Manual Table 7 (27 CFR
 * 30.67), which prints three decimals.
 *
 * Domain: -20 to 40 °C and liquid, 0 to 100 % vol. Accuracy: that of `density`; the vessel's own expansion is not counted.
 *
 * Source: OIML R 22 (density formula). Cost: 0.2 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * factorTo60F(celsiusFromFahrenheit(fahrenheit(72)), abv20FromProof60F(proof60F(86.8))); // 0.995…
 */
export function factorTo60F(t: Celsius, strength: Abv20): number {
  const p = massFractionFromAbv20(strength);
  return density(p, t) / density(p, T60F as Celsius);
}
