import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Mass, in g. */
export type Grams = Branded<"grams">;

/**
 * Mass, in g. Domain 0 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * grams(591.9); // 591.9
 */
export function grams(x: number): Grams {
  return within("grams", "g", x, 0, Infinity) as Grams;
}
