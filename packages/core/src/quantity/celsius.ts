import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** Temperature, in °C, not below absolute zero. */
export type Celsius = Branded<"celsius">;

/**
 * Temperature, in °C, not below absolute zero. Domain -273.15 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * celsius(20); // 20
 */
export function celsius(x: number): Celsius {
  return within("celsius", "°C", x, -273.15, Infinity) as Celsius;
}
