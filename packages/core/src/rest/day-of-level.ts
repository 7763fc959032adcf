import { type Curves, levelOn } from "./curves.ts";
import { HORIZON_DAYS } from "./priors.data.ts";
import { timeOfShare } from "./time-of-share.ts";

const FIRST_DAY = 0.05;
const STEPS = 48;
const STEP = (HORIZON_DAYS / FIRST_DAY) ** (1 / STEPS);

/**
 * The first day on which each course reaches a level; 0 where it stands there before, `Infinity` where it does not within
 * `HORIZON_DAYS`. Accuracy: 1 in 10 000 of the day; of a course that
 * falls again, a peak that is above the level for less than a fifth of its day may be missed.
 */
export function dayOfLevel(curves: Curves, level: number): Float64Array {
  const days = new Float64Array(curves.count);
  for (let i = 0; i < curves.count; i += 1) days[i] = dayOf(curves, i, level);
  return days;
}

function dayOf(curves: Curves, i: number, level: number): number {
  const before = curves.before[i] as number;
  if (before >= level) return 0;
  const rise = curves.rise[i] as number;
  if (before + rise <= level) return Infinity;
  if (curves.fall[i] === 0) {
    const slow = curves.slow[i] as number;
    const faster = (curves.fast[i] as number) / slow;
    const day = timeOfShare(curves.form, curves.quick[i] as number, faster, (level - before) / rise) / slow;
    return day <= HORIZON_DAYS ? day : Infinity;
  }
  let low = 0;
  let high = FIRST_DAY;
  while (levelOn(curves, i, high) < level) {
    if (high >= HORIZON_DAYS * (1 - 1e-9)) return Infinity;
    low = high;
    high *= STEP;
  }
  while (high - low > 1e-4 * high) {
    const middle = (low + high) / 2;
    if (levelOn(curves, i, middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
