import type { Abv20, MassFraction, Strength } from "../quantity/index.ts";
import { abv20FromProof60F, massFractionFromProof60F } from "./proof.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/**
 * A stated strength as % vol at 20 °C, whatever its basis.
 *
 * Domain: that of its basis. Accuracy: there and back within 1e-10. Source: as `abv20FromProof60F`. Cost: 0.2 µs for
 * proof.
 *
 * @example
 * abv20OfStrength({ basis: "proof60F", value: proof60F(80) }); // 40.06…
 */
export function abv20OfStrength(strength: Strength): Abv20 {
  return strength.basis === "abv20" ? strength.value : abv20FromProof60F(strength.value);
}

/**
 * A stated strength as mass fraction, whatever its basis.
 *
 * Domain: that of its basis. Accuracy: there and back within 1e-10. Source: OIML R 22. Cost: 0.15 µs.
 *
 * @example
 * massFractionOfStrength({ basis: "abv20", value: abv20(40) }); // 0.33299…
 */
export function massFractionOfStrength(strength: Strength): MassFraction {
  return strength.basis === "abv20"
    ? massFractionFromAbv20(strength.value)
    : massFractionFromProof60F(strength.value);
}
