import type { StatedStrength } from "@partsproof/house/protocol";
import { one, onlyOne, readStrengthOn } from "../../flags/index.ts";

/** A strength by either of its two names. */
export const strengthFlags = {
  abv: one(readStrengthOn("abv20"), "<% vol>", "per cent by volume at 20 °C"),
  proof: one(readStrengthOn("proof60F"), "<proof>", "instead: US proof at 60 °F"),
} as const;

export function typedStrength({
  abv,
  proof,
}: {
  readonly abv: number | undefined;
  readonly proof: number | undefined;
}): StatedStrength {
  return onlyOne({ abv, proof }) === "abv"
    ? { basis: "abv20", value: abv ?? 0 }
    : { basis: "proof60F", value: proof ?? 0 };
}
