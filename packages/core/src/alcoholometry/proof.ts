import { within } from "../quantity/index.ts";
import type { Abv20, MassFraction, Proof60F } from "../quantity/index.ts";
import { T60F } from "./reference-temperatures.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";
import { massFractionOfShare, volumeShare } from "./volume-share.ts";

/**
 * US proof from the mass fraction: twice the per cent by volume at 60 °F, 200 p rho(p, T) / rho(1, T) with
 * T = 15.5555… °C. Domain 0 to 1; there and back within 1e-10 proof.
 *
 * Accuracy: that of `density`. Source: 27 CFR 30.11 for proof (from memory), OIML R 22 for the densities. Cost: 0.05 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * proof60FFromMassFraction(massFraction(0.425)); // 100.03…
 */
export function proof60FFromMassFraction(p: MassFraction): Proof60F {
  within("mass fraction", "", p, 0, 1);
  return Math.min(200, 200 * volumeShare(p, T60F)) as Proof60F;
}

/**
 * Mass fraction of ethanol from US proof at 60 °F. Domain 0 to 200 proof.
 *
 * Accuracy: there and back within 1e-10 proof. Source: as `proof60FFromMassFraction`. Cost: 0.15 µs.
 *
 * @throws RangeError outside the domain.
 * @example
 * massFractionFromProof60F(proof60F(100)); // 0.4248…
 */
export function massFractionFromProof60F(proof: Proof60F): MassFraction {
  within("strength", "proof", proof, 0, 200);
  return massFractionOfShare(proof / 200, T60F) as MassFraction;
}

/**
 * US proof (60 °F) to % vol (20 °C). Not a division by two: 80 proof is a little over 40 % vol.
 *
 * Domain: 0 to 200 proof. Accuracy: there and back within 1e-10. Source: as `proof60FFromMassFraction`. Cost: 0.2 µs.
 *
 * @throws RangeError outside 0 to 200 proof.
 * @example
 * abv20FromProof60F(proof60F(80)); // 40.06…
 */
export function abv20FromProof60F(proof: Proof60F): Abv20 {
  return abv20FromMassFraction(massFractionFromProof60F(proof));
}

/**
 * % vol (20 °C) to US proof (60 °F). Not a doubling: 40 % vol is 79.86 proof.
 *
 * Domain: 0 to 100 % vol. Accuracy: there and back within 1e-10. Source: as `proof60FFromMassFraction`. Cost: 0.2 µs.
 *
 * @throws RangeError outside 0 to 100 % vol.
 * @example
 * proof60FFromAbv20(abv20(40)); // 79.86…
 */
export function proof60FFromAbv20(abv: Abv20): Proof60F {
  return proof60FFromMassFraction(massFractionFromAbv20(abv));
}
