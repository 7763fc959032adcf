import type { Abv20 } from "./abv20.ts";
import type { Proof60F } from "./proof-60f.ts";

/** A strength as a label gives it, with the basis it was stated on. Nothing is converted here. */
export type Strength =
  | { readonly basis: "abv20"; readonly value: Abv20 }
  | { readonly basis: "proof60F"; readonly value: Proof60F };
