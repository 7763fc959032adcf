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
  const slow = curves.slow[i] as number;
  const faster = (curves.fast[i] as number) / slow;
  const there = shareThere(curves.form, curves.quick[i] as number, faster, slow * day);
  const fall = curves.fall[i] as number;
  const kept = fall === 0 ? 1 : Math.exp(-fall * day);
  return (curves.before[i] as number) + (curves.rise[i] as number) * there * kept;
}
