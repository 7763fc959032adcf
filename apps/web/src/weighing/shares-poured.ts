import type { Pouring } from "./pouring.ts";

/** A part of what is in the vessel, water left out. */
export interface SharePoured {
  readonly label: string;
  readonly ml: number;
  /** Of the parts' volume, 0 to 1. */
  readonly share: number;
  readonly plannedShare: number;
}

/** What share of the parts' volume each part has, beside what the recipe says. */
export function sharesPoured(pouring: Pouring, amounts: readonly number[]): readonly SharePoured[] {
  const all = amounts.reduce((sum, ml) => sum + ml, 0);
  const planned = pouring.parts.reduce((sum, { plannedMl }) => sum + plannedMl, 0);
  return pouring.parts.map(({ label, plannedMl }, i) => ({
    label,
    ml: amounts[i] ?? 0,
    share: all === 0 ? 0 : (amounts[i] ?? 0) / all,
    plannedShare: plannedMl / planned,
  }));
}

/** The part whose share is furthest from the recipe's, and how far, in points of 100. */
export function sharesOff(
  pouring: Pouring,
  amounts: readonly number[],
): { readonly by: number; readonly part: string } {
  const [worst] = sharesPoured(pouring, amounts)
    .map(({ label, share, plannedShare }) => ({ part: label, by: 100 * (share - plannedShare) }))
    .toSorted((a, b) => Math.abs(b.by) - Math.abs(a.by));
  return worst === undefined || Math.abs(worst.by) < 0.05 ? { by: 0, part: "" } : worst;
}
