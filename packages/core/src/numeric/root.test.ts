import fc from "fast-check";
import { expect, test } from "vitest";
import { rootByBrent } from "./root-by-brent.ts";
import { rootByNewton } from "./root-by-newton.ts";

type Case = {
  readonly name: string;
  readonly f: (x: number) => number;
  readonly slope: (x: number) => number;
  readonly low: number;
  readonly high: number;
  readonly root: number;
};

/** Roots known in closed form or to published digits. */
const cases: readonly Case[] = [
  { name: "square root of two", f: (x) => x * x - 2, slope: (x) => 2 * x, low: 0, high: 2, root: Math.SQRT2 },
  {
    // OEIS A003957.
    name: "fixed point of cosine",
    f: (x) => Math.cos(x) - x,
    slope: (x) => -Math.sin(x) - 1,
    low: 0,
    high: 1,
    root: 0.7390851332151607,
  },
  {
    // Wallis's cubic; OEIS A007493.
    name: "x³ - 2x - 5",
    f: (x) => x ** 3 - 2 * x - 5,
    slope: (x) => 3 * x * x - 2,
    low: 2,
    high: 3,
    root: 2.0945514815423265,
  },
  {
    name: "ends swapped in sign",
    f: (x) => 1 - Math.exp(x),
    slope: (x) => -Math.exp(x),
    low: -3,
    high: 5,
    root: 0,
  },
  {
    name: "plain Newton would run away",
    f: (x) => Math.atan(x - 1),
    slope: (x) => 1 / (1 + (x - 1) ** 2),
    low: -30,
    high: 50,
    root: 1,
  },
  {
    name: "flat at the root",
    f: (x) => (x - 1) ** 3,
    slope: (x) => 3 * (x - 1) ** 2,
    low: -2,
    high: 7,
    root: 1,
  },
];

test.each(cases)("both finders: $name", ({ f, slope, low, high, root }) => {
  expect(Math.abs(rootByNewton(f, slope, low, high) - root)).toBeLessThan(
    1e-14 * Math.max(1, Math.abs(root)) * 4,
  );
  expect(Math.abs(rootByBrent(f, low, high) - root)).toBeLessThan(1e-14 * Math.max(1, Math.abs(root)) * 4);
});

test("a slope that is wrong or not a number costs steps, not the answer", () => {
  const f = (x: number) => x * x - 2;
  for (const slope of [() => Number.NaN, () => 0, () => -1, () => 1e-9]) {
    expect(rootByNewton(f, slope, 0, 2)).toBeCloseTo(Math.SQRT2, 14);
  }
});

test("few evaluations are spent on a smooth function", () => {
  let calls = 0;
  const f = (x: number) => {
    calls++;
    return Math.exp(x) - 3;
  };
  rootByNewton(f, Math.exp, 0, 2);
  expect(calls).toBeLessThanOrEqual(12);
  calls = 0;
  rootByBrent(f, 0, 2);
  expect(calls).toBeLessThanOrEqual(14);
});

test("a root at an end is that end, exactly", () => {
  const f = (x: number) => x - 1;
  expect([rootByNewton(f, () => 1, 1, 2), rootByNewton(f, () => 1, 0, 1)]).toEqual([1, 1]);
  expect([rootByBrent(f, 1, 2), rootByBrent(f, 0, 1)]).toEqual([1, 1]);
});

test("ends of one sign, or not a number, are refused", () => {
  const f = (x: number) => x * x + 1;
  expect(() => rootByNewton(f, (x) => 2 * x, 0, 1)).toThrow(
    "requires opposite signs at both ends, got 1 and 2",
  );
  expect(() => rootByBrent(f, 0, 1)).toThrow("requires opposite signs at both ends, got 1 and 2");
  expect(() => rootByBrent(() => Number.NaN, 0, 1)).toThrow(RangeError);
});

test("random cubics with one known root: found to the noise of evaluating them", () => {
  const inside = fc.double({ min: -5, max: 5, noNaN: true });
  fc.assert(
    fc.property(inside, fc.double({ min: 0.1, max: 10, noNaN: true }), (root, a) => {
      const f = (x: number) => (x - root) * ((x - root) ** 2 + a);
      const slope = (x: number) => 3 * (x - root) ** 2 + a;
      expect(Math.abs(rootByNewton(f, slope, -6, 7) - root)).toBeLessThan(1e-14);
      expect(Math.abs(rootByBrent(f, -6, 7) - root)).toBeLessThan(1e-14);
    }),
  );
});
