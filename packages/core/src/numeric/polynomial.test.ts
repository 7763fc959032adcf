import fc from "fast-check";
import { expect, test } from "vitest";
import { polynomial } from "./polynomial.ts";
import { rootOfPolynomial } from "./root-of-polynomial.ts";

test("a polynomial's value, lowest power first", () => {
  expect(polynomial([], 7)).toBe(0);
  expect(polynomial([5], 7)).toBe(5);
  expect(polynomial([1, -2, 3], 2)).toBe(1 - 4 + 12);
  expect(polynomial(Float64Array.of(1, 0, 2), 3)).toBe(19);
});

test("a falling and a rising polynomial are inverted to rounding", () => {
  // x³ + x rises everywhere; its negative falls.
  const inside = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(inside, inside, (root, start) => {
      const y = root ** 3 + root;
      const rising = rootOfPolynomial([0, 1, 0, 1], y, { low: -3, high: 3, start, rising: true });
      const falling = rootOfPolynomial([0, -1, 0, -1], -y, { low: -3, high: 3, start, rising: false });
      expect(Math.abs(rising - root)).toBeLessThan(1e-13);
      expect(Math.abs(falling - root)).toBeLessThan(1e-13);
    }),
    { numRuns: 1000 },
  );
});

test("a polynomial that is flat at the root costs steps, not the answer", () => {
  const found = rootOfPolynomial([-1, 3, -3, 1], 0, { low: -2, high: 5, start: 4, rising: true });
  expect(Math.abs(found - 1)).toBeLessThan(1e-5);
});

test("a root at an end is that end, and values beyond the ends give the end", () => {
  const line = { low: 0, high: 1, start: 0.4, rising: true };
  expect(rootOfPolynomial([0, 1], 0, line)).toBeCloseTo(0, 15);
  expect(rootOfPolynomial([0, 1], 1, line)).toBeCloseTo(1, 15);
  expect(rootOfPolynomial([0, 1], 2, line)).toBeCloseTo(1, 6);
  expect(rootOfPolynomial([0, 1], -2, line)).toBeCloseTo(0, 6);
});

test("the published root of Wallis's cubic, x³ - 2x = 5, from far", () => {
  const found = rootOfPolynomial([0, -2, 0, 1], 5, { low: 1, high: 100, start: 90, rising: true });
  expect(found).toBeCloseTo(2.0945514815423265, 14);
});
