import { expect, test } from "vitest";
import oracle from "./friedman.oracle.json" with { type: "json" };
import { chiSquareUpperTail } from "./index.ts";

test("C1 tails agree with mpmath (40 digits) within 1e-12", () => {
  let worst = 0;
  for (const [x = 0, df = 1, p = 0] of oracle.chiSquareTails) {
    worst = Math.max(worst, Math.abs(chiSquareUpperTail(x, df) / p - 1));
  }
  console.log(`chi-square tail: largest relative deviation ${worst.toExponential(1)}`);
  expect(worst).toBeLessThan(1e-12);
});

// NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.4, upper-tail critical values.
test.each([
  [3.841, 1, 0.05],
  [5.991, 2, 0.05],
  [7.815, 3, 0.05],
  [9.21, 2, 0.01],
  [13.277, 4, 0.01],
  [22.458, 6, 0.001],
])("C1 NIST table: P(X >= %d) with %i df is %d", (x, df, p) => {
  expect(chiSquareUpperTail(x - 0.0005, df)).toBeGreaterThan(p);
  expect(chiSquareUpperTail(x + 0.0005, df)).toBeLessThan(p);
});

test("C1 outside its domain it throws", () => {
  expect(() => chiSquareUpperTail(-1, 2)).toThrow("chiSquareUpperTail requires x >= 0, got -1");
  expect(() => chiSquareUpperTail(1, 0)).toThrow("chiSquareUpperTail requires df > 0, got 0");
  expect(() => chiSquareUpperTail(Number.NaN, 2)).toThrow(RangeError);
});
