/**
 * The root of `f` in [low, high], by Newton steps kept inside a shrinking bracket: a step that leaves the bracket, or
 * gains too little, is replaced by a halving. Ends when the step no longer changes x by more than `tolerance` or a
 * rounding error, so with the default tolerance of 0 the answer is good to a few units in the last place.
 *
 * `f` must be continuous; `slope` is its derivative and only has to be right for speed, not for safety.
 *
 * @throws RangeError when `f(low)` and `f(high)` have the same sign, or either is not a number.
 * @example
 * rootByNewton((x) => x * x - 2, (x) => 2 * x, 0, 2); // 1.41421356237309…
 */
export function rootByNewton(
  f: (x: number) => number,
  slope: (x: number) => number,
  low: number,
  high: number,
  tolerance = 0,
): number {
  const atLow = f(low);
  const atHigh = f(high);
  if (atLow === 0) return low;
  if (atHigh === 0) return high;
  if (!(atLow < 0 !== atHigh < 0) || Number.isNaN(atLow) || Number.isNaN(atHigh)) {
    throw new RangeError(`rootByNewton requires opposite signs at both ends, got ${atLow} and ${atHigh}`);
  }
  let below = atLow < 0 ? low : high;
  let above = atLow < 0 ? high : low;
  // A straight line between the ends is a better first guess than the middle.
  let x = low - (atLow * (high - low)) / (atHigh - atLow);
  let lastStep = Math.abs(high - low);
  for (let n = 0; n < 200; n++) {
    const y = f(x);
    if (y === 0) return x;
    if (y < 0) below = x;
    else above = x;
    let next = x - y / slope(x);
    const inside = (next - below) * (next - above) < 0;
    if (!inside || Math.abs(next - x) > lastStep / 2) next = below + (above - below) / 2;
    const step = Math.abs(next - x);
    if (step <= Math.max(tolerance, Number.EPSILON * Math.abs(x)) || next === below || next === above)
      return next;
    lastStep = step;
    x = next;
  }
  return x;
}
