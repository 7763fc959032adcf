import { within } from "../quantity/index.ts";
import type { Celsius, Grams, KgPerM3, MillilitresRead } from "../quantity/index.ts";
import type { Air } from "./air-buoyancy.ts";
import { gauge } from "./gauge.ts";
import type { Gauged, NotGauged } from "./gauge.ts";
import { glassGrowth } from "./hydrometer.ts";
import { T20 } from "./reference-temperatures.ts";

/**
 * The strength of an unlabelled sample, from what it weighs and what it measures: its density is mass over volume. In air the
 * scale reads low by what the sample displaces: mass = reading (1 - air / weights) + air volume.
 *
 * Domain: amounts above 0, -20 to 40 °C. A density that no mixture has is a "no" with the nearest; dissolved solids read as
 * weakness. Accuracy: 0.1 % of the mass or of the volume is 0.6 % vol near 46 % vol, so measure with a pycnometer or a
 * volumetric flask, not a jug.
 *
 * Source: the definition of density; OIML D 28 for air. Cost: below a microsecond.
 *
 * @throws RangeError outside the domain.
 * @example
 * strengthFromMassAndVolume({ onScale: grams(94.8), ml: millilitresRead(100) }).abv20; // 40.0…
 */
export function strengthFromMassAndVolume(sample: {
  readonly onScale: Grams;
  readonly ml: MillilitresRead;
  readonly celsius?: Celsius;
  readonly air?: Air;
}): Gauged | NotGauged {
  const { onScale, ml, celsius = T20 as Celsius, air } = sample;
  within("weight", "g", onScale, Number.MIN_VALUE, Infinity);
  within("volume", "mL", ml, Number.MIN_VALUE, Infinity);
  const kgPerM3 = (1000 * onScale) / ml;
  const rho =
    air === undefined ? kgPerM3 : kgPerM3 * (1 - air.airKgPerM3 / air.weightsKgPerM3) + air.airKgPerM3;
  // A hydrometer that shows the density at its own temperature, freed of its glass: one road for both.
  const value = (rho * glassGrowth("density20", celsius)) as KgPerM3;
  return gauge({ scale: "density20", value }, celsius);
}
