import { numberAndUnit } from "./number-and-unit.ts";
import { unreadable } from "./reading.ts";
import type { Reading } from "./reading.ts";
import { CM2_IN } from "./units.data.ts";

/** A square metre: far more wood than goes into anything at a table. */
const MOST_CM2 = 10_000;

/**
 * Reads an area as square centimetres: "66cm2", "66 cm²", "6600 mm2", "10.2 in2". A bare number is cm². Domain 0 to 10 000 cm².
 *
 * Issue codes: `area_unreadable`, `area_out_of_range`.
 *
 * @example
 * parseArea("66cm2"); // { ok: true, value: 66 }
 */
export function parseArea(text: string): Reading<number> {
  const read = numberAndUnit(text);
  if (read === "ambiguous")
    return unreadable("area", "area_unreadable", "a number without a thousands comma", text);
  const size = read === null ? undefined : CM2_IN.get(read.unit);
  if (read === null || size === undefined)
    return unreadable("area", "area_unreadable", "a number with cm2, mm2 or in2", text);
  const cm2 = read.value * size;
  if (!(cm2 >= 0 && cm2 <= MOST_CM2))
    return unreadable("area", "area_out_of_range", `0 to ${MOST_CM2} cm²`, text);
  return { ok: true, value: cm2 };
}
