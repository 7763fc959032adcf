import type { Abv20, KgPerM3, MassFraction, Proof60F } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { GLASS_EXPANSION } from "./hydrometer.data.ts";
import { massFractionFromProof60F, proof60FFromMassFraction } from "./proof.ts";
import { T20, T60F } from "./reference-temperatures.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";

/**
 * What was read off a floating instrument, with its scale. The instrument is right at its own standard temperature: 20 °C for
 * % vol and density, 60 °F for US proof.
 */
export type HydrometerReading =
  | { readonly scale: "abv20"; readonly value: Abv20 }
  | { readonly scale: "proof60F"; readonly value: Proof60F }
  | { readonly scale: "density20"; readonly value: KgPerM3 };

/** Its standard temperature, °C. */
export function standardTemperature(scale: HydrometerReading["scale"]): number {
  return scale === "proof60F" ? T60F : T20;
}

/** The density that the mark at `reading` stands for at the instrument's standard temperature, kg/m³. */
export function densityOfMark(reading: HydrometerReading): number {
  if (reading.scale === "abv20") return densityFormula(massFractionFromAbv20(reading.value), T20);
  if (reading.scale === "proof60F") return densityFormula(massFractionFromProof60F(reading.value), T60F);
  return reading.value;
}

/** The strength that the scale shows for a mixture of mass fraction `p`. Not for the density scale. */
export function markOfMassFraction(scale: "abv20" | "proof60F", p: MassFraction): Abv20 | Proof60F {
  return scale === "abv20" ? abv20FromMassFraction(p) : proof60FFromMassFraction(p);
}

/**
 * How much larger the glass is at `t` than at its standard temperature. The immersed part displaces the instrument's weight,
 * so the liquid's density is the mark's divided by this.
 */
export function glassGrowth(scale: HydrometerReading["scale"], t: number): number {
  return 1 + GLASS_EXPANSION * (t - standardTemperature(scale));
}
