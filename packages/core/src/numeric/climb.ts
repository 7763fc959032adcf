import type { Square } from "./cholesky.ts";

export interface Slope {
  readonly value: number;
  readonly gradient: Float64Array;
}

export interface Climbed<T extends Slope> {
  readonly at: Float64Array;
  readonly found: T;
  readonly steps: number;
  /** The inverse of the curvature as believed at the end, row after row: to go on from. */
  readonly inverse: Square;
}

export interface ClimbOptions {
  readonly gain?: number;
  readonly mostSteps?: number;
  /** `inverse` of a climb before, of much the same function; left as it was. */
  readonly from?: Square;
}

/** Armijo's share of the promised gain that a step must keep. */
const KEPT = 1e-4;
/** No number moves further in one step than so many of its own widths. */
const LONGEST = 2;

/**
 * A place where the function no longer rises, by BFGS with steps halved until the value rises: a local maximum of a smooth function.
 *
 * Source: Nocedal and Wright, Numerical Optimization, 2nd ed., algorithm 6.1 and eq. 6.17 (from memory).
 *
 * @param widths about how far each number may be off the maximum, above 0; the better they fit, the fewer steps
 * @param gain stops once a step promises less than this
 * @returns the highest place seen, with what the function said there; after `mostSteps` it may not be the maximum
 * @example climb((x) => ({ value: -(x[0] ** 2), gradient: Float64Array.of(-2 * x[0]) }), Float64Array.of(3), Float64Array.of(1)).at // 0
 */
export function climb<T extends Slope>(
  f: (x: Float64Array) => T,
  start: Float64Array,
  widths: Float64Array,
  { gain = 1e-6, mostSteps = 100, from }: ClimbOptions = {},
): Climbed<T> {
  const n = start.length;
  let x = start;
  let here = f(x);
  // The inverse curvature as believed, row after row.
  const h = from?.slice() ?? new Float64Array(n * n);
  if (from === undefined) for (let i = 0; i < n; i += 1) h[i * n + i] = (widths[i] as number) ** 2;
  for (let steps = 0; steps < mostSteps; steps += 1) {
    const way = times(h, here.gradient);
    const promised = dot(way, here.gradient);
    if (!(promised > 2 * gain)) return { at: x, found: here, steps, inverse: h };
    let length = 1;
    for (let i = 0; i < n; i += 1)
      length = Math.min(length, (LONGEST * (widths[i] as number)) / Math.abs(way[i] as number));
    let next = x;
    let there = here;
    for (;;) {
      next = x.map((value, i) => value + length * (way[i] as number));
      there = f(next);
      if (there.value >= here.value + KEPT * length * promised) break;
      length /= 2;
      if (length * promised < gain / 1e3) return { at: x, found: here, steps, inverse: h };
    }
    learnCurve(
      h,
      way.map((part) => length * part),
      here.gradient.map((slope, i) => slope - (there.gradient[i] as number)),
    );
    x = next;
    here = there;
  }
  return { at: x, found: here, steps: mostSteps, inverse: h };
}

/** The BFGS update from a step and by how much the gradient fell along it; left as it is where the function bends the wrong way. */
function learnCurve(h: Float64Array, step: Float64Array, fell: Float64Array): void {
  const n = step.length;
  const curve = dot(step, fell);
  if (!(curve > 1e-12)) return;
  const hf = times(h, fell);
  const scale = (1 + dot(fell, hf) / curve) / curve;
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1)
      h[i * n + j] =
        (h[i * n + j] as number) +
        scale * (step[i] as number) * (step[j] as number) -
        ((step[i] as number) * (hf[j] as number) + (hf[i] as number) * (step[j] as number)) / curve;
}

function times(h: Float64Array, v: Float64Array): Float64Array {
  const n = v.length;
  return v.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += (h[i * n + j] as number) * (v[j] as number);
    return sum;
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
