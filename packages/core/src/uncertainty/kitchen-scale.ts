import { within } from "../quantity/index.ts";
import type { Input } from "./input.ts";
import { SCALES } from "./kitchen-scale.data.ts";
import { normal, rectangular } from "./spreads.ts";

/** pocket shows 0.01 g, fine 0.1 g, kitchen 1 g. */
export type ScaleClass = keyof typeof SCALES;

/** What was seen to go in is more than nothing, however little of it the scale can tell: never less than this share of the reading. */
const LEAST = 1e-3;

/**
 * A mass weighed by difference (after a tare, or between two readings), g: rectangular half a step for each of the two
 * readings, normal for the scale's repeatability, rectangular for its slope.
 *
 * Give `stepG`, `repeatG` or `ofLoad` to say what your scale does instead of its class. Source: kitchen-scale.data.ts.
 *
 * Domain: 0 g or more. Accuracy: a guess without your own scale's figures. Cost: nothing.
 *
 * @throws RangeError when the mass, or a figure of the scale, is negative.
 * @example
 * standardUncertainty(scaleMass({ id: "pour", g: 100, class: "fine" })); // 0.111…
 */
export function scaleMass(reading: {
  readonly id: string;
  readonly g: number;
  readonly class: ScaleClass;
  readonly stepG?: number;
  readonly repeatG?: number;
  readonly ofLoad?: number;
  readonly words?: string;
}): Input {
  const { id, g, words = "your scale" } = reading;
  const { stepG, repeatG, ofLoad } = { ...SCALES[reading.class], ...given(reading) };
  within("mass", "g", g, 0, Infinity);
  const half = rectangular(within("scale step", "g", stepG, 0, Infinity) / 2);
  const spreads = [
    ...half,
    ...half,
    ...normal(within("repeatability", "g", repeatG, 0, Infinity)),
    ...rectangular(within("slope", "", ofLoad, 0, 1) * g),
  ];
  return { id, kind: "scale", words, value: g, spreads, low: g * LEAST, high: Infinity };
}

function given(reading: {
  readonly stepG?: number;
  readonly repeatG?: number;
  readonly ofLoad?: number;
}): Partial<{ stepG: number; repeatG: number; ofLoad: number }> {
  const figures: { stepG?: number; repeatG?: number; ofLoad?: number } = {};
  if (reading.stepG !== undefined) figures.stepG = reading.stepG;
  if (reading.repeatG !== undefined) figures.repeatG = reading.repeatG;
  if (reading.ofLoad !== undefined) figures.ofLoad = reading.ofLoad;
  return figures;
}
