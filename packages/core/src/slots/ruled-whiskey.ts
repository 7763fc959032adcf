import type { Intensity, ShelfWhiskey } from "../blending/index.ts";

/**
 * A whiskey that may stand in a slot. What is null or left out is not known, an attribute too: unlike in a search's file, nothing
 * left out of `profile` is 0.
 */
export type RuledWhiskey = Omit<ShelfWhiskey, "profile"> & {
  readonly profile: Readonly<Record<string, Intensity>>;
  /** Malt, pot still, rye, …: the class of whiskey that its grains and law make it. */
  readonly kind?: string | null;
  /** The narrower first, with commas: "Saltreach Island, the north". */
  readonly place?: string | null;
  /** Calendar year of the release. */
  readonly released?: number | null;
};
