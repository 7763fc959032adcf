import { within } from "../quantity/index.ts";
import type { Grams } from "../quantity/index.ts";
import type { OutOfReach } from "./out-of-reach.ts";

export type PouredBetween = { readonly ok: true; readonly grams: readonly Grams[] };

/** `index` is the reading that is less than the one before it. */
export type ReadingFalls = OutOfReach<"reading_falls"> & { readonly index: number };

/**
 * Tare as you go: the grams of each part from the readings of a scale that was not zeroed in between. The first reading is
 * that of the vessel before anything was poured (0 if it was zeroed then).
 *
 * A reading below the one before it is a "no" that names it: something was taken out, or the scale was zeroed after all.
 *
 * Domain: one finite reading or more. Accuracy: exact but for one rounding a part. Source: common practice, no source.
 * Cost: nothing.
 *
 * @throws RangeError when there is no reading, or one is not a finite number.
 * @example
 * pouredBetweenReadings([412.3, 512.4, 562.1]).grams; // [100.09…, 49.70…]
 */
export function pouredBetweenReadings(readings: readonly number[]): PouredBetween | ReadingFalls {
  for (const reading of readings) within("scale reading", "g", reading, -1e9, 1e9);
  const [first, ...rest] = readings;
  if (first === undefined) throw new RangeError("scale readings require at least one, got none");
  const grams: Grams[] = [];
  let before = first;
  for (const [n, reading] of rest.entries()) {
    if (reading < before) {
      const message = `scale reading ${n + 2} requires at least the ${before} g before it, got ${reading} g`;
      return {
        ok: false,
        issue: { code: "reading_falls", limit: before, received: reading, message },
        index: n + 1,
      };
    }
    grams.push((reading - before) as Grams);
    before = reading;
  }
  return { ok: true, grams };
}
