/** What each share may be. */
export interface Bound {
  readonly low: number;
  readonly high: number;
}

const SLIP = 1e-9;

/**
 * The corners of the region that bounds leave: all but one share at one of its ends, the last what is left (McLean and Anderson 1966).
 *
 * @throws RangeError where a bound is none, or no mixture keeps them all
 * @example corners([{ low: 0, high: 1 }, { low: 0, high: 1 }]) // [[1, 0], [0, 1]] in some order
 */
export function corners(bounds: readonly Bound[]): number[][] {
  checkBounds(bounds);
  const found: number[][] = [];
  for (const free of bounds.keys()) {
    for (let ends = 0; ends < 2 ** (bounds.length - 1); ends += 1) {
      let [bit, left] = [0, 1];
      const shares = bounds.map(({ low, high }, i) => {
        if (i === free) return 0;
        const share = (ends >> bit) % 2 === 0 ? low : high;
        bit += 1;
        left -= share;
        return share;
      });
      const { low, high } = bounds[free] as Bound;
      if (left < low - SLIP || left > high + SLIP) continue;
      shares[free] = Math.min(high, Math.max(low, left));
      if (!found.some((other) => other.every((share, i) => Math.abs(share - (shares[i] as number)) < SLIP)))
        found.push(shares);
    }
  }
  return found;
}

function checkBounds(bounds: readonly Bound[]): void {
  if (bounds.length < 2 || bounds.length > 8)
    throw new RangeError(`a mixture requires 2 to 8 parts, got ${bounds.length}`);
  for (const { low, high } of bounds)
    if (!(low >= 0 && low <= high && high <= 1))
      throw new RangeError(`a share requires bounds with 0 <= low <= high <= 1, got ${low} to ${high}`);
  const sum = (of: (bound: Bound) => number): number => bounds.reduce((total, bound) => total + of(bound), 0);
  const [least, most] = [sum(({ low }) => low), sum(({ high }) => high)];
  if (least > 1 + SLIP) throw new RangeError(`lower bounds require a sum of at most 1, got ${least}`);
  if (most < 1 - SLIP) throw new RangeError(`upper bounds require a sum of at least 1, got ${most}`);
}

/** Whether a mixture keeps its bounds. */
export const keeps = (bounds: readonly Bound[], shares: readonly number[]): boolean =>
  shares.every((share, i) => {
    const { low, high } = bounds[i] as Bound;
    return share >= low - SLIP && share <= high + SLIP;
  });
