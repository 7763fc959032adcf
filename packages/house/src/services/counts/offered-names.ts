import type { LabelCounts } from "@partsproof/core/statistics";

export interface OfferedNames {
  /** The names that stand in the glasses, and how often. */
  readonly rows: LabelCounts;
  /** The names on offer, and how often each may be used. */
  readonly columns: LabelCounts;
}

/** A sheet's glasses and the names on offer. */
export function offeredNames(
  glasses: number,
  pours: readonly number[] = Array.from({ length: glasses }, () => 1),
  distractors = 0,
): OfferedNames {
  const rows = Object.fromEntries(pours.map((times, n) => [`poured ${n}`, times]));
  const others = Object.fromEntries(Array.from({ length: distractors }, (_, n) => [`not poured ${n}`, 1]));
  return { rows, columns: { ...rows, ...others } };
}
