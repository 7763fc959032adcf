import type { Bound } from "./region.ts";

const SIZES = [0.08, 0.04, 0.02, 0.01, 0.005, 0.0025];
const PASSES = 4;

/**
 * Moves runs a little, one share up and another down, as long as it helps: candidates are a lattice, and the best mixtures may lie
 * between. Bounds are kept.
 *
 * @param worth what a set of runs is worth; the larger the better
 */
export function polish(
  runs: readonly (readonly number[])[],
  bounds: readonly Bound[],
  worth: (runs: readonly (readonly number[])[]) => number,
): number[][] {
  const best = runs.map((shares) => [...shares]);
  let most = worth(best);
  for (const size of SIZES) {
    for (let pass = 0; pass < PASSES; pass += 1) {
      let moved = false;
      for (const shares of best) {
        for (const up of bounds.keys()) {
          for (const down of bounds.keys()) {
            if (up === down) continue;
            const [was, had] = [shares[up] as number, shares[down] as number];
            const room = Math.min(size, (bounds[up]?.high ?? 1) - was, had - (bounds[down]?.low ?? 0));
            if (room < 1e-6) continue;
            shares[up] = was + room;
            shares[down] = had - room;
            const now = worth(best);
            if (now > most + 1e-9) {
              most = now;
              moved = true;
            } else {
              shares[up] = was;
              shares[down] = had;
            }
          }
        }
      }
      if (!moved) break;
    }
  }
  return best;
}
