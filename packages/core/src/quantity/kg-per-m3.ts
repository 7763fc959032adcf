import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Density, in kg/m³ (the same figure as g/L). */
export type KgPerM3 = Branded<"kgPerM3">;

/**
 * Density, in kg/m³ (the same figure as g/L). Domain 0 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * kgPerM3(935.18); // 935.18
 */
export function kgPerM3(x: number): KgPerM3 {
  return within("kgPerM3", "kg/m³", x, 0, Infinity) as KgPerM3;
}
