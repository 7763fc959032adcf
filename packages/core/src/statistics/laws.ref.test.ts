import { expect, test } from "vitest";
import {
  atLeast,
  atMost,
  betaQuantile,
  betaTail,
  exactShare,
  fQuantile,
  fUpperTail,
  likelyShare,
  normalCumulative,
  normalQuantile,
  studentHalfWidth,
  studentTwoSided,
} from "./index.ts";
import oracle from "./laws.oracle.json" with { type: "json" };

/** The largest relative deviation of pairs [got, expected]. */
const worst = (pairs: readonly (readonly [number, number])[]): number =>
  Math.max(...pairs.map(([got, expected]) => (expected === got ? 0 : Math.abs(got / expected - 1))));

test("C2 beta, binomial and normal tails agree with mpmath (40 digits) within 1e-11", () => {
  const beta = worst(
    oracle.beta.flatMap(([x = 0, a = 1, b = 1, low = 0, high = 0]) => [
      [betaTail(x, a, b, "lower"), low] as const,
      [betaTail(x, a, b, "upper"), high] as const,
    ]),
  );
  const binomial = worst(
    oracle.binomial.flatMap(([n = 0, k = 0, p = 0, low = 0, high = 0]) => [
      [atMost(n, k, p), low] as const,
      [atLeast(n, k, p), high] as const,
    ]),
  );
  const normal = worst(oracle.normal.map(([x = 0, p = 0]) => [normalCumulative(x), p] as const));
  console.log(
    `tails against mpmath: beta ${beta.toExponential(1)}, binomial ${binomial.toExponential(1)}, normal ${normal.toExponential(1)}`,
  );
  expect(beta).toBeLessThan(1e-11);
  expect(binomial).toBeLessThan(1e-11);
  expect(normal).toBeLessThan(1e-13);
});

test("C2 quantiles agree with scipy 1.17.1 and invert their tails", () => {
  const f = worst(oracle.f.map(([p = 0, a = 1, b = 1, q = 0]) => [fQuantile(p, a, b), q] as const));
  const t = worst(oracle.t.map(([level = 0, df = 1, q = 0]) => [studentHalfWidth(level, df), q] as const));
  console.log(`quantiles against scipy: F ${f.toExponential(1)}, t ${t.toExponential(1)}`);
  expect(f).toBeLessThan(1e-9);
  expect(t).toBeLessThan(1e-9);
  for (const [p = 0, a = 1, b = 1] of oracle.f)
    expect(fUpperTail(fQuantile(p, a, b), a, b)).toBeCloseTo(1 - p, 11);
  for (const [level = 0, df = 1] of oracle.t) {
    expect(studentTwoSided(studentHalfWidth(level, df), df)).toBeCloseTo(1 - level, 11);
  }
  for (const [x = 0, p = 0] of oracle.normal) {
    if (p > 1e-30 && p < 0.9999) expect(normalQuantile(p)).toBeCloseTo(x, 12);
  }
  expect(betaTail(betaQuantile(0.01, 3, 200), 3, 200, "lower")).toBeCloseTo(0.01, 12);
});

// NIST/SEMATECH e-Handbook, 1.3.6.7.2 (t) and 1.3.6.7.3 (F), from memory.
test("C2 printed critical values of t and F", () => {
  expect(studentHalfWidth(0.95, 5)).toBeCloseTo(2.571, 3);
  expect(studentHalfWidth(0.95, 10)).toBeCloseTo(2.228, 3);
  expect(fQuantile(0.95, 3, 10)).toBeCloseTo(3.708, 3);
  expect(fQuantile(0.95, 5, 15)).toBeCloseTo(2.901, 3);
});

test("I1 Clopper and Pearson's interval agrees with scipy's exact one", () => {
  let off = 0;
  for (const [k = 0, n = 1, level = 0, low = 0, high = 0] of oracle.clopperPearson) {
    const interval = exactShare(k, n, level, "both");
    off = Math.max(off, Math.abs(interval.low - low), Math.abs(interval.high - high));
  }
  console.log(`exact interval against scipy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-10);
  // One-sided "rule of three" with 0 of n: 1 − 0.05^(1/n).
  expect(exactShare(0, 20, 0.95, "upper").high).toBeCloseTo(1 - 0.05 ** (1 / 20), 12);
});

test("I2 the likelihood interval in closed form where there is one", () => {
  // All right: n·ln p = −z²/2.
  const { low, high } = likelyShare(8, 8, { level: 0.95, sides: "both", floor: 0 });
  expect(low).toBeCloseTo(Math.exp(-(1.959963984540054 ** 2) / 16), 12);
  expect(high).toBe(1);
  // None right with a floor: the best is the floor itself and (1−p)/(1−floor) falls.
  const none = likelyShare(0, 6, { level: 0.95, sides: "both", floor: 0.5 });
  expect(none.low).toBe(0.5);
  expect(none.high).toBeCloseTo(1 - 0.5 * Math.exp(-(1.959963984540054 ** 2) / 12), 12);
});

test("C2 and I1 outside their domain they throw", () => {
  expect(() => betaTail(1.5, 1, 1, "lower")).toThrow("betaTail requires x from 0 to 1, got 1.5");
  expect(() => normalQuantile(1)).toThrow("normalQuantile requires 0 < p < 1, got 1");
  expect(() => exactShare(3, 2, 0.95, "both")).toThrow(
    "exactShare requires whole 0 <= right <= of, got 3 of 2",
  );
  expect(() => exactShare(1, 2, 1, "both")).toThrow("an interval requires 0 < level < 1, got 1");
  expect(() => fUpperTail(1, 0, 2)).toThrow("degrees of freedom > 0, got 0");
  expect(() => atLeast(-1, 0, 0.5)).toThrow(RangeError);
});
