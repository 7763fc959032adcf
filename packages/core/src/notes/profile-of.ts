import type { Where } from "./language.ts";
import type { Observation } from "./read-note.ts";

export interface Intensity {
  /** 0 (not there) to 10. */
  readonly mean: number;
  /** Standard deviation of what is known of that mean, on the same scale. */
  readonly sd: number;
}

/** By attribute. One that is not there was not spoken of: unknown, never zero. */
export type Profile = Readonly<Record<string, Intensity>>;

/** How far off the words of one note may be, however often they were said. Common practice, no source. */
const LEAST_SD = 0.6;

/**
 * What one note says, as a profile: of all of it, or of one part of the tasting.
 *
 * Means are weighted by 1/spread^2 (the textbook's fixed-effect mean); the variance is 1/sum of weights, plus the variance of the
 * strengths about their mean over their number where the note disagrees with itself.
 *
 * @example profileOf(readNote("a hint of smoke", lexicon).observations)["smoke.smoke"] // { mean: 2.2, sd: 1.3 }
 */
export function profileOf(observations: readonly Observation[], where?: Where): Profile {
  const byAttribute = new Map<string, Observation[]>();
  for (const one of observations) {
    if (where !== undefined && one.where !== where) continue;
    const same = byAttribute.get(one.attribute);
    if (same === undefined) byAttribute.set(one.attribute, [one]);
    else same.push(one);
  }
  return Object.fromEntries([...byAttribute].map(([attribute, all]) => [attribute, pooled(all)]));
}

function pooled(all: readonly Observation[]): Intensity {
  let weights = 0;
  let sum = 0;
  for (const { strength, spread } of all) {
    const weight = 1 / (spread * spread);
    weights += weight;
    sum += weight * strength;
  }
  const mean = sum / weights;
  let apart = 0;
  for (const { strength, spread } of all) apart += (strength - mean) ** 2 / (spread * spread);
  const variance = 1 / weights + apart / weights / all.length;
  return { mean, sd: Math.max(LEAST_SD, Math.sqrt(variance)) };
}
