import { fillNormal, type Rng } from "../statistics/index.ts";
import type { NotedLevel } from "./noted-mix.ts";

/**
 * What each part may taste of, drawn about what was noted of it: below 0 nothing is tasted, above 10 no more. Draws come in pairs to both
 * sides of what was noted, so that a mean of parts has its mean exactly, up to the ends of the scale.
 *
 * @param draws even; of each part
 * @returns one array a level
 */
export function drawLevels(levels: readonly NotedLevel[], draws: number, rng: Rng): Float64Array[] {
  const half = new Float64Array(draws / 2);
  return levels.map(({ mean, sd }) => {
    fillNormal(half, rng);
    // Scaled to a spread of exactly 1: what is left to chance is how draws of different parts go together.
    const size = Math.sqrt(half.reduce((sum, z) => sum + z * z, 0) / half.length);
    const own = new Float64Array(draws);
    for (const [i, z] of half.entries()) {
      own[2 * i] = tasted(mean + (sd * z) / size);
      own[2 * i + 1] = tasted(mean - (sd * z) / size);
    }
    return own;
  });
}

const tasted = (level: number): number => Math.min(10, Math.max(0, level));
