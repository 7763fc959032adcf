import type { Square } from "../numeric/index.ts";

/**
 * The inverse of A from its Cholesky factor L, by way of L's own inverse: a third of the sums that solving for each column takes.
 *
 * Source: Golub and Van Loan, Matrix Computations, 3.1 and 4.2 (from memory).
 *
 * @param l lower triangle, n·n numbers row after row
 */
export function inverseOfFactor(l: Square, n: number): Square {
  // The transpose of L's inverse, so that both loops run along rows.
  const m = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    const from = j * n;
    m[from + j] = 1 / (l[from + j] as number);
    for (let i = j + 1; i < n; i += 1) {
      const row = i * n;
      m[from + i] = -rowsTogether(l, m, row + j, from + j, i - j) / (l[row + i] as number);
    }
  }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const sum = rowsTogether(m, m, i * n + i, j * n + i, n - i);
      inverse[i * n + j] = sum;
      inverse[j * n + i] = sum;
    }
  return inverse;
}

/** The inner product of two stretches, in two sums so that the processor need not wait for either. */
function rowsTogether(a: Float64Array, b: Float64Array, i: number, j: number, count: number): number {
  let one = 0;
  let two = 0;
  let k = 0;
  for (; k + 1 < count; k += 2) {
    one += (a[i + k] as number) * (b[j + k] as number);
    two += (a[i + k + 1] as number) * (b[j + k + 1] as number);
  }
  if (k < count) one += (a[i + k] as number) * (b[j + k] as number);
  return one + two;
}
