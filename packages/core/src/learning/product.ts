/** Σ of products along two runs of numbers; four sums at once, as one waits for itself. */
export function product(a: Float64Array, atA: number, b: Float64Array, atB: number, length: number): number {
  // Taken apart one by one: this runs millions of times.
  let s = 0;
  let t = 0;
  let u = 0;
  let v = 0;
  let i = 0;
  for (; i + 3 < length; i += 4) {
    s += (a[atA + i] as number) * (b[atB + i] as number);
    t += (a[atA + i + 1] as number) * (b[atB + i + 1] as number);
    u += (a[atA + i + 2] as number) * (b[atB + i + 2] as number);
    v += (a[atA + i + 3] as number) * (b[atB + i + 3] as number);
  }
  for (; i < length; i += 1) s += (a[atA + i] as number) * (b[atB + i] as number);
  return s + t + u + v;
}

export const dot = (a: Float64Array, b: Float64Array): number => product(a, 0, b, 0, a.length);

/** L⁻¹ b of a lower triangle of b's size. */
export function solveLower(l: Float64Array, b: Float64Array): Float64Array {
  const n = b.length;
  const y = b.slice();
  for (let i = 0; i < n; i += 1)
    y[i] = ((y[i] as number) - product(l, i * n, y, 0, i)) / (l[i * n + i] as number);
  return y;
}
