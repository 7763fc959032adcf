/** Names one liquid: a whiskey's id, or {@link WATER}. */
export type LiquidId = string;

/** The id of plain water, which has no alcohol, no age, no grain and no cask. */
export const WATER: LiquidId = "water";

/**
 * An amount of one liquid as it comes in: grams of ethanol, grams of water, and what it cost in minor units
 * of the household's currency. `cost: null` means that no price is known, which is not the same as free (0).
 */
export type Portion = {
  readonly ethanolG: number;
  readonly waterG: number;
  readonly cost: number | null;
};
