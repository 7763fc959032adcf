import { aboveLow, simplexLattice } from "./lattice.ts";
import { type Bound, corners, keeps } from "./region.ts";

/** Steps of the lattice that fills the region, by number of parts: some hundreds of points. */
const STEPS: Readonly<Record<number, number>> = { 2: 20, 3: 20, 4: 10, 5: 6, 6: 5, 7: 4, 8: 4 };
/** So many corners are joined in pairs at most. */
const MOST_JOINED = 40;

/**
 * Mixtures a plan may choose from: the corners of the region, what lies between every two of them (half, and a third), its middle, and a
 * lattice over the simplex above the lower bounds (L-pseudo-components), as far as it keeps the upper ones.
 */
export function candidates(bounds: readonly Bound[]): number[][] {
  const ends = corners(bounds);
  const joined = ends.slice(0, MOST_JOINED);
  const between = joined.flatMap((a, i) =>
    joined
      .slice(i + 1)
      .flatMap((b) =>
        [1 / 2, 1 / 3, 2 / 3].map((part) => a.map((share, k) => share + part * ((b[k] as number) - share))),
      ),
  );
  const middle = bounds.map((_, k) => ends.reduce((sum, end) => sum + (end[k] as number), 0) / ends.length);
  const lows = bounds.map(({ low }) => low);
  const inside = simplexLattice(bounds.length, STEPS[bounds.length] ?? 4)
    .map((shares) => aboveLow(lows, shares))
    .filter((shares) => keeps(bounds, shares));
  const seen = new Set<string>();
  return [...ends, ...between, middle, ...inside].filter((shares) => {
    const key = shares.map((share) => share.toFixed(9)).join();
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
