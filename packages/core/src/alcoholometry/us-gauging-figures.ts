import { rootByBrent } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Proof60F } from "../quantity/index.ts";
import type { Air } from "./air-buoyancy.ts";
import { CONVENTIONAL_AIR } from "./air.data.ts";
import { densityFormula } from "./density-formula.ts";
import { T60F } from "./reference-temperatures.ts";
import { STATUTORY_ALCOHOL_SG } from "./us-units.data.ts";

/** One line of Table 6, at 60 °F. */
export type GaugingFigures = {
  /** Parts by volume of alcohol in 100 parts of spirit: half the proof. */
  readonly alcohol: number;
  /** Parts by volume of water that, with the alcohol, contract to 100 parts. */
  readonly water: number;
  /** Specific gravity 60/60 °F in vacuum, and as weighed in air. */
  readonly sgVacuum: number;
  readonly sgAir: number;
};

/**
 * The figures of US Gauging Manual Table 6 (27 CFR 30.66) for a proof, with the alcohol of US law: of specific gravity 0.7939.
 *
 * `proof60F` and everything made with it take OIML R 22's pure ethanol (0.793818) instead, so that 200 proof is pure; the two
 * differ by 1 part in 10 000 of the proof (0.01 proof at 100). Use this to reproduce a US table, the others to measure.
 *
 * Domain: 0 to 200 proof; above 199.97 there is no such mixture and pure ethanol's figures are given. Accuracy: over 80 to
 * 140 proof within 0.00003 of the printed specific gravities and 0.012 of the printed parts of water. Cost: tens of microseconds.
 *
 * Source: 27 CFR 19.1 for the alcohol, OIML R 22 for the densities.
 *
 * @throws RangeError outside 0 to 200 proof.
 * @example
 * gaugingFigures(proof60F(100)).water; // 53.73…
 */
export function gaugingFigures(proof: Proof60F, air: Air = CONVENTIONAL_AIR): GaugingFigures {
  within("strength", "proof", proof, 0, 200);
  const water = densityFormula(0, T60F);
  const alcohol = STATUTORY_ALCOHOL_SG * water;
  /** Mass of alcohol over what the proof asks for, in 1 m³. */
  const surplus = (p: number): number => p * densityFormula(p, T60F) - (proof / 200) * alcohol;
  const p = surplus(1) <= 0 ? 1 : rootByBrent(surplus, 0, 1);
  const rho = densityFormula(p, T60F);
  return {
    alcohol: proof / 2,
    water: (100 * rho - (proof / 2) * alcohol) / water,
    sgVacuum: rho / water,
    sgAir: (rho - air.airKgPerM3) / (water - air.airKgPerM3),
  };
}
