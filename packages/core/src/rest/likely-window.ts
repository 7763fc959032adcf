/** Days with how much each is believed, in order; what never comes is `Infinity`. */
export interface OrderedDays {
  readonly days: Float64Array;
  /** Belief up to and with this day. */
  readonly upTo: Float64Array;
}

/** The places of days, earliest first. */
export function orderOf(days: Float64Array): Uint32Array {
  return Uint32Array.from(days, (_, i) => i).toSorted((a, b) => {
    const [x, y] = [days[a] as number, days[b] as number];
    return x < y ? -1 : x > y ? 1 : 0;
  });
}

export function orderDays(days: Float64Array, weight: Float64Array, order = orderOf(days)): OrderedDays {
  const [sorted, upTo] = [new Float64Array(days.length), new Float64Array(days.length)];
  let sum = 0;
  for (const [n, i] of order.entries()) {
    sorted[n] = days[i] as number;
    sum += weight[i] as number;
    upTo[n] = sum;
  }
  return { days: sorted, upTo };
}

/** The day by which the level is there with this chance; `Infinity` where the chance is never so large. */
export function dayBy({ days, upTo }: OrderedDays, chance: number): number {
  let [low, high] = [0, upTo.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((upTo[middle] as number) < chance) low = middle + 1;
    else high = middle;
  }
  return days[low] ?? Infinity;
}

/** The chance that the level is there by a day. */
export function chanceBy({ days, upTo }: OrderedDays, day: number): number {
  let [low, high] = [0, days.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((days[middle] as number) <= day) low = middle + 1;
    else high = middle;
  }
  return low === 0 ? 0 : (upTo[low - 1] as number);
}

/** When a level is reached. */
export interface Window {
  /** Days that hold `level` of the belief: as much left out before as after; where "never" is more than that, it is the end. */
  readonly low: number;
  /** Null where it may never come. */
  readonly high: number | null;
  readonly level: number;
  /** The middle, of those courses that get there; null where none does. */
  readonly middle: number | null;
  /** Days that hold `level` of those courses that get there; null where none does. */
  readonly ifEver: { readonly low: number; readonly high: number } | null;
  /** Chance that it is not reached within `HORIZON_DAYS`. */
  readonly never: number;
}

/**
 * The window in which a level is likely reached. Both tails are left out evenly; where "never" alone is more than the later tail, the
 * window runs from the earlier part to never, so that it still holds exactly `level` of the belief.
 */
export function likelyWindow(ordered: OrderedDays, level: number): Window {
  const tail = (1 - level) / 2;
  const reached = chanceBy(ordered, Number.MAX_VALUE);
  const never = Math.max(0, 1 - reached);
  const open = never > tail;
  const low = dayBy(ordered, open ? 1 - level : tail);
  const comes = reached > 1e-12;
  return {
    low,
    high: open ? null : dayBy(ordered, 1 - tail),
    level,
    middle: comes ? dayBy(ordered, reached / 2) : null,
    ifEver: comes
      ? { low: dayBy(ordered, reached * tail), high: dayBy(ordered, reached * (1 - tail)) }
      : null,
    never,
  };
}
