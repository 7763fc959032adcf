import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Volume at 20 °C, in mL. */
export type Millilitres20 = Branded<"millilitres20">;

/**
 * Volume at 20 °C, in mL. Domain 0 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * millilitres20(750); // 750
 */
export function millilitres20(x: number): Millilitres20 {
  return within("millilitres20", "mL", x, 0, Infinity) as Millilitres20;
}
