import type { Component } from "./composition.ts";
import type { Facts } from "./facts.ts";
import type { LiquidId } from "./liquid.ts";

export type YoungestAge =
  | { readonly years: number; readonly why: "stated"; readonly liquidId: LiquidId }
  | { readonly years: null; readonly why: "some liquid states no age"; readonly liquidId: LiquidId }
  | { readonly years: null; readonly why: "empty" };

/** A whiskey that brought less than this share of the alcohol is a rinse of the vessel, not a part of it. */
const COUNTS_ABOVE = 1e-9;

/**
 * The age a mixture may state: that of its youngest whiskey, and none when any whiskey in it states none.
 * Water has no age and does not count. `liquidId` names the whiskey that decides. `empty` when there is no
 * whiskey in it.
 */
export function youngestAge(composition: readonly Component[], facts: Facts): YoungestAge {
  let youngest: { years: number; liquidId: LiquidId } | null = null;
  for (const { liquidId, shareOfAlcohol } of composition) {
    if (!(shareOfAlcohol > COUNTS_ABOVE)) continue;
    const years = facts.get(liquidId)?.ageYears ?? null;
    if (years === null) return { years: null, why: "some liquid states no age", liquidId };
    if (youngest === null || years < youngest.years) youngest = { years, liquidId };
  }
  return youngest === null ? { years: null, why: "empty" } : { ...youngest, why: "stated" };
}
