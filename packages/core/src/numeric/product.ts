/**
 * Σ of products along two runs of numbers, of a from `atA`, of b from `atB`. Four sums at once, as one waits for itself: rounding differs
 * from a plain sum's in the last digits.
 *
 * @example product(Float64Array.of(1, 2, 3), 1, Float64Array.of(4, 5), 0, 2) // 2·4 + 3·5
 */
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

/**
 * Σ of products of two runs of a with two runs of b, all four at once, as each number is then read once for two sums.
 *
 * @param into gets a·b, a·b2, a2·b, a2·b2
 * @example fourProducts(m, 0, 3, m, 0, 3, 3, into) // rows 0 and 1 of a matrix of three columns with each other
 */
export function fourProducts(
  a: Float64Array,
  atA: number,
  atA2: number,
  b: Float64Array,
  atB: number,
  atB2: number,
  length: number,
  into: Float64Array,
): void {
  let s = 0;
  let t = 0;
  let u = 0;
  let v = 0;
  for (let i = 0; i < length; i += 1) {
    const p = a[atA + i] as number;
    const q = a[atA2 + i] as number;
    const x = b[atB + i] as number;
    const y = b[atB2 + i] as number;
    s += p * x;
    t += p * y;
    u += q * x;
    v += q * y;
  }
  into[0] = s;
  into[1] = t;
  into[2] = u;
  into[3] = v;
}
