import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Alcoholic strength by volume at 15 °C, in % vol: the basis of some older instruments and tables. */
export type Abv15 = Branded<"abv15">;

/**
 * Alcoholic strength by volume at 15 °C, in % vol. Domain 0 to 100.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * abv15(40); // 40
 */
export function abv15(x: number): Abv15 {
  return within("abv15", "% vol", x, 0, 100) as Abv15;
}
