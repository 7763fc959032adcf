/**
 * The root of `f` in [low, high] without a derivative: Brent's method (inverse quadratic and secant steps, halving when
 * they gain too little). With the default tolerance of 0 the answer is good to a few units in the last place.
 *
 * Source: R. P. Brent, "Algorithms for Minimization without Derivatives" (1973), chapter 4.
 *
 * @throws RangeError when `f(low)` and `f(high)` have the same sign, or either is not a number.
 * @example
 * rootByBrent((x) => Math.cos(x) - x, 0, 1); // 0.73908513321516…
 */
export function rootByBrent(f: (x: number) => number, low: number, high: number, tolerance = 0): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 !== fb < 0) || Number.isNaN(fa) || Number.isNaN(fb)) {
    throw new RangeError(`rootByBrent requires opposite signs at both ends, got ${fa} and ${fb}`);
  }
  let c = a;
  let fc = fa;
  let step = b - a;
  let previous = step;
  for (let n = 0; n < 500; n++) {
    if (fb < 0 === fc < 0) {
      c = a;
      fc = fa;
      step = previous = b - a;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (fb === 0 || Math.abs(half) <= least) return b;
    const guess =
      Math.abs(previous) < least || Math.abs(fa) <= Math.abs(fb) ? null : interpolated(a, b, c, fa, fb, fc);
    if (
      guess !== null &&
      Math.abs(guess) < Math.min(1.5 * Math.abs(half) - least / 2, Math.abs(previous) / 2) &&
      guess * half > 0
    ) {
      previous = step;
      step = guess;
    } else {
      step = previous = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = f(b);
  }
  return b;
}

/** The step from b suggested by the secant (two points) or inverse quadratic (three points). */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return (-(c - b) * s) / (1 - s);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
