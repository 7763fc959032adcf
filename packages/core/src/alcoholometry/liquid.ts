import { within } from "../quantity/index.ts";
import type { Abv20, Grams, MassFraction, Millilitres20, Proof60F } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { proof60FFromMassFraction } from "./proof.ts";
import { T20 } from "./reference-temperatures.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";

/** A liquid by what it is made of: the pair that adds when liquids are mixed. */
export type Liquid = { readonly ethanolG: Grams; readonly waterG: Grams };

/** A liquid with everything that follows from its two masses. An empty one has no strength: null. */
export type DescribedLiquid = Liquid & {
  readonly massG: Grams;
  readonly volumeMl: Millilitres20;
  readonly massFraction: MassFraction | null;
  readonly abv20: Abv20 | null;
  readonly proof60F: Proof60F | null;
};

/**
 * The masses of ethanol and water in a volume at 20 °C of a given strength.
 *
 * Domain: 0 mL or more, 0 to 100 % vol. Accuracy: that of `density`. Source: OIML R 22 (density formula). Cost: one
 * inversion of the formula, 0.15 µs.
 *
 * @throws RangeError when the volume is negative or not finite, or the strength outside 0 to 100 % vol.
 * @example
 * liquidOfVolume(millilitres20(700), abv20(40)); // { ethanolG: 220.98…, waterG: 442.6… }
 */
export function liquidOfVolume(volumeMl: Millilitres20, abv: Abv20): Liquid {
  within("volume", "mL", volumeMl, 0, Infinity);
  const p = massFractionFromAbv20(abv);
  const massG = (volumeMl * densityFormula(p, T20)) / 1000;
  const ethanolG = massG * p;
  return { ethanolG: ethanolG as Grams, waterG: (massG - ethanolG) as Grams };
}

/**
 * Mass, volume at 20 °C and strengths of a liquid from its masses of ethanol and water. An empty liquid has mass and
 * volume 0 and its strengths are null.
 *
 * Domain: masses 0 or more. Accuracy: that of `density`. Source: OIML R 22 (density formula). Cost: three densities, 0.15
 * µs.
 *
 * @throws RangeError when a mass is negative or not finite.
 * @example
 * describeLiquid({ ethanolG: grams(40), waterG: grams(60) }).abv20; // 47.39…
 */
export function describeLiquid({ ethanolG, waterG }: Liquid): DescribedLiquid {
  within("mass of ethanol", "g", ethanolG, 0, Infinity);
  within("mass of water", "g", waterG, 0, Infinity);
  const massG = (ethanolG + waterG) as Grams;
  if (massG === 0) {
    const volumeMl = 0 as Millilitres20;
    return { massG, ethanolG, waterG, volumeMl, massFraction: null, abv20: null, proof60F: null };
  }
  const p = (ethanolG / massG) as MassFraction;
  return {
    massG,
    ethanolG,
    waterG,
    volumeMl: ((massG / densityFormula(p, T20)) * 1000) as Millilitres20,
    massFraction: p,
    abv20: abv20FromMassFraction(p),
    proof60F: proof60FFromMassFraction(p),
  };
}
