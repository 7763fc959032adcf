import { expect, test } from "vitest";
import {
  anytimeInterval,
  anytimeP,
  logEvidence,
  sequentialRisks,
  type Verdict,
  waldLines,
  type WaldTest,
} from "./index.ts";
import { seeded } from "./fixtures/seeded.ts";

const long = process.env["PARTSPROOF_LONG"] === "1";

test("Q1 the evidence is what integrating the likelihood over the cut law gives", () => {
  // Even mixture over p > 1/2 after 5 of 5: ∫ 2·p⁵ dp / (1/2)⁵ from 1/2 to 1 = (2/6)(1 − 2⁻⁶)·32.
  expect(logEvidence(5, 5, { p0: 0.5, shows: "above" })).toBeCloseTo(Math.log((32 * (1 - 2 ** -6)) / 3), 12);
  // Over p < 1/2 after 0 of 3: 2∫(1 − p)³ / (1/2)³ = (8·2/4)(1 − 2⁻⁴).
  expect(logEvidence(0, 3, { p0: 0.5, shows: "below" })).toBeCloseTo(Math.log(4 * (1 - 2 ** -4)), 12);
  expect(logEvidence(0, 0, { p0: 0.3, shows: "above" })).toBeCloseTo(0, 12);
  expect(() => logEvidence(1, 1, { p0: 0.3, shows: "below", floor: 0.5 })).toThrow(
    "a floor below p0 = 0.3, got 0.5",
  );
});

test("Q2 under p0 the evidence is a martingale: its expectation after a trial more is what it was", () => {
  for (const p0 of [0.1, 1 / 3, 0.5, 0.8]) {
    for (const shows of ["above", "below"] as const) {
      for (let n = 0; n < 25; n += 3) {
        for (let k = 0; k <= n; k += 1) {
          const at = (right: number, of: number) => Math.exp(logEvidence(right, of, { p0, shows }));
          const next = p0 * at(k + 1, n + 1) + (1 - p0) * at(k, n + 1);
          expect(next / at(k, n)).toBeCloseTo(1, 9);
        }
      }
    }
  }
});

test("Q3 looked at after every trial, it is wrong at most as often as it says: every path gone through", () => {
  const most = long ? 2000 : 200;
  const lines: string[] = [];
  for (const [p0, alpha] of [
    [1 / 3, 0.05],
    [0.5, 0.05],
    [0.1, 0.05],
    [1 / 3, 0.01],
  ] as const) {
    const bar = -Math.log(alpha);
    const verdict = (right: number, n: number): Verdict =>
      logEvidence(right, n, { p0, shows: "above" }) >= bar ? "upper" : "go on";
    const found = sequentialRisks(verdict, p0, most).upper;
    lines.push(`${(100 * found).toFixed(2)} % at ${(100 * alpha).toFixed(0)} %`);
    expect(found).toBeLessThanOrEqual(alpha);
    expect(found).toBeGreaterThan(alpha / 5);
    // A chance below p0 is refuted no more often.
    expect(sequentialRisks(verdict, p0 * 0.9, 100).upper).toBeLessThan(alpha);
  }
  console.log(`LONG any moment | up to ${most} trials, every path | false findings ${lines.join(", ")}`);
}, 60_000);

test("Q3 likewise for likeness, and the interval that holds at every moment", () => {
  const { upper } = sequentialRisks(
    (right, n) =>
      logEvidence(right, n, { p0: 0.6, shows: "below", floor: 1 / 3 }) >= Math.log(20) ? "upper" : "go on",
    0.6,
    200,
  );
  expect(upper).toBeLessThanOrEqual(0.05);
  const rng = seeded(61);
  const runs = long ? 4000 : 250;
  let missed = 0;
  for (let run = 0; run < runs; run += 1) {
    const p = 0.3 + rng.below(600) / 1000;
    const results = Array.from({ length: 60 }, () => rng.below(1_000_000) < p * 1_000_000);
    const { low, high } = anytimeInterval(results, 0.95);
    if (p < low || p > high) missed += 1;
  }
  console.log(
    `LONG interval at every moment | ${runs} runs of 60 trials | missed ${((100 * missed) / runs).toFixed(2)} %`,
  );
  expect(missed / runs).toBeLessThan(0.05);
});

test("Q3 the p that may be looked at never rises, and a long run of right answers makes it small", () => {
  const results = [true, true, false, true, true, true, true, true, false, true];
  const ps = results.map((_, i) => anytimeP(results.slice(0, i + 1), { p0: 1 / 3, shows: "above" }));
  ps.slice(1).forEach((p, i) => expect(p).toBeLessThanOrEqual(ps[i] as number));
  expect(ps.at(-1)).toBeLessThan(0.05);
  expect(anytimeP([], { p0: 1 / 3, shows: "above" })).toBe(1);
});

test("Q4 Wald's lines are where the likelihood ratio crosses", () => {
  const plan: WaldTest = { p0: 1 / 3, p1: 2 / 3, alpha: 0.05, beta: 0.1 };
  // Ratio 2^(2k−n): ln 18 / ln 2 = 4.17 and ln(0.1/0.95) / ln 2 = −3.25.
  expect(waldLines(plan, 10)).toEqual({ upper: 8, lower: 3 });
  expect(waldLines(plan, 5)).toEqual({ upper: 5, lower: 0 });
  expect(() => waldLines({ ...plan, p1: 0.3 }, 3)).toThrow("waldLines requires 0 < p0 < p1 < 1");
});

test("Q4 Wald's promise holds: each risk within its bound, both together within their sum; every path gone through", () => {
  const lines: string[] = [];
  for (const [p0, p1] of [
    [1 / 3, 2 / 3],
    [0.5, 0.75],
    [0.1, 0.5],
  ] as const) {
    const plan: WaldTest = { p0, p1, alpha: 0.05, beta: 0.1 };
    const verdict = (right: number, n: number): Verdict => {
      const { upper, lower } = waldLines(plan, n);
      return right >= upper ? "upper" : right <= lower ? "lower" : "go on";
    };
    const nothing = sequentialRisks(verdict, p0, 300);
    const something = sequentialRisks(verdict, p1, 300);
    expect(nothing.upper).toBeLessThanOrEqual(0.05 / 0.9);
    expect(something.lower).toBeLessThanOrEqual(0.1 / 0.95);
    expect(nothing.upper + something.lower).toBeLessThanOrEqual(0.15);
    expect(nothing.undecided).toBeLessThan(1e-6);
    expect(nothing.upper + nothing.lower + nothing.undecided).toBeCloseTo(1, 12);
    lines.push(
      `${(100 * nothing.upper).toFixed(1)} and ${(100 * something.lower).toFixed(1)} % in ${something.expectedTrials.toFixed(1)} trials`,
    );
  }
  console.log(`LONG Wald | alpha 5 %, beta 10 %, every path | ${lines.join(", ")}`);
});
