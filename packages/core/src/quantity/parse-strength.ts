import { abv20 } from "./abv20.ts";
import { numberAndUnit } from "./number-and-unit.ts";
import { proof60F } from "./proof-60f.ts";
import { unreadable } from "./reading.ts";
import type { Reading } from "./reading.ts";
import type { Strength } from "./strength.ts";

const PER_CENT = new Set([
  "",
  "%",
  "abv",
  "% abv",
  "vol",
  "% vol",
  "vol%",
  "%vol",
  "%abv",
  "% alc/vol",
  "% alc. vol.",
]);
const PROOF = new Set(["proof", "pf", "us proof", "° proof", "°proof"]);

/**
 * Reads a strength as people write it: "62.4%", "62,4 % vol", "46", "62.4 abv" (% vol at 20 °C) or "124.8 proof"
 * (US proof at 60 °F). Nothing is converted: the basis that was written is kept. A bare number is % vol, and a bare
 * number above 100 is refused, not guessed to be proof.
 *
 * Issue codes: `strength_unreadable`, `strength_out_of_range`.
 *
 * @example
 * parseStrength("124.8 proof"); // { ok: true, value: { basis: "proof60F", value: 124.8 } }
 * parseStrength("62,4 % vol"); // { ok: true, value: { basis: "abv20", value: 62.4 } }
 */
export function parseStrength(text: string): Reading<Strength> {
  const read = numberAndUnit(text);
  if (read === "ambiguous")
    return unreadable("strength", "strength_unreadable", "a number without a thousands comma", text);
  const isProof = read !== null && PROOF.has(read.unit);
  if (read === null || !(isProof || PER_CENT.has(read.unit))) {
    return unreadable("strength", "strength_unreadable", 'a number with "%" or "proof"', text);
  }
  if (isProof) {
    if (!(read.value >= 0 && read.value <= 200))
      return unreadable("strength", "strength_out_of_range", "0 to 200 proof", text);
    return { ok: true, value: { basis: "proof60F", value: proof60F(read.value) } };
  }
  if (!(read.value >= 0 && read.value <= 100))
    return unreadable("strength", "strength_out_of_range", "0 to 100 % vol", text);
  return { ok: true, value: { basis: "abv20", value: abv20(read.value) } };
}
