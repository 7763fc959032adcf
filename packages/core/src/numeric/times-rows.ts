import { fourProducts } from "./product.ts";

/**
 * Products of every row of a with every row of b, as many of each as is said: a row of the result for each of a. The first `lower`
 * rows of b are those of a lower triangle.
 *
 * @example timesRows(m, 2, m, 2, 0) // the rows of a matrix of two with each other
 */
export function timesRows(
  a: Float64Array,
  high: number,
  b: Float64Array,
  wide: number,
  lower: number,
): Float64Array[] {
  const width = high === 0 ? 0 : a.length / high;
  const made = Array.from({ length: high }, () => new Float64Array(wide));
  for (let i = 0; i < high; i += 2) {
    const i2 = Math.min(i + 1, high - 1);
    timesTwo(a, i * width, i2 * width, b, width, lower, made[i] as Float64Array, made[i2] as Float64Array);
  }
  return made;
}

const four = new Float64Array(4);

function timesTwo(
  a: Float64Array,
  at: number,
  at2: number,
  b: Float64Array,
  width: number,
  lower: number,
  first: Float64Array,
  second: Float64Array,
): void {
  const wide = first.length;
  for (let j = 0; j < wide; j += 2) {
    const j2 = Math.min(j + 1, wide - 1);
    fourProducts(a, at, at2, b, j * width, j2 * width, j2 < lower ? j2 + 1 : width, four);
    first[j] = four[0] as number;
    first[j2] = four[1] as number;
    second[j] = four[2] as number;
    second[j2] = four[3] as number;
  }
}
