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
    m[j * n + j] = 1 / (l[j * n + j] as number);
    for (let i = j + 1; i < n; i += 1) {
      let sum = 0;
      for (let k = j; k < i; k += 1) sum += (l[i * n + k] as number) * (m[j * n + k] as number);
      m[j * n + i] = -sum / (l[i * n + i] as number);
    }
  }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = 0;
      for (let k = i; k < n; k += 1) sum += (m[i * n + k] as number) * (m[j * n + k] as number);
      inverse[i * n + j] = sum;
      inverse[j * n + i] = sum;
    }
  return inverse;
}
