import type { Cask } from "../../protocol/index.ts";

/** Casks by wood and by what they held; liquids only, no maker and no place. */
export const exBourbon: Cask = { species: "American oak", held: "bourbon" };
export const virgin: Cask = { species: "American oak", held: "nothing" };
export const exRum: Cask = { species: "American oak", held: "rum" };
export const exBeer: Cask = { species: "American oak", held: "beer" };
export const refill: Cask = { species: "American oak", held: "whiskey" };
export const exOxidisedWine: Cask = { species: "European oak", held: "oxidised fortified wine" };
export const exRedFortified: Cask = { species: "European oak", held: "red fortified wine" };
export const exRedWine: Cask = { species: "European oak", held: "red wine" };
export const virginEuropean: Cask = { species: "European oak", held: "nothing" };
