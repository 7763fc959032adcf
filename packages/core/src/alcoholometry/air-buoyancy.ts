import { within } from "../quantity/index.ts";
import type { Grams } from "../quantity/index.ts";

/** What surrounds the scale and what it was adjusted with. */
export type Air = { readonly airKgPerM3: number; readonly weightsKgPerM3: number };

/**
 * What a scale shows in air for a liquid's mass: the liquid is lifted by the air it displaces, and the weights that the scale
 * was adjusted with were too. W = m (1 - air / rho) / (1 - air / weights).
 *
 * Domain: mass 0 or more, density of the liquid above that of air. For whiskey the scale shows 0.11 to 0.13 % less than the
 * mass. Accuracy: exact for the air given; room air differs from 1.2 kg/m³ by up to 0.1, which is 0.01 %.
 *
 * Source: OIML D 28 (2004) (from memory).
 *
 * Cost: a few nanoseconds.
 *
 * @throws RangeError outside the domain.
 * @example
 * scaleReading(grams(100), 948, CONVENTIONAL_AIR); // 99.888…
 */
export function scaleReading(massG: Grams, liquidKgPerM3: number, air: Air): Grams {
  within("mass", "g", massG, 0, Infinity);
  return (massG * lift(liquidKgPerM3, air)) as Grams;
}

/**
 * The mass of a liquid from what a scale shows for it in air; the inverse of `scaleReading`.
 *
 * Domain: a reading of 0 or more, else as `scaleReading`. Accuracy: there and back within 1e-12. Source: OIML D 28 (2004).
 * Cost: a few nanoseconds.
 *
 * @throws RangeError outside the domain of `scaleReading`.
 * @example
 * massFromScale(grams(99.888), 948, CONVENTIONAL_AIR); // 99.99…
 */
export function massFromScale(scaleG: Grams, liquidKgPerM3: number, air: Air): Grams {
  within("scale reading", "g", scaleG, 0, Infinity);
  return (scaleG / lift(liquidKgPerM3, air)) as Grams;
}

function lift(liquidKgPerM3: number, { airKgPerM3, weightsKgPerM3 }: Air): number {
  within("density of air", "kg/m³", airKgPerM3, 0, 2);
  within("density of the weights", "kg/m³", weightsKgPerM3, 1000, 30_000);
  within("density of the liquid", "kg/m³", liquidKgPerM3, 10, 30_000);
  return (1 - airKgPerM3 / liquidKgPerM3) / (1 - airKgPerM3 / weightsKgPerM3);
}
