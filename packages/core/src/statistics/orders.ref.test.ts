import fc from "fast-check";
import { expect, test } from "vitest";
import { arrangements, displacementLaw, factorial, inversionLaw, matchLaw } from "./index.ts";

/** All orders of n things, as copies. */
const orders = (n: number): number[][] =>
  Array.from(arrangements([...Array(n).keys()]), (order) => [...order]);

test("L1 none within one place: OEIS A001883 from n = 4", () => {
  const published = [1, 4, 29, 206, 1708, 15702, 159737, 1780696, 21599745];
  expect(published.map((_, i) => Number(displacementLaw(i + 4, 1).exactly[0]))).toEqual(published);
});

test("L1 all within one place: the Fibonacci numbers F(n + 1), OEIS A000045", () => {
  const fibonacci = [1, 1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233];
  expect(fibonacci.map((_, n) => Number(displacementLaw(n, 1).exactly[n]))).toEqual(fibonacci);
});

test("L1 reach 0 is the matching law (rencontres numbers, OEIS A008290)", () => {
  for (let n = 1; n <= 12; n += 1) {
    const labels = Object.fromEntries(Array.from({ length: n }, (_, i) => [String(i), 1]));
    expect(displacementLaw(n, 0).exactly).toEqual(matchLaw({ rows: labels, columns: labels }).exactly);
  }
  expect(displacementLaw(5, 0).exactly).toEqual([44n, 45n, 20n, 10n, 0n, 1n]);
});

test("L1 equals going through every order, up to 7 things and reach 2", () => {
  for (let n = 1; n <= 7; n += 1) {
    for (const reach of [0, 1, 2]) {
      const counted = Array.from({ length: n + 1 }, () => 0n);
      for (const order of orders(n)) {
        const near = order.filter((place, i) => Math.abs(place - i) <= reach).length;
        counted[near] = (counted[near] ?? 0n) + 1n;
      }
      expect(displacementLaw(n, reach).exactly).toEqual(counted);
    }
  }
});

test("L2 Mahonian numbers, OEIS A008302 (n = 4: 1, 3, 5, 6, 5, 3, 1; n = 5: 1, 4, 9, 15, 20, 22, …)", () => {
  expect(inversionLaw(4).exactly).toEqual([1n, 3n, 5n, 6n, 5n, 3n, 1n]);
  expect(inversionLaw(5).exactly.slice(0, 6)).toEqual([1n, 4n, 9n, 15n, 20n, 22n]);
});

test("L2 Mallows' weights equal going through every order, and all orders weigh what the product says", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 5, max: 9 }), (n, tenths) => {
      const law = inversionLaw(n, { numerator: BigInt(tenths), denominator: 10n });
      const pairs = (n * (n - 1)) / 2;
      const weights = Array.from({ length: pairs + 1 }, () => 0n);
      for (const order of orders(n)) {
        const turned = order.flatMap((a, i) => order.slice(i + 1).filter((b) => b < a)).length;
        weights[turned] =
          (weights[turned] ?? 0n) +
          BigInt(10 - tenths) ** BigInt(turned) * BigInt(tenths) ** BigInt(pairs - turned);
      }
      expect(law.exactly).toEqual(weights);
      if (tenths === 5) expect(law.total).toBe(factorial(n) * 5n ** BigInt(pairs));
    }),
    { numRuns: 60 },
  );
});

test("L1, L2 arguments out of range throw", () => {
  expect(() => displacementLaw(61, 1)).toThrow("displacementLaw requires a whole n from 0 to 60, got 61");
  expect(() => displacementLaw(5, 6)).toThrow("displacementLaw requires a whole reach from 0 to 5, got 6");
  expect(() => inversionLaw(0)).toThrow("inversionLaw requires a whole n from 1 to 12, got 0");
  expect(() => inversionLaw(3, { numerator: 1n, denominator: 3n })).toThrow("got 1/3");
  expect(() => inversionLaw(3, { numerator: 1n, denominator: 1n })).toThrow("got 1/1");
});
