import { product } from "./product.ts";

/** A square matrix, row after row. */
export type Square = Float64Array;

/**
 * The lower triangle L with L·Lᵀ = A of a symmetric positive definite A (only its lower triangle is read), or null when A is not
 * positive definite to within rounding.
 *
 * Source: Golub and Van Loan, Matrix Computations, 4.2 (from memory).
 *
 * @param a n·n numbers, row after row
 * @example cholesky(Float64Array.of(4, 2, 2, 5), 2) // 2, 0, 1, 2
 */
export function cholesky(a: Square, n: number): Square | null {
  const l = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    for (let i = j; i < n; i += 1) {
      const sum = (a[i * n + j] as number) - product(l, i * n, l, j * n, j);
      if (i === j) {
        if (!(sum > 1e-14 * Math.abs(a[j * n + j] as number))) return null;
        l[j * n + j] = Math.sqrt(sum);
      } else l[i * n + j] = sum / (l[j * n + j] as number);
    }
  }
  return l;
}

/** y with L·y = b, of a lower triangle of b's size. */
export function solveLower(l: Square, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const y = Float64Array.from(b);
  for (let i = 0; i < n; i += 1)
    y[i] = ((y[i] as number) - product(l, i * n, y, 0, i)) / (l[i * n + i] as number);
  return y;
}

/** x with Lᵀ·x = b. */
export function solveUpper(l: Square, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const x = Float64Array.from(b);
  // Row by row of L, each found part taken off all before it: rows lie together.
  for (let i = n - 1; i >= 0; i -= 1) {
    const own = (x[i] as number) / (l[i * n + i] as number);
    x[i] = own;
    for (let k = 0; k < i; k += 1) x[k] = (x[k] as number) - own * (l[i * n + k] as number);
  }
  return x;
}

/**
 * x with A·x = b, from A's Cholesky factor.
 *
 * @example solveCholesky(Float64Array.of(2, 0, 1, 2), [8, 9]) // 1.375, 1.25
 */
export const solveCholesky = (l: Square, b: ArrayLike<number>): Float64Array =>
  solveUpper(l, solveLower(l, b));

/**
 * The inverse of A from its Cholesky factor L, by way of L's own inverse: a third of the sums that solving for each column takes.
 *
 * Source: Golub and Van Loan, Matrix Computations, 3.1 and 4.2 (from memory).
 *
 * @param l lower triangle, n·n numbers row after row
 */
export function inverseOf(l: Square, n: number): Square {
  // The transpose of L's inverse, so that both loops run along rows.
  const m = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    const from = j * n;
    m[from + j] = 1 / (l[from + j] as number);
    for (let i = j + 1; i < n; i += 1) {
      const row = i * n;
      m[from + i] = -product(l, row + j, m, from + j, i - j) / (l[row + i] as number);
    }
  }
  const inverse = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const sum = product(m, i * n + i, m, j * n + i, n - i);
      inverse[i * n + j] = sum;
      inverse[j * n + i] = sum;
    }
  return inverse;
}
