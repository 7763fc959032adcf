/**
 * The sum of finite numbers, correctly rounded: the double nearest to the exact sum, so the order of the terms never
 * matters. Shewchuk's growing expansion, as in Python's `math.fsum`.
 *
 * Source: J. R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic", Discrete Comput. Geom. 18 (1997) 305-363.
 *
 * @throws RangeError when a term is not finite, or the sum overflows.
 * @example
 * exactSum([1e16, 1, -1e16]); // 1
 */
export function exactSum(values: Iterable<number>): number {
  const partials: number[] = [];
  for (const value of values) {
    let x = value;
    if (!Number.isFinite(x)) throw new RangeError(`exactSum requires finite terms, got ${x}`);
    let kept = 0;
    for (let y of partials) {
      if (Math.abs(x) < Math.abs(y)) [x, y] = [y, x];
      const high = x + y;
      const low = y - (high - x);
      if (low !== 0) partials[kept++] = low;
      x = high;
    }
    if (!Number.isFinite(x)) throw new RangeError(`exactSum requires a sum below 1.8e308, got ${x}`);
    partials.length = kept;
    partials.push(x);
  }
  return rounded(partials);
}

/** Adds non-overlapping partials, largest last, rounding once and half to even across the tail. */
function rounded(partials: readonly number[]): number {
  let i = partials.length - 1;
  if (i < 0) return 0;
  let high = partials[i] as number;
  let low = 0;
  while (i > 0) {
    const x = high;
    const y = partials[--i] as number;
    high = x + y;
    low = y - (high - x);
    if (low !== 0) break;
  }
  const next = i > 0 ? (partials[i - 1] as number) : 0;
  if ((low < 0 && next < 0) || (low > 0 && next > 0)) {
    const doubled = low * 2;
    const nudged = high + doubled;
    if (doubled === nudged - high) return nudged;
  }
  return high;
}
