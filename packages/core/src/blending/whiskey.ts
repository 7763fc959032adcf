import type { Abv20 } from "../quantity/index.ts";

/** How strong an attribute is, 0 to 10: a number, a number that is off by about `sd`, or null when nobody has said. */
export type Intensity = number | null | { readonly value: number; readonly sd: number };

/** One whiskey a recipe may use. What is null or left out is not known, and cannot keep a rule that asks for it. */
export type ShelfWhiskey = {
  readonly id: string;
  readonly abv20: Abv20;
  /** By attribute. One that is left out counts as 0, exactly; null is unknown. */
  readonly profile: Readonly<Record<string, Intensity>>;
  readonly pricePerLitre?: number | null;
  readonly availableMl?: number | null;
  readonly ageYears?: number | null;
  /** Share of each grain in the mash, 0 to 1, together at most 1. */
  readonly grains?: Readonly<Record<string, number>> | null;
  /** Every kind of cask it has lain in: the wood's species, and what the cask held before. */
  readonly casks?: readonly { readonly species: string; readonly held: string }[] | null;
  readonly tags?: readonly string[];
  readonly maker?: string | null;
  /** The group of distilleries it belongs to, for `oneGroup`. */
  readonly group?: string | null;
  readonly gone?: boolean;
};
