import { polynomial, rootOfPolynomial } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Celsius, KgPerM3, MassFraction } from "../quantity/index.ts";
import { densityPolynomial, ethanolDensity, MIDDLE } from "./density-formula.ts";
import { guessFromDensityShare } from "./first-guess.ts";
import { weakestLiquid } from "./freezing-point.ts";

/** A density past the ends of the range by less than this is rounding, kg/m³; it moves the answer by less than 1e-10. */
const ROUNDING = 1e-9;

/**
 * The mass fraction of ethanol whose mixture with water has density `rho` at `t`; the inverse of `density`.
 *
 * Null when no liquid mixture has that density at that temperature (heavier than water or than the weakest mixture not frozen
 * at `t`, or lighter than ethanol), which is what a liquid with sugar or extract in it can give.
 *
 * Domain: any density, -20 to 40 °C. Accuracy: there and back within 1e-10. Source: the OIML R 22 formula solved by Halley
 * steps in a bracket. Cost: about four times the formula's bare arithmetic, 0.15 µs.
 *
 * @throws RangeError when `t` is outside -20 to 40 °C or `rho` is not a number.
 * @example
 * massFractionFromDensity(kgPerM3(935.15), celsius(20)); // 0.399…
 */
export function massFractionFromDensity(rho: KgPerM3, t: Celsius): MassFraction | null {
  within("temperature", "°C", t, -20, 40);
  within("density", "kg/m³", rho, 0, Infinity);
  const weak = densityPolynomial("weak", t);
  const water = weak[0] as number;
  const ethanol = ethanolDensity(t);
  const weakest = weakestLiquid(t);
  const heaviest = weakest === 0 ? water : polynomial(weak, weakest);
  if (rho > heaviest + ROUNDING || rho < ethanol - ROUNDING) return null;
  if (rho >= heaviest) return weakest as MassFraction;
  if (rho <= ethanol) return 1 as MassFraction;
  const guess = guessFromDensityShare((water - rho) / (water - ethanol));
  if (rho > polynomial(weak, MIDDLE)) {
    const start = Math.min(MIDDLE, Math.max(weakest, guess));
    return rootOfPolynomial(weak, rho, { low: weakest, high: MIDDLE, start, rising: false }) as MassFraction;
  }
  const start = Math.max(MIDDLE, guess) - 1;
  const strong = densityPolynomial("strong", t);
  const range = { low: MIDDLE - 1, high: 0, start, rising: false };
  return (1 + rootOfPolynomial(strong, rho, range)) as MassFraction;
}
