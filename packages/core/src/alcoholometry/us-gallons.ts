import { within } from "../quantity/index.ts";
import type { Grams, Proof60F } from "../quantity/index.ts";
import type { Air } from "./air-buoyancy.ts";
import { massFromScale, scaleReading } from "./air-buoyancy.ts";
import { CONVENTIONAL_AIR } from "./air.data.ts";
import { densityFormula } from "./density-formula.ts";
import { describeLiquid } from "./liquid.ts";
import type { Liquid } from "./liquid.ts";
import { massFractionFromProof60F } from "./proof.ts";
import { T20, T60F } from "./reference-temperatures.ts";
import { POUND_G, WINE_GALLON_ML } from "./us-units.data.ts";

/**
 * Wine gallons: the liquid's volume at 60 °F in US gallons of 231 cubic inches.
 *
 * Domain: masses 0 or more. Accuracy: that of `density`. Source: 27 CFR 30.11.
 *
 * Cost: 0.2 µs.
 *
 * @throws RangeError when a mass is negative or not finite.
 * @example
 * wineGallons(liquidOfVolume(millilitres20(3785.411784), abv20(46))); // 0.996…
 */
export function wineGallons(liquid: Liquid): number {
  const { massG, massFraction } = describeLiquid(liquid);
  if (massFraction === null) return 0;
  return ((massG / densityFormula(massFraction, T60F)) * 1000) / WINE_GALLON_ML;
}

/**
 * Proof gallons: wine gallons times proof over 100; what a US distillery is taxed on.
 *
 * Domain and accuracy: those of `wineGallons`. 100 gallons of 80 proof are 80 proof gallons. Source: 27 CFR 30.11.
 *
 * Cost: 0.4 µs.
 *
 * @throws RangeError when a mass is negative or not finite.
 * @example
 * proofGallons(liquidOfVolume(millilitres20(3785.411784), abv20(46))); // 0.915…
 */
export function proofGallons(liquid: Liquid): number {
  return (wineGallons(liquid) * (describeLiquid(liquid).proof60F ?? 0)) / 100;
}

/**
 * Litres of pure alcohol (at 20 °C): the mass of ethanol over the density of ethanol; what most countries tax.
 *
 * Domain: masses 0 or more. Accuracy: that of `density`. Source: OIML R 22 (density formula). Cost: 0.2 µs.
 *
 * @throws RangeError when a mass is negative or not finite.
 * @example
 * litresOfAlcohol(liquidOfVolume(millilitres20(700), abv20(50))); // 0.35…
 */
export function litresOfAlcohol(liquid: Liquid): number {
  return describeLiquid(liquid).ethanolG / densityFormula(1, T20);
}

/**
 * Pounds that a wine gallon of spirit weighs at 60 °F, in air unless `air` is `null`.
 *
 * Domain: 0 to 200 proof. Accuracy: within 0.0008 lb of US Gauging Manual Table 5 (27 CFR 30.65). A proof gallon weighs this
 * times 100 over the proof.
 *
 * Source: OIML R 22 for the density, OIML D 28 for the air. Cost: 0.2 µs.
 *
 * @throws RangeError outside 0 to 200 proof.
 * @example
 * poundsPerWineGallon(proof60F(100)); // 7.780…
 */
export function poundsPerWineGallon(proof: Proof60F, air: Air | null = CONVENTIONAL_AIR): number {
  const rho = densityFormula(massFractionFromProof60F(proof), T60F);
  const massG = ((rho * WINE_GALLON_ML) / 1000) as Grams;
  return (air === null ? massG : scaleReading(massG, rho, air)) / POUND_G;
}

/**
 * The liquid in so many pounds of spirit of a proof, weighed at 60 °F in air unless `air` is `null`; `wineGallons` and
 * `proofGallons` of it are those of 27 CFR 30.63 and 30.64 (Tables 3 and 4).
 *
 * Domain: 0 lb or more, 0 to 200 proof. Accuracy: that of `poundsPerWineGallon`. Source: as `poundsPerWineGallon`. Cost:
 * 0.2 µs.
 *
 * @throws RangeError when the weight is negative or not finite, or the proof outside 0 to 200.
 * @example
 * proofGallons(liquidOfPounds(321.5, proof60F(86))); // 35.06…
 */
export function liquidOfPounds(pounds: number, proof: Proof60F, air: Air | null = CONVENTIONAL_AIR): Liquid {
  const p = massFractionFromProof60F(proof);
  const onScale = (within("weight", "lb", pounds, 0, Infinity) * POUND_G) as Grams;
  const massG = air === null ? onScale : massFromScale(onScale, densityFormula(p, T60F), air);
  const ethanolG = massG * p;
  return { ethanolG: ethanolG as Grams, waterG: (massG - ethanolG) as Grams };
}
