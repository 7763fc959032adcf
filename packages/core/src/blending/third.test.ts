import { expect, test } from "vitest";
import { canVanish, shareOfOthers } from "./third.ts";

/** The least of y'Ty over weights with sum 1 on a fine grid, and with others at cosine `floor` to all, one of them or more. */
function leastOnGrid(cosines: readonly [number, number, number], floor: number, m: number): number {
  const [ab, ac, bc] = cosines;
  let least = Infinity;
  const steps = 40;
  for (let i = 0; i <= steps; i += 1)
    for (let j = 0; i + j <= steps; j += 1) {
      const [x, y, z] = [i / steps, j / steps, (steps - i - j) / steps];
      const own = x * x + y * y + z * z + 2 * (ab * x * y + ac * x * z + bc * y * z);
      for (let t = 0; t <= (m === 0 ? 0 : 3); t += 0.05) {
        // m others of equal weight t / m, all cosines `floor`.
        const others = m === 0 ? 0 : (t * t) / m + (floor * t * t * (m - 1)) / m + 2 * floor * t;
        least = Math.min(least, own + others);
      }
    }
  return least;
}

test("S1: three whiskeys are ruled out only if no weights of them and of the others come to nothing", () => {
  let ruledOut = 0;
  let kept = 0;
  for (const m of [0, 1, 2])
    for (const floor of [-0.45, -0.4, -0.34])
      for (let ab = floor; ab < 0.6; ab += 0.15)
        for (let ac = floor; ac < 0.9; ac += 0.15)
          for (let bc = floor; bc < 0.9; bc += 0.15) {
            const least = leastOnGrid([ab, ac, bc], floor, m);
            const can = canVanish(ab, ac, bc, shareOfOthers(floor, m));
            if (can) kept += 1;
            else ruledOut += 1;
            // What the grid shows to be possible must be kept; what is kept must come close to nothing on it.
            expect(can || least > 0).toBe(true);
            expect(!can || least < 0.02).toBe(true);
          }
  expect(ruledOut).toBeGreaterThan(100);
  expect(kept).toBeGreaterThan(20);
});
