/**
 * The value of a polynomial by Horner's rule; the lowest power comes first.
 *
 * @example
 * polynomial([1, 0, 2], 3); // 19
 */
export function polynomial(c: ArrayLike<number>, x: number): number {
  let y = 0;
  for (let k = c.length - 1; k >= 0; k--) y = y * x + (c[k] as number);
  return y;
}
