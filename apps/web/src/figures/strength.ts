import type { StatedStrength } from "@partsproof/house/protocol";

/** Strength with one decimal: labels are good to 0.3 % vol, so more digits would be made up. */
export function abvDigits(abv20: number): string {
  return abv20.toFixed(1);
}

export function printAbv(abv20: number): string {
  return `${abvDigits(abv20)}\u00a0%\u00a0vol`;
}

/** Whole proof is what labels carry; one decimal is kept for cask strengths such as 124.8. */
export function proofDigits(proof60F: number): string {
  return proof60F.toFixed(1);
}

/** As the label states it. */
export function printStated(strength: StatedStrength): string {
  return strength.basis === "abv20" ? `${strength.value}\u00a0%\u00a0vol` : `${strength.value}\u00a0proof`;
}

/** As it would be typed into a box, for `parseStrength` to read back. */
export function statedAsTyped(strength: StatedStrength): string {
  return strength.basis === "abv20" ? `${strength.value}%` : `${strength.value} proof`;
}
