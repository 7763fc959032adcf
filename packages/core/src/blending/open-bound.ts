import type { Frame } from "./frame.ts";
import type { Level } from "./level.ts";
import type { PairsFound } from "./pairs-found.ts";
import type { Space } from "./space.ts";

/** The pairs of the outermost level that are still to be dealt with: those from `next` on. */
export type Open = {
  readonly frame: Frame;
  readonly level: Level;
  readonly found: PairsFound;
  readonly order: Int32Array;
  readonly most: number;
  next: number;
};

/**
 * The highest threshold, up to `high`, at which none of the open pairs would be needed: every recipe not yet dealt with scores at
 * least that. Bisection, as lower thresholds only turn pairs together; `low` must be known to be a bound.
 */
export function openBound(
  { objective, gram, n }: Space,
  tilt: Float64Array,
  open: Open,
  low: number,
  high: number,
): number {
  const { level, found, order, most } = open;
  const { each, goal } = objective;
  const needed = (t: number): boolean => {
    for (let turn = open.next; turn < order.length; turn += 1) {
      const i = level.place[found.x[order[turn]!]!]!;
      const j = level.place[found.y[order[turn]!]!]!;
      const bi = each[i]! * (t - goal[i]!);
      const bj = each[j]! * (t - goal[j]!);
      const ii = gram[i * n + i]! - bi * bi - tilt[i]!;
      const jj = gram[j * n + j]! - bj * bj - tilt[j]!;
      if (
        !(ii > 0 && jj > 0) ||
        gram[i * n + j]! - bi * bj - (tilt[i]! + tilt[j]!) / 2 <= most * Math.sqrt(ii * jj) + 1e-9
      )
        return true;
    }
    return false;
  };
  let from = low;
  let to = high;
  if (!needed(to)) return to;
  for (let step = 0; step < 24; step += 1) {
    const middle = (from + to) / 2;
    if (needed(middle)) to = middle;
    else from = middle;
  }
  return from;
}
