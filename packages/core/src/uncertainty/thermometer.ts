import type { Celsius } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { rectangular } from "./spreads.ts";
import { THERMOMETER_HALF_WIDTH } from "./thermometer.data.ts";

/** laboratory ±0.2 °C; kitchen probe ±1 °C; room: the liquid taken to be as warm as the room, ±2 °C. */
export type ThermometerClass = keyof typeof THERMOMETER_HALF_WIDTH;

/**
 * The liquid's temperature, °C: rectangular within what the thermometer may be off.
 *
 * Domain: any temperature; models take -20 to 40 °C. Accuracy: a guess without a certificate. Source: common practice, no
 * source. Cost: nothing.
 *
 * @throws RangeError never here; models refuse a temperature outside -20 to 40 °C.
 * @example
 * thermometer({ id: "t", celsius: celsius(24), class: "kitchen" }).spreads[0].halfWidth; // 1
 */
export function thermometer(reading: {
  readonly id: string;
  readonly celsius: Celsius;
  readonly class: ThermometerClass;
  readonly words?: string;
}): Input {
  const { id, celsius, words = "the thermometer" } = reading;
  return {
    id,
    kind: "thermometer",
    words,
    value: celsius,
    spreads: rectangular(THERMOMETER_HALF_WIDTH[reading.class]),
    low: -20,
    high: 40,
  };
}
