import { binomial } from "./binomial.ts";
import { factorial } from "./factorial.ts";

/** The product of two polynomials with exact coefficients, constant term first. */
export function polynomialProduct(a: readonly bigint[], b: readonly bigint[]): bigint[] {
  const product: bigint[] = Array.from({ length: a.length + b.length - 1 }, () => 0n);
  a.forEach((x, i) => b.forEach((y, j) => (product[i + j] = (product[i + j] ?? 0n) + x * y)));
  return product;
}

/**
 * The rook polynomial of a full board: the coefficient of x^k is the number of ways to place k rooks on a
 * board of `rows` by `columns` so that none shares a row or a column, C(rows,k)·C(columns,k)·k!.
 *
 * Source: Riordan, An Introduction to Combinatorial Analysis (1958), ch. 7.
 *
 * @example rookPolynomial(2, 2) // [1n, 4n, 2n]
 */
export function rookPolynomial(rows: number, columns: number): bigint[] {
  return Array.from(
    { length: Math.min(rows, columns) + 1 },
    (_, k) => binomial(rows, k) * binomial(columns, k) * factorial(k),
  );
}
