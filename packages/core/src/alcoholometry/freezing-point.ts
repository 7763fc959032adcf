import { within } from "../quantity/index.ts";
import type { Celsius, MassFraction } from "../quantity/index.ts";
import { FREEZING } from "./freezing.data.ts";
import { interpolate } from "./interpolate.ts";

/** The last row of the table: stronger mixtures freeze below every temperature of the density formula. */
const STRONGEST = 0.39;

/**
 * How far below the table's freezing point a mixture is still taken for liquid, as a share of the freezing point in °C:
 * published curves differ by up to 8 %, and a still mixture can be cooled a little below its freezing point.
 */
const DOUBT = 0.15;

/**
 * The temperature at which ice begins to form in a mixture on cooling, °C; null above 39 % mass, where it is below -28 °C.
 *
 * Domain: mass fraction 0 to 1. Accuracy: 0.3 °C down to -10 °C, 1.5 °C at -20 °C (what handbooks differ by). A still, clean
 * mixture can be cooled several degrees further before it freezes; what has frozen holds less ethanol than what is left.
 *
 * Source: Lange's Handbook of Chemistry, Table 5.13; see freezing.data.ts. Cost: a search of 16 rows.
 *
 * @throws RangeError outside the domain.
 * @example
 * freezingPoint(massFraction(0.333)); // -22.9…
 */
export function freezingPoint(p: MassFraction): Celsius | null {
  within("mass fraction", "", p, 0, 1);
  return p > STRONGEST ? null : (interpolate(FREEZING, 0, 100 * p) as Celsius);
}

/**
 * The smallest mass fraction that is surely not frozen at `t` by more than the doubt about its freezing point: below it
 * `density` refuses. 0 from 0 °C up.
 */
export function weakestLiquid(t: number): number {
  return t >= 0 ? 0 : interpolate(FREEZING, 1, t / (1 + DOUBT)) / 100;
}

/** The coldest temperature of the domain at which `density` takes a mixture for liquid, °C. */
export function coldestLiquid(p: MassFraction): number {
  const freezing = freezingPoint(p);
  return freezing === null ? -20 : Math.max(-20, freezing * (1 + DOUBT));
}
