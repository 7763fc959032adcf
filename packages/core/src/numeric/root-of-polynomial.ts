/** Beyond this many steps the bracket has shrunk to nothing. */
const MOST_STEPS = 100;

/** A third-order step this small leaves an error far below the rounding of the value. */
const LAST_STEP = 1e-6;

/**
 * Where a polynomial, strictly monotone on [low, high], takes the value `y` that lies between its values at the ends. Halley
 * steps from `start` (value, slope and bend by one pass of Horner's rule), kept inside a shrinking bracket: a step that leaves
 * it is replaced by a halving. The lowest power comes first.
 *
 * Accuracy: a few rounding errors of the value, divided by the slope. Cost: from a start within a hundredth, two passes. The
 * ends are trusted, not checked: with `y` outside their values the answer is an end.
 *
 * Source: E. Halley's method, third order, as in J. F. Traub, "Iterative Methods for the Solution of Equations" (1964), from
 * memory.
 *
 * @param rising whether the value rises from `low` to `high`
 * @example
 * rootOfPolynomial([0, 0, 1], 2, { low: 0, high: 2, start: 1, rising: true }); // 1.41421356237309…
 */
export function rootOfPolynomial(
  c: ArrayLike<number>,
  y: number,
  within: { readonly low: number; readonly high: number; readonly start: number; readonly rising: boolean },
): number {
  let { low, high } = within;
  let x = within.start;
  for (let n = 0; n < MOST_STEPS; n++) {
    let value = 0;
    let slope = 0;
    let bend = 0;
    for (let k = c.length - 1; k >= 0; k--) {
      bend = bend * x + slope;
      slope = slope * x + value;
      value = value * x + (c[k] as number);
    }
    const miss = value - y;
    if (miss > 0 === within.rising) high = x;
    else low = x;
    // `bend` is half of the second derivative.
    const step = (miss * slope) / (slope * slope - miss * bend);
    let next = x - step;
    if (!(next > low && next < high)) {
      if (Math.abs(step) < LAST_STEP) return Math.min(high, Math.max(low, next));
      next = low + (high - low) / 2;
    } else if (Math.abs(step) < LAST_STEP) return next;
    x = next;
  }
  return x;
}
