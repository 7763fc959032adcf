import { type Curves, levelOn, mostOf } from "./curves.ts";
import { HORIZON_DAYS } from "./priors.data.ts";
import { timeOfShare } from "./time-of-share.ts";

const FIRST_DAY = 0.05;
const STEPS = 48;
const STEP = (HORIZON_DAYS / FIRST_DAY) ** (1 / STEPS);
/** Days after a piece went in on which a course that falls again is looked at besides. */
const AFTER_IN = [1, 3, 8, 20, 50];

/**
 * The first day on which each course reaches a level; 0 where it stands there before, `Infinity` where it does not within
 * `HORIZON_DAYS`. Accuracy: 1 in 10 000 of the day; of a course that
 * falls again, a peak that is above the level for less than a fifth of its day may be missed.
 */
export function dayOfLevel(curves: Curves, level: number): Float64Array {
  const days = new Float64Array(curves.count);
  const [rises, falls] = [risingDays(curves), fallingDays(curves)];
  for (let i = 0; i < curves.count; i += 1) {
    const looks = curves.fall[i] === 0 ? rises : falls;
    days[i] = dayOf(curves, i, level, looks);
  }
  return days;
}

function dayOf(curves: Curves, i: number, level: number, looks: readonly number[] | null): number {
  const before = curves.before[i] as number;
  if (before >= level) return 0;
  if (mostOf(curves, i) <= level) return Infinity;
  if (looks === null) {
    const slow = curves.slow[i] as number;
    const faster = (curves.fast[i] as number) / slow;
    const share = (level - before) / (curves.rise[i] as number);
    const day = timeOfShare(curves.form, curves.quick[i] as number, faster, share) / slow;
    return day <= HORIZON_DAYS ? day : Infinity;
  }
  let low = 0;
  for (const high of looks) {
    if (levelOn(curves, i, high) >= level) return between(curves, i, level, low, high);
    low = high;
  }
  return Infinity;
}

function between(curves: Curves, i: number, level: number, from: number, to: number): number {
  let [low, high] = [from, to];
  while (high - low > 1e-4 * high) {
    const middle = (low + high) / 2;
    if (levelOn(curves, i, middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What only rises is there on the last day or never; of one wood from day 0 the day is known exactly. */
const risingDays = ({ pieces }: Curves): readonly number[] | null =>
  pieces === undefined ? null : [HORIZON_DAYS];

/** Days on which to look for a course that falls again. */
function fallingDays({ pieces }: Curves): readonly number[] {
  const days = [FIRST_DAY];
  for (let day = FIRST_DAY; day < HORIZON_DAYS * (1 - 1e-9); days.push(day)) day *= STEP;
  if (pieces === undefined) return days;
  const own = pieces.each.flatMap(({ inDay, outDay }) => [
    inDay,
    outDay,
    ...AFTER_IN.map((after) => inDay + after),
  ]);
  return [...days, ...own.filter((day) => day > 0 && day < HORIZON_DAYS)].toSorted((a, b) => a - b);
}
