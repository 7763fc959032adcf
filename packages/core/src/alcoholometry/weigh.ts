import { within } from "../quantity/index.ts";
import type { Abv20, Celsius, Grams, KgPerM3, Millilitres20, MillilitresRead } from "../quantity/index.ts";
import type { Air } from "./air-buoyancy.ts";
import { massFromScale, scaleReading } from "./air-buoyancy.ts";
import { density } from "./density.ts";
import { densityFormula } from "./density-formula.ts";
import type { Liquid } from "./liquid.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/** An amount of a liquid of known strength, as a scale and as a measure show it. */
export type Weighed = {
  /** What is on the scale: its reading in air when `air` was given, else the mass. */
  readonly grams: Grams;
  readonly massG: Grams;
  readonly ml: MillilitresRead;
  readonly ml20: Millilitres20;
  /** Density at the liquid's temperature. */
  readonly kgPerM3: KgPerM3;
  readonly liquid: Liquid;
};

/** The liquid's strength, its temperature (20 °C unless given) and the air it is weighed in (vacuum unless given). */
export type Weighing = { readonly abv20: Abv20; readonly celsius?: Celsius; readonly air?: Air };

/**
 * What so many mL of a liquid, as read at its temperature, weigh.
 *
 * Domain: 0 mL or more, 0 to 100 % vol, -20 to 40 °C and liquid. Accuracy: that of `density`, and of the air.
 *
 * Source: OIML R 22 for the density, OIML D 28 for the air. Cost: 0.3 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * weigh(millilitresRead(100), { abv20: abv20(40) }).grams; // 94.80…
 * weigh(millilitresRead(100), { abv20: abv20(40), air: CONVENTIONAL_AIR }).grams; // 94.69…
 */
export function weigh(ml: MillilitresRead, weighing: Weighing): Weighed {
  within("volume", "mL", ml, 0, Infinity);
  const kgPerM3 = densityOf(weighing);
  return weighed(((ml * kgPerM3) / 1000) as Grams, kgPerM3, weighing);
}

/**
 * The volume and the ethanol and water in so many grams on the scale; the inverse of `weigh`.
 *
 * Accuracy: there and back within 1e-10 of itself. Source: as `weigh`. Cost: 0.3 µs.
 *
 * @throws RangeError outside the domain of `weigh`.
 * @example
 * volumeFromWeight(grams(94.8), { abv20: abv20(40) }).ml; // 99.99…
 */
export function volumeFromWeight(onScale: Grams, weighing: Weighing): Weighed {
  within("weight", "g", onScale, 0, Infinity);
  const kgPerM3 = densityOf(weighing);
  const massG = weighing.air === undefined ? onScale : massFromScale(onScale, kgPerM3, weighing.air);
  return weighed(massG, kgPerM3, weighing);
}

function densityOf({ abv20, celsius = T20 as Celsius }: Weighing): KgPerM3 {
  return density(massFractionFromAbv20(abv20), celsius);
}

function weighed(massG: Grams, kgPerM3: KgPerM3, { abv20, air }: Weighing): Weighed {
  const p = massFractionFromAbv20(abv20);
  const ethanolG = massG * p;
  return {
    grams: air === undefined ? massG : scaleReading(massG, kgPerM3, air),
    massG,
    ml: ((massG / kgPerM3) * 1000) as MillilitresRead,
    ml20: ((massG / densityFormula(p, T20)) * 1000) as Millilitres20,
    kgPerM3,
    liquid: { ethanolG: ethanolG as Grams, waterG: (massG - ethanolG) as Grams },
  };
}
