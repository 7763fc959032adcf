import { expect, test } from "vitest";
import oracle from "./estimate-d-prime.oracle.json" with { type: "json" };
import {
  CHANCE_RIGHT,
  type DifferenceTest,
  differenceNeeds,
  differenceP,
  differencePower,
  estimateDPrime,
  likenessCritical,
  likenessNeeds,
  likenessP,
  likenessPower,
  probabilityRight,
} from "./index.ts";

const all = Object.keys(CHANCE_RIGHT) as DifferenceTest[];

test("E3 d′ and its likelihood interval agree with scipy within 1e-8", () => {
  let off = 0;
  for (const { test: name, right, of, level, dPrime, low, high } of oracle.estimates) {
    const got = estimateDPrime({ test: name as DifferenceTest, right, of }, { level });
    expect(got.dPrime === Infinity).toBe(dPrime === null);
    expect(got.interval.high === Infinity).toBe(high === null);
    if (dPrime !== null) off = Math.max(off, Math.abs(got.dPrime - dPrime));
    if (high !== null) off = Math.max(off, Math.abs(got.interval.high - high));
    off = Math.max(off, Math.abs(got.interval.low - low));
  }
  console.log(`d′ and interval ends against scipy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-8);
});

test("E4 exact p: triangle with 10 of 15 right, from the fractions", () => {
  // Σ C(15,k)·2^(15−k) / 3^15 for k = 10 to 15.
  const cases = [3003 * 32, 1365 * 16, 455 * 8, 105 * 4, 15 * 2, 1].reduce((sum, x) => sum + x, 0);
  expect(differenceP({ test: "triangle", right: 10, of: 15 })).toBeCloseTo(cases / 3 ** 15, 14);
  expect(differenceP({ test: "two_afc", right: 2, of: 12 }, 2)).toBe(
    differenceP({ test: "two_afc", right: 10, of: 12 }, 2),
  );
  expect(differenceP({ test: "two_afc", right: 6, of: 12 }, 2)).toBe(1);
  expect(differenceP({ test: "two_out_of_five", right: 2, of: 2 })).toBeCloseTo(0.01, 15);
  expect(() => differenceP({ test: "triangle", right: 3, of: 4 }, 2)).toThrow(
    "differenceP requires two_afc for two sides, got triangle",
  );
  expect(() => differenceP({ test: "triangle", right: 5, of: 4 })).toThrow(
    "requires whole 0 <= right <= of, got 5 of 4",
  );
});

test("E5 power and critical counts for a difference and for likeness agree with scipy", () => {
  let off = 0;
  for (const [name, dPrime, n, alpha, , p] of oracle.power as [
    DifferenceTest,
    number,
    number,
    number,
    number,
    number,
  ][]) {
    off = Math.max(off, Math.abs(differencePower(name, n, { dPrime }, alpha) - p));
  }
  for (const [name, dPrime, n, alpha, critical, p] of oracle.likeness as [
    DifferenceTest,
    number,
    number,
    number,
    number,
    number,
  ][]) {
    expect(likenessCritical(name, n, { dPrime }, alpha)).toBe(critical);
    off = Math.max(
      off,
      Math.abs(likenessPower(name, n, { matters: { dPrime }, there: { dPrime: 0 }, alpha }) - p),
    );
  }
  console.log(`power of difference and likeness against scipy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-10);
});

// ISO 4120 table A.3, alpha 0.05, three cells from memory: pd 50 %, beta 0.2, 0.1 and 0.05.
test.each([
  [0.2, 16],
  [0.1, 20],
  [0.05, 23],
])("E6 triangle, half can tell, beta %d: %i assessors", (beta, n) => {
  expect(differenceNeeds("triangle", { there: { share: 0.5 }, alpha: 0.05, beta })?.smallest).toBe(n);
});

