import { mixParts } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import type { MixRow } from "./reckon-mix.ts";

/** What one part more or less of a liquid does to the mixture's strength, % vol. */
export interface Nudge {
  /** null where there is none to take away, or nothing would be left. */
  readonly less: number | null;
  readonly more: number;
}

/** For every liquid: the strength with a part of it fewer and a part of it more. At least one part above 0. */
export function reckonNudges(rows: readonly MixRow[]): readonly Nudge[] {
  const strength = (parts: readonly number[]): number | null => {
    if (parts.every((part) => part === 0)) return null;
    const mixed = rows.map((row, i) => ({ parts: parts[i] ?? 0, abv20: abv20(row.abv20) }));
    return mixParts(mixed, millilitres20(100)).abv20;
  };
  const now = rows.map((row) => row.parts);
  const nudged = (at: number, by: number): number | null =>
    strength(now.map((part, i) => (i === at ? part + by : part)));
  return rows.map((row, i) => ({ less: row.parts === 0 ? null : nudged(i, -1), more: nudged(i, 1) ?? 0 }));
}
