import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Mass of ethanol over mass of ethanol and water, 0 to 1. */
export type MassFraction = Branded<"massFraction">;

/**
 * Mass of ethanol over mass of ethanol and water, 0 to 1. Domain 0 to 1.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * massFraction(0.4); // 0.4
 */
export function massFraction(x: number): MassFraction {
  return within("massFraction", "", x, 0, 1) as MassFraction;
}
