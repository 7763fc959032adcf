import type { LiquidId } from "./liquid.ts";

/** What is known of one whiskey, as far as a mixture of it can be described. */
export type LiquidFacts = {
  /** Stated age; null when the label states none. */
  readonly ageYears: number | null;
  /** Share of each grain in the mash, 0 to 1, together at most 1; null when the grain bill is not known. */
  readonly grains: readonly { readonly grain: string; readonly share: number }[] | null;
  /** Every kind of cask the whiskey has lain in; empty when not known. */
  readonly casks: readonly { readonly species: string; readonly held: string }[];
};

/** Facts by liquid; a whiskey that is missing here is one of which nothing is known. */
export type Facts = ReadonlyMap<LiquidId, LiquidFacts>;
