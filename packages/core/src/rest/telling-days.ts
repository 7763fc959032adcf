import { type Curves, levelOn } from "./curves.ts";

/** A day to taste on, and the share of what is not known that it is expected to take away. */
export interface TellingDay {
  readonly day: number;
  readonly tells: number;
}

const CANDIDATES = 16;
/** "Never" counts as this day where days are weighed against each other on a log scale. */
const FAR_DAY = 365;

/**
 * The days after `today` on which tasting tells most of when the level is reached: one by one, the day whose score is expected to
 * leave least of the variance of the log day, those chosen before counted. Linear in the scores, so it is a guide, not a bound.
 *
 * @param until the latest day for the first, the second and so on
 */
export function tellingDays(
  curves: Curves,
  weight: Float64Array,
  days: Float64Array,
  today: number,
  until: readonly number[],
): TellingDay[] {
  const noise = mean(
    weight,
    curves.noise.map((sd) => sd * sd),
  );
  const target = centred(
    weight,
    days.map((day) => Math.log(Math.min(Math.max(day, 0.5), FAR_DAY))),
  );
  const candidates = between(today + 1, Math.max(today + 1, ...until)).map((day) => {
    const score = centred(
      weight,
      days.map((_, i) => levelOn(curves, i, day)),
    );
    return {
      day,
      score,
      withTarget: cross(weight, score, target),
      variance: cross(weight, score, score) + noise,
    };
  });
  const all = cross(weight, target, target);
  const told: TellingDay[] = [];
  const chosen: { readonly withEach: readonly number[]; readonly variance: number }[] = [];
  for (const limit of until) {
    const last = told.at(-1)?.day ?? today;
    const gain = (k: number): number => {
      const { day, withTarget, variance } = candidates[k] as (typeof candidates)[number];
      return day > last && day <= Math.max(limit, last + 1) ? withTarget ** 2 / variance : -1;
    };
    const best = candidates.reduce((so, _, k) => (gain(k) > gain(so) ? k : so), 0);
    const taken = candidates[best];
    if (taken === undefined || gain(best) < 0 || all <= 0) break;
    told.push({ day: taken.day, tells: gain(best) / all });
    if (told.length === until.length) break;
    // What this score says already is taken out of what the others would say.
    const withEach = candidates.map(
      ({ score }, k) =>
        cross(weight, score, taken.score) -
        chosen.reduce((sum, { withEach: w, variance }) => sum + ((w[k] ?? 0) * (w[best] ?? 0)) / variance, 0),
    );
    const { variance, withTarget } = taken;
    for (const [k, one] of candidates.entries()) {
      one.variance -= (withEach[k] ?? 0) ** 2 / variance;
      one.withTarget -= ((withEach[k] ?? 0) * withTarget) / variance;
    }
    chosen.push({ withEach, variance });
  }
  return told;
}

function cross(weight: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weight.length; i += 1)
    sum += (weight[i] as number) * (a[i] as number) * (b[i] as number);
  return sum;
}

/** Whole days, closer together early on. */
function between(first: number, last: number): number[] {
  const from = Math.ceil(first);
  const grid = Array.from({ length: CANDIDATES }, (_, i) =>
    Math.round(from * (Math.max(last, from) / from) ** (i / (CANDIDATES - 1))),
  );
  return [...new Set(grid)];
}

const mean = (weight: Float64Array, values: Float64Array): number =>
  values.reduce((sum, value, i) => sum + (weight[i] as number) * value, 0);

function centred(weight: Float64Array, values: Float64Array): Float64Array {
  const middle = mean(weight, values);
  return values.map((value) => value - middle);
}