test("E6 the first n has the power, the one before has not, and from the stable n on none falls short", () => {
  for (const name of all) {
    const ask = { there: { dPrime: 2 }, alpha: 0.05, beta: 0.2 } as const;
    const needs = differenceNeeds(name, ask);
    if (needs === null) throw new Error(`no n for ${name}`);
    const power = (n: number): number => differencePower(name, n, ask.there, ask.alpha);
    expect(power(needs.smallest)).toBeGreaterThanOrEqual(0.8);
    expect(power(needs.smallest - 1)).toBeLessThan(0.8);
    if (needs.stable > 1) expect(power(needs.stable - 1)).toBeLessThan(0.8);
    for (let n = needs.stable; n < needs.stable + 30; n += 1) expect(power(n)).toBeGreaterThanOrEqual(0.8);
    const alike = { matters: { dPrime: 1.5 }, there: { dPrime: 0 }, alpha: 0.1 } as const;
    const enough = likenessNeeds(name, { ...alike, beta: 0.2 });
    if (enough === null) throw new Error(`no n for likeness by ${name}`);
    expect(likenessPower(name, enough.smallest, alike)).toBeGreaterThanOrEqual(0.8);
    expect(likenessPower(name, enough.smallest - 1, alike)).toBeLessThan(0.8);
    expect(likenessCritical(name, enough.smallest, alike.matters, 0.1)).toBe(enough.criticalAtSmallest);
  }
  expect(() => differenceNeeds("triangle", { there: { share: 0 }, alpha: 0.05, beta: 0.2 })).toThrow(
    "an effect above 0",
  );
  expect(() => likenessP({ test: "triangle", right: 1, of: 3 }, { share: 2 })).toThrow(
    "a share requires 0 to 1, got 2",
  );
}, 30_000);

/** P(right answers = k) by the ratio of neighbouring terms. */
function binomialLaw(n: number, p: number): number[] {
  const law = [(1 - p) ** n];
  for (let k = 1; k <= n; k += 1) law.push(((law[k - 1] as number) * (n - k + 1) * p) / (k * (1 - p)));
  return law;
}

test("E7 coverage, every outcome counted: exact intervals 95 % or more at every truth, likelihood near it", () => {
  const long = process.env["PARTSPROOF_LONG"] === "1";
  const sizes = long ? [3, 4, 5, 6, 8, 10, 12, 15, 20, 24, 30, 40, 60] : [3, 6, 12, 24];
  const names = long ? all : all.filter((name) => name !== "two_out_of_five");
  const lowest = { exact: 1, likely: 1, bound: 1 };
  let [sum, truths] = [0, 0];
  for (const name of names) {
    for (const n of sizes) {
      const outcomes = Array.from({ length: n + 1 }, (_, right) => ({
        both: estimateDPrime({ test: name, right, of: n }),
        lower: estimateDPrime({ test: name, right, of: n }, { sides: "lower" }),
      }));
      for (let d = 0; d <= 4; d += long ? 0.1 : 0.5) {
        const law = binomialLaw(n, probabilityRight(name, d));
        const covered = (low: (k: number) => number, high: (k: number) => number): number =>
          law.reduce((total, p, k) => total + (low(k) <= d + 1e-9 && d - 1e-9 <= high(k) ? p : 0), 0);
        const at = (k: number) => outcomes[k] as (typeof outcomes)[0];
        const exact = covered(
          (k) => at(k).both.exactInterval.low,
          (k) => at(k).both.exactInterval.high,
        );
        const likely = covered(
          (k) => at(k).both.interval.low,
          (k) => at(k).both.interval.high,
        );
        const bound = covered(
          (k) => at(k).lower.exactInterval.low,
          () => Infinity,
        );
        lowest.exact = Math.min(lowest.exact, exact);
        lowest.likely = Math.min(lowest.likely, likely);
        lowest.bound = Math.min(lowest.bound, bound);
        sum += likely;
        truths += 1;
      }
    }
  }
  console.log(
    `LONG d′ intervals | ${names.length} tests, n ${sizes[0]} to ${sizes.at(-1)}, ${truths} truths, every outcome | exact covers ${(100 * lowest.exact).toFixed(1)} % or more (one-sided ${(100 * lowest.bound).toFixed(1)} %), likelihood ${((100 * sum) / truths).toFixed(1)} % on average, ${(100 * lowest.likely).toFixed(1)} % at worst`,
  );
  expect(lowest.exact).toBeGreaterThanOrEqual(0.95);
  expect(lowest.bound).toBeGreaterThanOrEqual(0.95);
  expect(sum / truths).toBeGreaterThan(0.94);
}, 600_000);
