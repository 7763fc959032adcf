import type { Branded } from "./brand.ts";
import { within } from "./within.ts";

/** US proof: twice the per cent alcohol by volume at 60 °F (27 CFR 30.11). */
export type Proof60F = Branded<"proof60F">;

/**
 * US proof: twice the per cent alcohol by volume at 60 °F (27 CFR 30.11). Domain 0 to 200.
 *
 * @throws RangeError when `x` is not a number in the domain.
 * @example
 * proof60F(124.8); // 124.8
 */
export function proof60F(x: number): Proof60F {
  return within("proof60F", "proof", x, 0, 200) as Proof60F;
}
