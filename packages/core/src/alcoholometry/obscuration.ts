import { within } from "../quantity/index.ts";
import type { Proof60F } from "../quantity/index.ts";
import { OBSCURATION } from "./obscuration.data.ts";

/** What the rule of 27 CFR 30.31 says to do at this much of dissolved solids. */
export type SolidsRule = "as_read" | "add_obscuration" | "distil";

/** The reading freed of what the solids hide. */
export type Unobscured = {
  readonly proof60F: Proof60F;
  /** What was added, in proof. */
  readonly obscurationProof: number;
  /** Whether it changes the proof in the tenth that proof is stated to. */
  readonly matters: boolean;
  readonly rule: SolidsRule;
  /** Whether the factor was found for such a strength (80 to 100 proof); outside it is a guess. */
  readonly inRange: boolean;
};

/**
 * Proof hidden from a hydrometer by dissolved solids (oak extract, sugar, caramel), which make the liquid denser and so seem
 * weaker: 0.4 proof for each 100 mg in 100 mL.
 *
 * Domain: 0 to 100 000 mg in 100 mL. Accuracy: a rule of experience for 80 to 100 proof and whiskey's solids, to about a tenth
 * of itself; barrel-strength whiskey with 200 mg seems 0.8 proof weaker than it is. Source: 27 CFR 30.32(b).
 *
 * Cost: nothing.
 *
 * @throws RangeError outside the domain.
 * @example
 * obscurationProof(500); // 2
 */
export function obscurationProof(solidsMgPer100Ml: number): number {
  within("solids", "mg in 100 mL", solidsMgPer100Ml, 0, 100_000);
  return OBSCURATION.proofPerMg * solidsMgPer100Ml;
}

/**
 * True proof from an apparent one (a reading corrected for temperature by `gauge`) and the dissolved solids, and whether they
 * matter: from 12.5 mg in 100 mL they change the nearest tenth of proof. US law takes a hydrometer as it reads up to 400 mg,
 * adds the obscuration up to 600 mg, and above that has the spirit distilled.
 *
 * Domain: 0 to 200 proof, 0 to 100 000 mg in 100 mL; never above 200 proof. Source: 27 CFR 30.31, 30.32.
 *
 * Accuracy: that of `obscurationProof`. Cost: nothing.
 *
 * @throws RangeError outside the domain.
 * @example
 * trueProofWithSolids(proof60F(90), 500).proof60F; // 92
 */
export function trueProofWithSolids(apparent: Proof60F, solidsMgPer100Ml: number): Unobscured {
  within("apparent proof", "proof", apparent, 0, 200);
  const hidden = obscurationProof(solidsMgPer100Ml);
  const { addAboveMg, distilAboveMg, fromProof, toProof } = OBSCURATION;
  return {
    proof60F: Math.min(200, apparent + hidden) as Proof60F,
    obscurationProof: hidden,
    matters: hidden >= 0.05,
    rule:
      solidsMgPer100Ml > distilAboveMg
        ? "distil"
        : solidsMgPer100Ml > addAboveMg
          ? "add_obscuration"
          : "as_read",
    inRange: apparent >= fromProof && apparent <= toProof,
  };
}

/**
 * Dissolved solids, mg in 100 mL, from the residue of a sample evaporated to dryness and dried at 100 °C for 30 minutes.
 *
 * Never evaporate strong spirit over a flame: the vapour burns. Source: 27 CFR 30.32(b), which takes 25 mL.
 *
 * Domain: residue 0 or more, sample above 0. Accuracy: that of the weighing: 1 mg of 25 mL is 4 mg in 100 mL. Cost:
 * nothing.
 *
 * @throws RangeError when the residue is negative or the sample not above 0.
 * @example
 * solidsFromResidue({ residueG: 0.125, sampleMl: 25 }); // 500
 */
export function solidsFromResidue(residue: { readonly residueG: number; readonly sampleMl: number }): number {
  within("residue", "g", residue.residueG, 0, Infinity);
  within("sample", "mL", residue.sampleMl, Number.MIN_VALUE, Infinity);
  return (residue.residueG * 1000 * 100) / residue.sampleMl;
}
