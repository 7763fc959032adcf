import { within } from "../quantity/index.ts";
import type { Abv20, Celsius, KgPerM3, MassFraction, Proof60F } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { weakestLiquid } from "./freezing-point.ts";
import { densityOfMark, glassGrowth } from "./hydrometer.ts";
import type { HydrometerReading } from "./hydrometer.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";
import type { OutOfReachBut } from "./out-of-reach.ts";
import { proof60FFromMassFraction } from "./proof.ts";
import { T20 } from "./reference-temperatures.ts";
import { abv20FromMassFraction } from "./strength-by-volume.ts";

/** What the liquid is, once the reading is corrected. */
export type Gauged = {
  readonly ok: true;
  readonly massFraction: MassFraction;
  /** % vol at 20 °C. */
  readonly abv20: Abv20;
  /** True proof, at 60 °F. */
  readonly proof60F: Proof60F;
  /** Density at the temperature of the reading. */
  readonly kgPerM3: KgPerM3;
  readonly kgPerM3At20: KgPerM3;
};

/** `nearest` is the gauging of the mixture whose density at that temperature comes nearest. */
export type NotGauged = OutOfReachBut<"reading_heavier_than_any" | "reading_lighter_than_any", Gauged>;

/**
 * The true strength from the reading of a hydrometer or alcoholometer in a liquid at `t`: corrects for the liquid's expansion
 * and the glass's. With the proof scale this is the "true proof" of 27 CFR 30.61, Table 1.
 *
 * Domain: -20 to 40 °C; readings 0 to 100 % vol, 0 to 200 proof, any density. A reading that no liquid mixture gives at that
 * temperature is a "no" with the nearest that one does.
 *
 * Accuracy: Table 1 within 0.15 proof over 80 to 140 proof and 50 to 80 °F; the instrument's own error, the meniscus and
 * dissolved solids (`trueProofWithSolids`) come on top. Glass expands 25e-6 per °C (ISO 1768).
 *
 * Source: the weight of what is displaced is the instrument's, rho(t) V (1 + 25e-6 (t - standard)) = rho(mark) V. Cost: two
 * inversions of the density formula, a few microseconds.
 *
 * @throws RangeError outside the domain.
 * @example
 * const reading = { scale: "proof60F", value: proof60F(100) };
 * gauge(reading, celsiusFromFahrenheit(fahrenheit(70))).proof60F; // 95.8…
 */
export function gauge(reading: HydrometerReading, t: Celsius): Gauged | NotGauged {
  within("temperature", "°C", t, -20, 40);
  within("reading", "kg/m³", densityOfMark(reading), 0, Infinity);
  const rho = (densityOfMark(reading) / glassGrowth(reading.scale, t)) as KgPerM3;
  const p = massFractionFromDensity(rho, t);
  if (p !== null) return gauged(p, t);
  const heavier = rho > densityFormula(1, t);
  const nearest = gauged((heavier ? weakestLiquid(t) : 1) as MassFraction, t);
  const bound = heavier ? "at most" : "at least";
  const message = `reading requires ${bound} ${nearest.kgPerM3.toFixed(2)} kg/m³ at ${t} °C, got ${rho.toFixed(2)} kg/m³`;
  const code = heavier ? "reading_heavier_than_any" : "reading_lighter_than_any";
  return { ok: false, issue: { code, limit: nearest.kgPerM3, received: rho, message }, nearest };
}

function gauged(p: MassFraction, t: Celsius): Gauged {
  return {
    ok: true,
    massFraction: p,
    abv20: abv20FromMassFraction(p),
    proof60F: proof60FFromMassFraction(p),
    kgPerM3: densityFormula(p, t) as KgPerM3,
    kgPerM3At20: densityFormula(p, T20) as KgPerM3,
  };
}
