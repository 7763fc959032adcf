import fc from "fast-check";
import { expect, test } from "vitest";
import { binomial, binomialPower, binomialTail, criticalCount, quotient, trialsNeeded } from "./index.ts";

const chances = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 60 }))
  .map(([whole, part]) => ({ numerator: BigInt(Math.min(part, whole)), denominator: BigInt(whole) }));
const small = fc.integer({ min: 0, max: 40 });
const value = (n: number, k: number, p: { numerator: bigint; denominator: bigint }): number => {
  const { numerator, denominator } = binomialTail(n, k, p);
  return quotient(numerator, denominator);
};

test("N1 the tail is the sum of the terms", () => {
  fc.assert(
    fc.property(small, fc.integer({ min: -2, max: 42 }), chances, (n, k, p) => {
      let sum = 0n;
      for (let i = Math.max(0, k); i <= n; i += 1) {
        sum += binomial(n, i) * p.numerator ** BigInt(i) * (p.denominator - p.numerator) ** BigInt(n - i);
      }
      const { numerator, denominator } = binomialTail(n, k, p);
      expect(numerator * p.denominator ** BigInt(n)).toBe(sum * denominator);
    }),
  );
});

test("N2 the critical count is the first whose tail is alpha or less, and never falls with n", () => {
  fc.assert(
    fc.property(small, chances, fc.constantFrom(0.2, 0.1, 0.05, 0.01), (n, p, alpha) => {
      const k = criticalCount(n, p, alpha);
      if (k === null) expect(value(n, n, p)).toBeGreaterThan(alpha);
      else {
        expect(value(n, k, p)).toBeLessThanOrEqual(alpha);
        expect(value(n, k - 1, p)).toBeGreaterThan(alpha);
        expect(criticalCount(n + 1, p, alpha) ?? Infinity).toBeGreaterThanOrEqual(k);
      }
    }),
  );
});

test("N3 power is enough at both counts, too little one below, and stays enough from `stable` on", () => {
  fc.assert(
    fc.property(
      fc.constantFrom([1n, 3n], [1n, 2n], [1n, 5n]),
      fc.integer({ min: 40, max: 90 }),
      fc.constantFrom(0.01, 0.1, 0.2, 0.5),
      ([a = 1n, b = 2n], share, beta) => {
        const p0 = { numerator: a, denominator: b };
        const p1 = { numerator: 100n * a + BigInt(share) * (b - a), denominator: 100n * b };
        const ask = { p0, p1, alpha: 0.05, beta };
        const needed = trialsNeeded(ask);
        if (needed === null) throw new Error("nothing found");
        expect(binomialPower(needed.smallest, ask)).toBeGreaterThanOrEqual(1 - beta);
        for (let n = 0; n < needed.smallest; n += 1) expect(binomialPower(n, ask)).toBeLessThan(1 - beta);
        if (needed.stable > needed.smallest)
          expect(binomialPower(needed.stable - 1, ask)).toBeLessThan(1 - beta);
        for (let n = needed.stable; n <= 4 * needed.smallest + 80; n += 1)
          expect(binomialPower(n, ask)).toBeGreaterThanOrEqual(1 - beta);
      },
    ),
    { numRuns: 12 },
  );
});

test("N1, N2, N3 what is no count, chance or risk throws; too few trials is a null", () => {
  const half = { numerator: 1n, denominator: 2n };
  expect(() => binomialTail(-1, 0, half)).toThrow("binomialTail requires a whole n >= 0, got -1");
  expect(() => binomialTail(3, 0.5, half)).toThrow("a whole k, got 0.5");
  expect(() => binomialTail(3, 1, { numerator: 3n, denominator: 2n })).toThrow("from 0 to 1, got 3/2");
  expect(() => binomialTail(3, 1, { numerator: 0n, denominator: 0n })).toThrow("got 0/0");
  expect(() => criticalCount(3, half, 0)).toThrow("criticalCount requires a risk between 0 and 1, got 0");
  expect(criticalCount(4, half, 0.05)).toBeNull();
  expect(binomialPower(4, { p0: half, p1: { numerator: 1n, denominator: 1n }, alpha: 0.05 })).toBe(0);
  const test = { p0: half, p1: { numerator: 51n, denominator: 100n }, alpha: 0.05, beta: 0.2 };
  expect(trialsNeeded(test, 30)).toBeNull();
  expect(() => trialsNeeded({ ...test, p1: half })).toThrow(
    "trialsNeeded requires p1 above p0, got 1/2 and 1/2",
  );
  expect(() => trialsNeeded({ ...test, beta: 1 })).toThrow(
    "trialsNeeded requires a risk between 0 and 1, got 1",
  );
});
