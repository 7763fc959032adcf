import { normalCumulative, normalDensity, normalQuantile } from "../statistics/index.ts";
import { SCALE } from "./prior.data.ts";
import type { SaidLevel } from "./told.ts";

export interface HeldLevel extends SaidLevel {
  readonly low: number;
  readonly high: number;
}

/**
 * A level that may reach past 0 and 10 as one held within the scale: whatever is below 0 is 0, above 10 is 10. Mean and standard deviation
 * of that, and the interval that holds `share` of it. Exact for the normal law held so (Johnson, Kotz and Balakrishnan, Continuous
 * Univariate Distributions 1, 10.1, from memory; integrated numerically in the test).
 *
 * @example heldLevel({ mean: -1, sd: 1 }, 0.95) // mean 0.08, sd 0.26, from 0 to 0.96
 */
export function heldLevel({ mean, sd }: SaidLevel, share: number): HeldLevel {
  const { low, high } = SCALE;
  const [a, b] = [(low - mean) / sd, (high - mean) / sd];
  const [under, over] = [normalCumulative(a), normalCumulative(-b)];
  const inside = Math.max(0, 1 - under - over);
  const [da, db] = [normalDensity(a), normalDensity(b)];
  const first = under * low + over * high + inside * mean + sd * (da - db);
  const second =
    under * low ** 2 +
    over * high ** 2 +
    inside * (mean * mean + sd * sd) +
    sd * ((mean + low) * da - (mean + high) * db);
  const reach = normalQuantile((1 + share) / 2) * sd;
  const held = (x: number): number => Math.min(high, Math.max(low, x));
  return {
    mean: held(first),
    sd: Math.sqrt(Math.max(0, second - first * first)),
    low: held(mean - reach),
    high: held(mean + reach),
  };
}
