import { millilitres20 } from "./millilitres-20.ts";
import type { Millilitres20 } from "./millilitres-20.ts";
import { numberAndUnit } from "./number-and-unit.ts";
import { unreadable } from "./reading.ts";
import type { Reading } from "./reading.ts";
import { MILLILITRES_IN } from "./units.data.ts";

/** A thousand litres: far above anything done at a table, so more is a slip of the keys. */
const MOST_ML = 1_000_000;

/**
 * Reads a volume as people write it, taken to be at 20 °C: "50 ml", "5cl", "0,7 l", "2 oz" (US fluid ounce),
 * "1 imp oz". A bare number is mL. Domain 0 to 1 000 000 mL.
 *
 * Issue codes: `volume_unreadable`, `volume_out_of_range`.
 *
 * @example
 * parseVolume("2 oz"); // { ok: true, value: 59.147059125 }
 * parseVolume("70cl"); // { ok: true, value: 700 }
 */
export function parseVolume(text: string): Reading<Millilitres20> {
  const read = numberAndUnit(text);
  if (read === "ambiguous")
    return unreadable("volume", "volume_unreadable", "a number without a thousands comma", text);
  const size = read === null ? undefined : MILLILITRES_IN.get(read.unit);
  if (read === null || size === undefined) {
    return unreadable("volume", "volume_unreadable", "a number with ml, cl, l or oz", text);
  }
  const ml = read.value * size;
  if (!(ml >= 0 && ml <= MOST_ML))
    return unreadable("volume", "volume_out_of_range", `0 to ${MOST_ML} mL`, text);
  return { ok: true, value: millilitres20(ml) };
}
