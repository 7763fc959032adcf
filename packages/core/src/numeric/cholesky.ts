import { fourProducts, product } from "./product.ts";

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
  const four = new Float64Array(4);
  const ofDiagonal = (at: number, taken: number): number => {
    const left = (a[at] as number) - taken;
    return left > 1e-14 * Math.abs(a[at] as number) ? Math.sqrt(left) : Number.NaN;
  };
  // Two columns and two rows at a time; of an odd last one, twice the same.
  for (let j = 0; j < n; j += 2) {
    const k = Math.min(j + 1, n - 1);
    const [inJ, inK] = [j * n, k * n];
    fourProducts(l, inJ, inK, l, inJ, inK, j, four);
    const own = ofDiagonal(inJ + j, four[0] as number);
    if (Number.isNaN(own)) return null;
    l[inJ + j] = own;
    let [both, second] = [0, own];
    if (k > j) {
      both = ((a[inK + j] as number) - (four[2] as number)) / own;
      second = ofDiagonal(inK + k, (four[3] as number) + both * both);
      if (Number.isNaN(second)) return null;
      l[inK + j] = both;
      l[inK + k] = second;
    }
    for (let i = j + 2; i < n; i += 2) {
      const inI = i * n;
      const next = Math.min(i + 1, n - 1) * n;
      fourProducts(l, inI, next, l, inJ, inK, j, four);
      const first = ((a[inI + j] as number) - (four[0] as number)) / own;
      const below = ((a[next + j] as number) - (four[2] as number)) / own;
      l[inI + j] = first;
      l[next + j] = below;
      l[inI + k] = ((a[inI + k] as number) - (four[1] as number) - first * both) / second;
      l[next + k] = ((a[next + k] as number) - (four[3] as number) - below * both) / second;
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

/**
 * As `solveLower`, of many right sides in place.
 *
 * @param l lower triangle, n·n numbers row after row
 * @param rows right sides one after the other, n numbers each
 */
export function solveLowerRows(l: Square, n: number, rows: Float64Array): void {
  const four = new Float64Array(4);
  const many = rows.length / n;
  const take = (at: number, i: number, taken: number): void => {
    rows[at + i] = ((rows[at + i] as number) - taken) / (l[i * n + i] as number);
  };
  for (let c = 0; c < many; c += 2) {
    const at = c * n;
    const next = Math.min(c + 1, many - 1) * n;
    for (let i = 0; i < n; i += 2) {
      const k = Math.min(i + 1, n - 1);
      fourProducts(l, i * n, k * n, rows, at, next, i, four);
      const [a, b, a2, b2] = [four[0] as number, four[1] as number, four[2] as number, four[3] as number];
      const both = l[k * n + i] as number;
      take(at, i, a);
      if (k > i) take(at, k, a2 + both * (rows[at + i] as number));
      if (next === at) continue;
      take(next, i, b);
      if (k > i) take(next, k, b2 + both * (rows[next + i] as number));
    }
  }
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
