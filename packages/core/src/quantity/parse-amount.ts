import type { Amount } from "./amount.ts";
import { grams } from "./grams.ts";
import { numberAndUnit } from "./number-and-unit.ts";
import { parseVolume } from "./parse-volume.ts";
import { unreadable } from "./reading.ts";
import type { Reading } from "./reading.ts";
import { GRAMS_IN, MILLILITRES_IN } from "./units.data.ts";

/** A tonne, as the volume limit is a cubic metre. */
const MOST_G = 1_000_000;

/**
 * Reads a volume ("50 ml", "2 oz", bare number = mL) or a mass ("12 g", "0.4 kg"). "oz" is a volume.
 *
 * Issue codes: `amount_unreadable`, `mass_out_of_range`, and those of `parseVolume`.
 *
 * @example
 * parseAmount("0.4 kg"); // { ok: true, value: { kind: "mass", massG: 400 } }
 * parseAmount("50 ml"); // { ok: true, value: { kind: "volume", volumeMl: 50 } }
 */
export function parseAmount(text: string): Reading<Amount> {
  const read = numberAndUnit(text);
  if (read === "ambiguous")
    return unreadable("amount", "amount_unreadable", "a number without a thousands comma", text);
  if (read !== null && MILLILITRES_IN.has(read.unit)) {
    const volume = parseVolume(text);
    return volume.ok ? { ok: true, value: { kind: "volume", volumeMl: volume.value } } : volume;
  }
  const size = read === null ? undefined : GRAMS_IN.get(read.unit);
  if (read === null || size === undefined) {
    return unreadable("amount", "amount_unreadable", "a number with ml, cl, l, oz, g or kg", text);
  }
  const g = read.value * size;
  if (!(g >= 0 && g <= MOST_G)) return unreadable("mass", "mass_out_of_range", `0 to ${MOST_G} g`, text);
  return { ok: true, value: { kind: "mass", massG: grams(g) } };
}
