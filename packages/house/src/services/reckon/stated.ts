import { abv20OfStrength } from "@partsproof/core/alcoholometry";
import { abv20, type Abv20, proof60F } from "@partsproof/core/quantity";
import type { StatedStrength } from "../../protocol/index.ts";

/** A strength as a label states it, as % vol at 20 °C. */
export const abvOf = ({ basis, value }: StatedStrength): Abv20 =>
  abv20OfStrength(basis === "abv20" ? { basis, value: abv20(value) } : { basis, value: proof60F(value) });
