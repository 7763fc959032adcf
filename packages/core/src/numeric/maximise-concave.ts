import { cholesky, solveCholesky, type Square } from "./cholesky.ts";
import { dot } from "./product.ts";

/** A concave function: its value, and where asked its gradient and minus its second derivatives (n·n, row after row). */
export interface Concave {
  readonly size: number;
  value(x: Float64Array): number;
  curve(x: Float64Array): {
    readonly value: number;
    readonly gradient: Float64Array;
    readonly curvature: Square;
  };
  /** Value and gradient alone, where they cost much less: steps then go on by a curvature from before while that serves. */
  slope?(x: Float64Array): { readonly value: number; readonly gradient: Float64Array };
}

export interface Maximum {
  readonly at: Float64Array;
  readonly value: number;
  /** Cholesky factor of minus the second derivatives there. */
  readonly factor: Square;
  readonly steps: number;
  /** Largest part of the last step: near 0 at a true maximum; where the function only levels off far out it stays near 1. */
  readonly lastStep: number;
}

const largest = (step: Float64Array): number => step.reduce((most, s) => Math.max(most, Math.abs(s)), 0);

/**
 * The maximum of a strictly concave function by Newton's method, steps halved until the value rises.
 *
 * Ends with one more step once a step promises a gain below `enough` of the value, 1e-15 where left out: the gradient is then 0 to within
 * rounding. `factor` is that of the place before, within some 1e-8 of the top, √`enough` in general.
 *
 * @returns null when the curvature is not positive definite or the steps run away (no maximum exists, or none within 1e6)
 * @example maximiseConcave(f, new Float64Array(f.size))
 */
export function maximiseConcave(
  f: Concave,
  start: Float64Array,
  mostSteps = 100,
  enough = 1e-15,
): Maximum | null {
  const n = f.size;
  let x = start;
  let here = f.curve(x);
  for (let steps = 1; steps <= mostSteps; steps += 1) {
    const factor = cholesky(here.curvature, n);
    if (factor === null) return null;
    const step = solveCholesky(factor, here.gradient);
    const slope = dot(step, here.gradient);
    if (slope <= enough * (1 + Math.abs(here.value))) {
      // So near the top a step squares the error: the last one ends in rounding.
      const at = x.map((v, i) => v + (step[i] as number));
      return { at, value: f.value(at), factor, steps, lastStep: largest(step) };
    }
    let share = 1;
    let moved = x;
    // A rise of a thousandth of what the slope promises is enough; near the top rounding hides it, and the full step is right.
    for (; share > 1e-10; share /= 2) {
      moved = x.map((v, i) => v + share * (step[i] as number));
      const value = f.value(moved);
      if (value >= here.value + 1e-3 * share * slope || (share === 1 && slope < 1e-9 * (1 + Math.abs(value))))
        break;
    }
    if (share <= 1e-10) return { at: x, value: here.value, factor, steps, lastStep: largest(step) };
    x = goneOn(f, moved, factor, slope, enough);
    if (x.some((v) => !(Math.abs(v) < 1e6))) return null;
    here = f.curve(x);
  }
  return null;
}

/** So many steps at most by one curvature. */
const MOST_GONE_ON = 20;

/** On from x by a curvature from before, as long as each step promises less than half of what the last did. */
function goneOn(f: Concave, x: Float64Array, factor: Square, slope: number, enough: number): Float64Array {
  let at = x;
  let promised = slope;
  for (let steps = 0; steps < MOST_GONE_ON; steps += 1) {
    const here = f.slope?.(at);
    if (here === undefined) return at;
    const step = solveCholesky(factor, here.gradient);
    const next = dot(step, here.gradient);
    if (!(next < promised / 2) || next <= enough * (1 + Math.abs(here.value))) return at;
    const there = at.map((v, i) => v + (step[i] as number));
    if (!(f.value(there) >= here.value)) return at;
    at = there;
    promised = next;
  }
  return at;
}
