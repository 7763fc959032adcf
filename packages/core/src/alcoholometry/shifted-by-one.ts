import { runningSum } from "../numeric/index.ts";

/**
 * A polynomial in x as a polynomial in x - 1, lowest power first, every coefficient the double nearest to the exact one. Rounded
 * sums would not do: the coefficients of the density formula are a thousand times larger than its values.
 *
 * The k-th power counts C(k, j) times in the j-th new coefficient; a whole number times a double is exact bit by bit.
 */
export function shiftedByOne(c: ArrayLike<number>): Float64Array {
  const shifted = new Float64Array(c.length);
  const sum = runningSum();
  for (let j = 0; j < c.length; j++) {
    sum.clear();
    let choose = 1;
    for (let k = j; k < c.length; k++) {
      for (let bit = 1; bit <= choose; bit *= 2) {
        if (Math.floor(choose / bit) % 2 === 1) sum.add((c[k] as number) * bit);
      }
      choose = (choose * (k + 1)) / (k + 1 - j);
    }
    shifted[j] = sum.total();
  }
  return shifted;
}
