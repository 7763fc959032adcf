import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Alcoholic strength by volume at 20 °C, in % vol. */
export type Abv20 = Branded<"abv20">;

/**
 * Alcoholic strength by volume at 20 °C, in % vol. Domain 0 to 100.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * abv20(62.4); // 62.4
 */
export function abv20(x: number): Abv20 {
  return within("abv20", "% vol", x, 0, 100) as Abv20;
}
