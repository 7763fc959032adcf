import type { Account } from "./account.ts";
import type { LiquidId } from "./liquid.ts";

/**
 * How much a transfer moves.
 * - `liquid`: so many grams of ethanol and water of one named liquid; only out of a source (shop, tap).
 * - `volume`: millilitres at 20 °C, out of a vessel, in the proportions the vessel holds.
 * - `mass`: grams, out of a vessel, in the same way.
 * - `all`: everything in the vessel; leaves exactly nothing.
 */
export type Amount =
  | {
      readonly kind: "liquid";
      readonly liquidId: LiquidId;
      readonly ethanolG: number;
      readonly waterG: number;
      readonly cost: number | null;
    }
  | { readonly kind: "volume"; readonly ml: number }
  | { readonly kind: "mass"; readonly g: number }
  | { readonly kind: "all" };

/**
 * One movement of liquid. `seq` orders the ledger; `at` (ISO 8601, a date or a time with `Z` or an offset)
 * says when it happened. An undone transfer stays on the page and counts for nothing.
 */
export type Transfer = {
  readonly id: string;
  readonly seq: number;
  readonly at: string;
  readonly from: Account;
  readonly to: Account;
  readonly amount: Amount;
  readonly undone?: boolean;
};
