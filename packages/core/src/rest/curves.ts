import type { Form } from "./question.ts";

/** Many courses a rest may take, one a place: what is believed of one attribute. Rates are per day. */
export interface Curves {
  readonly form: Form;
  readonly count: number;
  readonly before: Float64Array;
  readonly rise: Float64Array;
  /** Share of the quick stage. */
  readonly quick: Float64Array;
  readonly fast: Float64Array;
  readonly slow: Float64Array;
  /** 0 where nothing falls again. */
  readonly fall: Float64Array;
  /** Standard deviation of a tasting. */
  readonly noise: Float64Array;
  /** Where pieces have days of their own: `rise` and the rates are then those of wood that changes nothing. */
  readonly pieces?: PieceCourses;
}

/** What each piece does by itself, course by course. */
interface PieceCourses {
  /** Taste goes by what is in the liquid to this power. */
  readonly dosePower: Float64Array;
  readonly each: readonly {
    readonly inDay: number;
    /** `Infinity` while it is in. */
    readonly outDay: number;
    /** How many times the rise, and how many times the speed. */
    readonly rise: Float64Array;
    readonly speed: Float64Array;
  }[];
}

/**
 * Share of the rise that is there after so much time, for rates of one a unit of time in the slow stage.
 *
 * Two stages: f(1 − e^(−r t)) + (1 − f)(1 − e^(−t)). Peleg: t / (1 + t), which is C = t / (K1 + K2 t) in units of K1 / K2 and 1 / K2
 * (Trillo 2024: the best of four for oak casks at 60 % vol).
 */
export function shareThere(form: Form, quick: number, faster: number, t: number): number {
  if (form === "peleg") return t / (1 + t);
  return -quick * Math.expm1(-faster * t) - (1 - quick) * Math.expm1(-t);
}

/** The level of one course on a day, 0 to 10 and beyond. */
export function levelOn(curves: Curves, i: number, day: number): number {
  const before = curves.before[i] as number;
  const rise = curves.rise[i] as number;
  if (curves.pieces !== undefined) return before + rise * givenBy(curves, curves.pieces, i, day);
  return before + rise * shareKept(curves, i, day, day, 1);
}

/** The share of its rise that wood has given after so many days in, softened since it went in. */
function shareKept(curves: Curves, i: number, daysIn: number, since: number, speed: number): number {
  const slow = curves.slow[i] as number;
  const faster = (curves.fast[i] as number) / slow;
  const there = shareThere(curves.form, curves.quick[i] as number, faster, slow * speed * daysIn);
  const fall = curves.fall[i] as number;
  return fall === 0 ? there : there * Math.exp(-fall * since);
}

/**
 * What pieces give together. Taste goes by the dose to a power, so that what each gives by itself adds up in the liquid as taste to
 * one over that power: equal pieces at the same time come to one of their summed area, and one that was never in adds nothing.
 */
function givenBy(curves: Curves, { dosePower, each }: PieceCourses, i: number, day: number): number {
  const power = dosePower[i] as number;
  let inLiquid = 0;
  for (const { inDay, outDay, rise, speed } of each) {
    if (day <= inDay) continue;
    const alone =
      (rise[i] as number) *
      shareKept(curves, i, Math.min(day, outDay) - inDay, day - inDay, speed[i] as number);
    inLiquid += alone ** (1 / power);
  }
  return inLiquid ** power;
}

/** The most that one course can come to, whatever the day. */
export function mostOf({ before, rise, pieces }: Curves, i: number): number {
  const plateau =
    pieces === undefined
      ? 1
      : pieces.each.reduce(
          (sum, one) => sum + (one.rise[i] as number) ** (1 / (pieces.dosePower[i] as number)),
          0,
        ) ** (pieces.dosePower[i] as number);
  return (before[i] as number) + (rise[i] as number) * plateau;
}
