import { normalCumulative } from "../statistics/index.ts";
import { type Curves, levelOn } from "./curves.ts";
import { HALF_STEP } from "./priors.data.ts";
import type { CheckTasting } from "./question.ts";

/** How much each course is believed after the tastings, adding up to 1, and how many equal courses that is worth. */
export interface Weighed {
  readonly weight: Float64Array;
  readonly effective: number;
}

/**
 * Bayes' rule: each course is believed by how likely it makes what was tasted. A score is the level and normal noise; 0 and 10 are
 * the ends of the sheet and mean that or beyond.
 */
export function weighCurves(curves: Curves, tastings: readonly CheckTasting[]): Weighed {
  const logs = new Float64Array(curves.count);
  let most = -Infinity;
  for (let i = 0; i < curves.count; i += 1) {
    const noise = curves.noise[i] as number;
    let log = 0;
    for (const { day, level } of tastings) log += logChance(levelOn(curves, i, day), noise, level);
    logs[i] = log;
    if (log > most) most = log;
  }
  const weight = logs.map((log) => Math.exp(log - most));
  const total = weight.reduce((sum, w) => sum + w, 0);
  const squares = weight.reduce((sum, w) => sum + w * w, 0);
  return { weight: weight.map((w) => w / total), effective: (total * total) / squares };
}

function logChance(level: number, noise: number, score: number): number {
  if (score <= 0) return Math.log(normalCumulative((HALF_STEP - level) / noise) + 1e-300);
  if (score >= 10) return Math.log(normalCumulative((level - 10 + HALF_STEP) / noise) + 1e-300);
  return -(((score - level) / noise) ** 2) / 2 - Math.log(noise);
}
