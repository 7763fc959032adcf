import type { Abv20, MassFraction, Strength } from "../quantity/index.ts";
import { abv20FromProof60F, massFractionFromProof60F } from "./proof.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/** A stated strength as % vol at 20 °C, whatever its basis. */
export function abv20OfStrength(strength: Strength): Abv20 {
  return strength.basis === "abv20" ? strength.value : abv20FromProof60F(strength.value);
}

/** A stated strength as mass fraction, whatever its basis. */
export function massFractionOfStrength(strength: Strength): MassFraction {
  return strength.basis === "abv20"
    ? massFractionFromAbv20(strength.value)
    : massFractionFromProof60F(strength.value);
}
