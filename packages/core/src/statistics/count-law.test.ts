import fc from "fast-check";
import { expect, test } from "vitest";
import { binomial, countLaw, factorial, matchLaw, poolLaws, quotient, reduced } from "./index.ts";

const cases = fc
  .array(fc.bigInt({ min: 0n, max: 50n }), { minLength: 1, maxLength: 6 })
  .filter((list) => list.some((c) => c > 0n));

test("M6 the law of two sheets is every pair of cases", () => {
  fc.assert(
    fc.property(cases, cases, (a, b) => {
      const pooled = poolLaws([countLaw(a), countLaw(b)]);
      const pairs = Array.from({ length: a.length + b.length - 1 }, () => 0n);
      for (const [i, x] of a.entries()) {
        for (const [j, y] of b.entries()) pairs[i + j] = (pairs[i + j] ?? 0n) + x * y;
      }
      expect(pooled.exactly).toEqual(pairs);
      expect(pooled.mean).toBeCloseTo(countLaw(a).mean + countLaw(b).mean, 12);
      expect(poolLaws([countLaw(b), countLaw(a)]).exactly).toEqual(pooled.exactly);
    }),
  );
});

test("M6 sheets of one glass and two names are coin tosses: the binomial law", () => {
  const sheet = matchLaw({ rows: { a: 1 }, columns: { a: 1, b: 1 } });
  const pooled = poolLaws(Array.from({ length: 10 }, () => sheet));
  expect(pooled.exactly).toEqual(Array.from({ length: 11 }, (_, k) => binomial(10, k)));
});

test("M6 no law is surely 0", () => {
  expect(poolLaws([]).exactly).toEqual([1n]);
  expect(poolLaws([]).pAtLeast(1)).toBe(0);
});

test("M7 more objects than slots, fractions, negative counts and empty laws throw", () => {
  expect(() => matchLaw({ rows: { a: 2 }, columns: { a: 1 } })).toThrow(
    "matchLaw requires at least as many slots as objects (2), got 1 slots",
  );
  expect(() => matchLaw({ rows: { a: 1.5 }, columns: { a: 2 } })).toThrow('in rows, got 1.5 for "a"');
  expect(() => matchLaw({ rows: {}, columns: { a: -1 } })).toThrow('in columns, got -1 for "a"');
  expect(() => countLaw([0n])).toThrow(RangeError);
  expect(() => countLaw([2n, -1n])).toThrow(RangeError);
  expect(() => countLaw([1n]).pAtLeast(0.5)).toThrow("a tail requires a whole k, got 0.5");
});

test("M5 a quotient is the nearest double, however large its parts", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2 ** 31 }), fc.integer({ min: 1, max: 2 ** 31 }), (a, b) => {
      // Both fit a double, so the machine's own division is correctly rounded.
      expect(quotient(BigInt(a), BigInt(b))).toBe(a / b);
      const huge = factorial(300);
      expect(quotient(BigInt(a) * huge, BigInt(b) * huge)).toBe(a / b);
    }),
  );
  // Half-way between two doubles goes to the even one, a hair above it goes up.
  const [tie, unit] = [(2n ** 53n + 1n) * 2n ** 200n, 2n ** 200n];
  expect(quotient(tie, unit)).toBe(2 ** 53);
  expect(quotient(tie + 1n, unit)).toBe(2 ** 53 + 2);
  expect(quotient(1n, 2n ** 1000n)).toBe(2 ** -1000);
  expect(quotient(2n ** 1100n, 1n)).toBe(Infinity);
  expect(quotient(1n, 2n ** 1200n)).toBe(0);
  expect(() => quotient(1n, 0n)).toThrow(RangeError);
  expect(() => quotient(-1n, 2n)).toThrow(RangeError);
});

test("M5 fractions are in lowest terms", () => {
  expect(reduced(6n, 24n)).toEqual({ numerator: 1n, denominator: 4n });
  expect(reduced(0n, 7n)).toEqual({ numerator: 0n, denominator: 1n });
  expect(() => reduced(1n, 0n)).toThrow(RangeError);
  expect(() => reduced(-1n, 3n)).toThrow(RangeError);
});

test("factorials and binomials are exact and refuse what they cannot do", () => {
  // 25! and C(100, 50) from OEIS A000142 and A000984 (values from memory).
  expect(factorial(25)).toBe(15511210043330985984000000n);
  expect(binomial(100, 50)).toBe(100891344545564193334812497256n);
  expect([binomial(5, -1), binomial(5, 6), binomial(0, 0)]).toEqual([0n, 0n, 1n]);
  expect(() => factorial(-1)).toThrow("factorial requires a whole n >= 0, got -1");
  expect(() => binomial(2.5, 1)).toThrow(RangeError);
  expect(() => binomial(2, 0.5)).toThrow(RangeError);
});
