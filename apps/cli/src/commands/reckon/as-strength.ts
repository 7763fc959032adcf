import { abv20, proof60F, type Strength } from "@partsproof/core/quantity";
import type { StatedStrength } from "@partsproof/house/protocol";

/** A strength as it was typed, as core takes it. */
export const asStrength = ({ basis, value }: StatedStrength): Strength =>
  basis === "abv20" ? { basis, value: abv20(value) } : { basis, value: proof60F(value) };
