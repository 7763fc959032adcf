import fc from "fast-check";
import { expect, test } from "vitest";
import { coverageHalfWidth } from "./coverage-half-width.ts";
import { normalCdf, normalCdfIntegral } from "./normal-cdf.ts";

/** How far off a known figure, as a share of it. */
const off = (found: number, known: number): number => Math.abs(found / known - 1);

test("U4: one rectangle: 0.95 of its half width, 19 % less than 1.96 u", () => {
  expect(off(coverageHalfWidth([0.3], 0), 0.285)).toBeLessThan(1e-4);
  expect((1.96 * 0.3) / Math.sqrt(3) / 0.285).toBeCloseTo(1.19, 2);
});

test("U4: one normal: 1.959964 standard deviations", () => {
  // z of 0.975: every table of the normal law.
  expect(off(coverageHalfWidth([], 2), 2 * 1.959963984540054)).toBeLessThan(1e-4);
});

test("U4: two equal rectangles are a triangle: 2a - sqrt(0.05) 2a", () => {
  expect(off(coverageHalfWidth([1, 1], 0), 2 * (1 - Math.sqrt(0.05)))).toBeLessThan(1e-4);
});

test("U4: two unequal rectangles are a trapezium: closed form of its tail", () => {
  // Tail beyond h of the sum of half widths a > b: (a + b - h)² / (8 a b), for h above a - b.
  for (const [a, b] of [
    [1, 0.5],
    [3, 0.2],
    [1, 0.05],
  ] as const) {
    expect(off(coverageHalfWidth([a, b], 0), a + b - Math.sqrt(0.025 * 8 * a * b))).toBeLessThan(1e-4);
    expect(off(coverageHalfWidth([b, a], 0), a + b - Math.sqrt(0.025 * 8 * a * b))).toBeLessThan(1e-4);
  }
});

test("U4: three equal rectangles: the closed form of their sum's tail", () => {
  // Beyond h in [1, 3] the density of three half-width-1 rectangles is (3 - h)² / 16, so the tail is (3 - h)³ / 48.
  expect(off(coverageHalfWidth([1, 1, 1], 0), 3 - Math.cbrt(48 * 0.025))).toBeLessThan(1e-4);
});

test("U4: many small rectangles come to a normal", () => {
  const many = Array.from({ length: 40 }, () => 0.1);
  const u = Math.sqrt(40 / 3) * 0.1;
  expect(Math.abs(coverageHalfWidth(many, 0) / (1.959964 * u) - 1)).toBeLessThan(0.005);
});

test("U4: a rectangle and a normal: the law's own tail is 0.025 there", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 100, noNaN: true }), (ratio) => {
      const h = coverageHalfWidth([ratio], 1);
      // P(N + R > h) by Simpson's rule over the rectangle: nothing of the grid.
      const cells = 2000;
      let tail = 0;
      for (let k = 0; k <= cells; k++) {
        const weight = k === 0 || k === cells ? 1 : k % 2 === 1 ? 4 : 2;
        tail += weight * (1 - normalCdf(h - ratio * ((2 * k) / cells - 1)));
      }
      expect(tail / (3 * cells)).toBeCloseTo(0.025, 4);
    }),
  );
});

test("U4: nothing uncertain, scaling, order, and what adds little", () => {
  expect(coverageHalfWidth([], 0)).toBe(0);
  expect(coverageHalfWidth([0, 0], 0)).toBe(0);
  expect(off(coverageHalfWidth([3, 1.5], 6), 3 * coverageHalfWidth([1, 0.5], 2))).toBeLessThan(1e-4);
  expect(off(coverageHalfWidth([0.5, 1, 0.2], 0.3), coverageHalfWidth([0.2, 0.5, 1], 0.3))).toBeLessThan(
    1e-4,
  );
  expect(off(coverageHalfWidth([1, 1e-7], 1e-8), 0.95)).toBeLessThan(1e-4);
  expect(off(coverageHalfWidth([1e-9], 1), 1.959964)).toBeLessThan(1e-4);
  expect(off(coverageHalfWidth([1, 0.5, 0], 0), coverageHalfWidth([1, 0.5], 0))).toBeLessThan(1e-4);
});

test("U4: between 1.645 u and 1.97 u, whatever the mixture", () => {
  const widths = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(widths, fc.double({ min: 0.01, max: 5, noNaN: true }), (all, sigma) => {
      const u = Math.hypot(sigma, ...all.map((a) => a / Math.sqrt(3)));
      const h = coverageHalfWidth(all, sigma) / u;
      expect(h).toBeGreaterThan(1.644);
      expect(h).toBeLessThan(1.97);
    }),
  );
});

test("U4: widths and deviations that are none throw", () => {
  expect(() => coverageHalfWidth([-1], 0)).toThrow(
    "half width requires a finite number of 0 or more, got -1",
  );
  expect(() => coverageHalfWidth([], Number.NaN)).toThrow(
    "standard deviation requires a finite number of 0 or more, got NaN",
  );
});

test("U4: the normal law's figures as in every table, and its integral by differences", () => {
  for (const [z, printed] of [
    [0, 0.5],
    [1, 0.841345],
    [1.96, 0.975002],
    [-2.326348, 0.01],
    [-3, 0.00135],
  ] as const) {
    expect(normalCdf(z)).toBeCloseTo(printed, 6);
  }
  expect([normalCdf(-40), normalCdf(40)]).toEqual([0, 1]);
  for (const z of [-3, -1, 0.5, 2]) {
    expect((normalCdfIntegral(z + 1e-4) - normalCdfIntegral(z - 1e-4)) / 2e-4).toBeCloseTo(normalCdf(z), 7);
  }
  expect(normalCdfIntegral(-40)).toBe(0);
});
