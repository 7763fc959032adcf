import type { Strength } from "./strength.ts";

/**
 * `x` with exactly `decimals` digits after the point, trailing zeros kept, a zero never signed. Rounds the stored binary
 * number (so 1.005 with two decimals is "1.00": the number held is a little less than it looks).
 */
function fixed(x: number, decimals: number): string {
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 12) {
    throw new RangeError(`decimals requires a whole number from 0 to 12, got ${decimals}`);
  }
  // From 1e21 on, toFixed turns to powers of ten.
  if (!(Math.abs(x) < 1e21)) throw new RangeError(`printing requires a number below 1e21, got ${x}`);
  const text = x.toFixed(decimals);
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

/**
 * "62.4 % vol" or "124.8 proof", on the basis it is held in.
 *
 * @example
 * printStrength({ basis: "abv20", value: abv20(62.4) }, 1); // "62.4 % vol"
 */
export function printStrength(strength: Strength, decimals: number): string {
  return `${fixed(strength.value, decimals)} ${strength.basis === "abv20" ? "% vol" : "proof"}`;
}

/**
 * A volume in mL. Takes a plain number because a difference of volumes may be negative.
 *
 * @example
 * printVolume(500, 0); // "500 mL"
 */
export function printVolume(volumeMl: number, decimals: number): string {
  return `${fixed(volumeMl, decimals)} mL`;
}

/**
 * A mass in g.
 *
 * @example
 * printMass(12.34, 1); // "12.3 g"
 */
export function printMass(massG: number, decimals: number): string {
  return `${fixed(massG, decimals)} g`;
}
