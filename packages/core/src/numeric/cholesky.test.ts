import fc from "fast-check";
import { expect, test } from "vitest";
import { cholesky, solveCholesky, solveLower, solveLowerRows, type Square } from "./cholesky.ts";
import { maximiseConcave } from "./maximise-concave.ts";
import { dot, fourProducts, product } from "./product.ts";
import { timesRows } from "./times-rows.ts";

test("a factor that is published", () => {
  // Wikipedia, "Cholesky decomposition", example (from memory): L is 2; 6, 1; −8, 5, 3.
  expect(cholesky(Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98), 3)).toEqual(
    Float64Array.of(2, 0, 0, 6, 1, 0, -8, 5, 3),
  );
});

test("no factor where a matrix is not positive definite, in an even place or an odd one", () => {
  expect(cholesky(Float64Array.of(0), 1)).toBeNull();
  expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBeNull();
  expect(cholesky(Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, -1), 3)).toBeNull();
  expect(cholesky(Float64Array.of(1, 0, 0, 0, 1, 2, 0, 2, Number.NaN), 3)).toBeNull();
});

const numbers = (size: number): fc.Arbitrary<Float64Array> =>
  fc.float64Array({ minLength: size, maxLength: size, min: -3, max: 3, noNaN: true });

/** B·Bᵀ and a bit on the diagonal, of 1 to 9 rows. */
const positive = fc.integer({ min: 1, max: 9 }).chain((n) =>
  numbers(n * n).map((b) => {
    const a: Square = new Float64Array(n * n);
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j < n; j += 1) a[i * n + j] = product(b, i * n, b, j * n, n) + Number(i === j);
    return { n, a };
  }),
);

test("L·Lᵀ is the matrix again, and solving gives what was multiplied", () => {
  fc.assert(
    fc.property(positive, fc.integer({ min: 1, max: 5 }), fc.nat(1000), ({ n, a }, many, start) => {
      const l = cholesky(a, n) as Square;
      for (let i = 0; i < n; i += 1)
        for (let j = 0; j < n; j += 1)
          expect(product(l, i * n, l, j * n, n)).toBeCloseTo(a[i * n + j] as number, 9);
      const x = Float64Array.from({ length: n }, (_, i) => Math.sin(start + i));
      const b = x.map((_, i) => product(a, i * n, x, 0, n));
      for (const [i, v] of solveCholesky(l, b).entries()) expect(v).toBeCloseTo(x[i] as number, 8);
      const rows = Float64Array.from({ length: many * n }, (_, i) => Math.cos(start + i));
      const apart = Array.from({ length: many }, (_, m) => solveLower(l, rows.slice(m * n, (m + 1) * n)));
      solveLowerRows(l, n, rows);
      for (const [m, row] of apart.entries())
        for (const [i, v] of row.entries()) expect(rows[m * n + i]).toBeCloseTo(v, 9);
    }),
  );
});

test("four products at once are the four", () => {
  fc.assert(
    fc.property(numbers(20), numbers(20), fc.nat(10), (a, b, length) => {
      const four = new Float64Array(4);
      fourProducts(a, 0, 7, b, 3, 9, length, four);
      const apart = [
        [0, 3],
        [0, 9],
        [7, 3],
        [7, 9],
      ].map(([i = 0, j = 0]) => product(a, i, b, j, length));
      for (const [i, v] of apart.entries()) expect(four[i]).toBeCloseTo(v, 9);
    }),
  );
});

test("rows times rows are the products of each with each, of a lower triangle too", () => {
  fc.assert(
    fc.property(positive, fc.integer({ min: 1, max: 4 }), numbers(36), ({ n, a }, high, b) => {
      const l = cholesky(a, n) as Square;
      const rows = b.slice(0, high * n);
      for (const [of, lower] of [
        [a, 0],
        [l, n],
      ] as const)
        for (const [i, row] of timesRows(rows, high, of, n, lower).entries())
          for (const [j, v] of row.entries()) expect(v).toBeCloseTo(product(rows, i * n, of, j * n, n), 9);
    }),
  );
});

test("a maximum is the same where steps go on by a curvature from before, with fewer curvatures", () => {
  // Of Σ x − e^x + x·c: at ln(1 + c).
  const tops = Float64Array.of(0, 1, 4, 9, 99);
  const c = tops.map((v) => v + 1);
  let looked = 0;
  const value = (x: Float64Array): number => dot(c, x) - x.reduce((sum, v) => sum + Math.exp(v), 0);
  const gradient = (x: Float64Array): Float64Array => x.map((v, i) => (c[i] as number) - Math.exp(v));
  const plain = {
    size: 5,
    value,
    curve(x: Float64Array) {
      looked += 1;
      const curvature = new Float64Array(25);
      for (const [i, v] of x.entries()) curvature[i * 6] = Math.exp(v);
      return { value: value(x), gradient: gradient(x), curvature };
    },
  };
  const count = (slope: boolean): number => {
    looked = 0;
    const start = Float64Array.of(0.2, 0.5, 1.5, 2, 4.5);
    const found = maximiseConcave(
      slope ? { ...plain, slope: (x) => ({ value: value(x), gradient: gradient(x) }) } : plain,
      start,
    );
    for (const [i, v] of (found?.at ?? []).entries()) expect(v).toBeCloseTo(Math.log(c[i] as number), 10);
    return looked;
  };
  expect(count(true)).toBeLessThan(count(false));
});
