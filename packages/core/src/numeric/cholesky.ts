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
      let sum = a[i * n + j] as number;
      for (let k = 0; k < j; k += 1) sum -= (l[i * n + k] as number) * (l[j * n + k] as number);
      if (i === j) {
        if (!(sum > 1e-14 * Math.abs(a[j * n + j] as number))) return null;
        l[j * n + j] = Math.sqrt(sum);
      } else l[i * n + j] = sum / (l[j * n + j] as number);
    }
  }
  return l;
}

/** x with Lᵀ·x = b. */
export function solveUpper(l: Square, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const x = Float64Array.from(b);
  for (let i = n - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < n; k += 1) x[i] = (x[i] as number) - (l[k * n + i] as number) * (x[k] as number);
    x[i] = (x[i] as number) / (l[i * n + i] as number);
  }
  return x;
}

/**
 * x with A·x = b, from A's Cholesky factor.
 *
 * @example solveCholesky(Float64Array.of(2, 0, 1, 2), [8, 9]) // 1.375, 1.25
 */
export function solveCholesky(l: Square, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const y = Float64Array.from(b);
  for (let i = 0; i < n; i += 1) {
    for (let k = 0; k < i; k += 1) y[i] = (y[i] as number) - (l[i * n + k] as number) * (y[k] as number);
    y[i] = (y[i] as number) / (l[i * n + i] as number);
  }
  return solveUpper(l, y);
}

/** The inverse of A, from A's Cholesky factor. */
export function inverseOf(l: Square, n: number): Square {
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    const column = solveCholesky(
      l,
      Array.from({ length: n }, (_, i) => Number(i === j)),
    );
    for (let i = 0; i < n; i += 1) inverse[i * n + j] = column[i] as number;
  }
  return inverse;
}
