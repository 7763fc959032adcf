import { within } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { rectangular } from "./spreads.ts";

/**
 * What was read off a hydrometer, in its own unit: rectangular within its error (one division unless given) and within half a
 * division for the reading. Common practice, no source: a calibrated instrument comes with its own figure.
 *
 * Domain: division and error 0 or more. Accuracy: a guess without the instrument's certificate. Cost: nothing.
 *
 * @throws RangeError when the division or the error is negative.
 * @example
 * standardUncertainty(hydrometer({ id: "h", reading: 46, division: 1, low: 0, high: 100 })); // 0.645…
 */
export function hydrometer(reading: {
  readonly id: string;
  readonly reading: number;
  readonly division: number;
  readonly error?: number;
  /** The ends of the scale. */
  readonly low: number;
  readonly high: number;
  readonly words?: string;
}): Input {
  const { id, division, low, high, words = "the hydrometer" } = reading;
  within("division", "", division, 0, Infinity);
  const error = within("error of the hydrometer", "", reading.error ?? division, 0, Infinity);
  const spreads = [...rectangular(error), ...rectangular(division / 2)];
  return { id, kind: "hydrometer", words, value: reading.reading, spreads, low, high };
}
