import { type Holding, QUANTITIES } from "./holding.ts";
import type { LiquidId } from "./liquid.ts";
import type { LedgerState } from "./state.ts";

export type BalanceLine = {
  readonly liquidId: LiquidId;
  readonly quantity: keyof Holding;
  /** Sum over all accounts, vessels and outside: zero but for rounding. */
  readonly total: number;
  /** What came in through the sources: the size that rounding is measured against. */
  readonly cameIn: number;
  /** |total| / cameIn; 0 when nothing came in and the total is 0. */
  readonly relative: number;
};

export type TrialBalance = { readonly lines: readonly BalanceLine[]; readonly largestRelative: number };

/**
 * Adds up every account, liquid by liquid and quantity by quantity. In a sound ledger each total is zero to
 * rounding (1e-9 relative, law L1). A total where nothing came in is reported as infinitely wrong.
 */
export function trialBalance(state: LedgerState): TrialBalance {
  const totals = new Map<LiquidId, Map<keyof Holding, { total: number; cameIn: number }>>();
  for (const contents of state.accounts.values()) {
    for (const [liquidId, holding] of contents) {
      const sums = totals.get(liquidId) ?? new Map<keyof Holding, { total: number; cameIn: number }>();
      totals.set(liquidId, sums);
      for (const quantity of QUANTITIES) {
        const { total, cameIn } = sums.get(quantity) ?? { total: 0, cameIn: 0 };
        const value = holding[quantity];
        // Only sources are ever below zero, and nothing flows back into them.
        sums.set(quantity, { total: total + value, cameIn: cameIn + Math.max(0, -value) });
      }
    }
  }
  const lines = [...totals].flatMap(([liquidId, sums]) =>
    [...sums].map(([quantity, { total, cameIn }]) => ({
      liquidId,
      quantity,
      total,
      cameIn,
      relative: total === 0 ? 0 : Math.abs(total) / cameIn,
    })),
  );
  return { lines, largestRelative: lines.reduce((most, { relative }) => Math.max(most, relative), 0) };
}
