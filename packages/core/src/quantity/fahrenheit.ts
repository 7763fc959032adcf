import type { Branded } from "./brand.ts";
import type { Celsius } from "./celsius.ts";
import { within } from "./within.ts";

/** Temperature, in °F, not below absolute zero. */
export type Fahrenheit = Branded<"fahrenheit">;

/**
 * Temperature, in °F, not below absolute zero. Domain -459.67 to Infinity.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * fahrenheit(60); // 60
 */
export function fahrenheit(x: number): Fahrenheit {
  return within("fahrenheit", "°F", x, -459.67, Infinity) as Fahrenheit;
}

/**
 * °F to °C, (f - 32) / 1.8. Exact but for the rounding of one division; 60 °F is 15.5555… °C, never 15.56 or 15.6.
 *
 * Source: NIST Special Publication 811, appendix B.8 (from memory).
 *
 * @throws RangeError when `f` is not a number in the domain of `fahrenheit`.
 * @example
 * celsiusFromFahrenheit(fahrenheit(70)); // 21.1111111111111…
 */
export function celsiusFromFahrenheit(f: Fahrenheit): Celsius {
  return ((fahrenheit(f) - 32) / 1.8) as Celsius;
}

/**
 * °C to °F, 1.8 t + 32.
 *
 * @throws RangeError when `t` is not a number from -273.15 up.
 * @example
 * fahrenheitFromCelsius(celsius(25)); // 77
 */
export function fahrenheitFromCelsius(t: Celsius): Fahrenheit {
  return (within("celsius", "°C", t, -273.15, Infinity) * 1.8 + 32) as Fahrenheit;
}
