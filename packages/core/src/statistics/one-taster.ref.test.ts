import fc from "fast-check";
import { expect, test } from "vitest";
import { leastSquares } from "../numeric/index.ts";
import { arrangements } from "./arrangements.ts";
import { brier, kendallTau, mixtureFit, rankingPower, repeatableRng } from "./index.ts";
import published from "./mixture.published.json" with { type: "json" };

test("J1 Scheffé's quadratic mixture: yarn elongation (Cornell), fit by R", () => {
  const fit = mixtureFit(["x1", "x2", "x3"], published.runs, "quadratic");
  if (!fit.ok) throw new Error(fit.code);
  const { coef, se, sigma, df, r2_centred: rSquared } = published.fit;
  const off = Math.max(
    ...Object.entries(coef).map(([term, value]) => Math.abs((fit.coefficients[term] ?? 0) - value)),
    ...Object.entries(se).map(([term, value]) => Math.abs((fit.standardErrors[term] ?? 0) - value)),
    Math.abs(fit.sigma - sigma),
    Math.abs((fit.rSquared ?? 0) - rSquared),
  );
  console.log(`mixture against R: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-9);
  expect(fit.df).toBe(df);
  expect(Object.keys(fit.coefficients)).toEqual(Object.keys(coef));
  // Two runs at x1 alone: the expectation there is their own mean, its error sigma/√2.
  const { value, interval } = fit.expected([1, 0, 0]);
  expect(value).toBeCloseTo(11.7, 10);
  expect((interval.high - interval.low) / 2).toBeCloseTo((2.262157162740992 * sigma) / Math.SQRT2, 9);
});

test("J1 too few runs and mixtures that can't be told apart are said, not fitted", () => {
  const runs = [1, 2, 3, 4, 5, 6, 7].map((y) => ({ x: [0.5, 0.5], y }));
  expect(mixtureFit(["a", "b"], runs, "linear")).toMatchObject({ ok: false, code: "terms_not_separable" });
  expect(mixtureFit(["x1", "x2", "x3"], published.runs.slice(0, 6), "special-cubic")).toMatchObject({
    code: "no_degrees_left",
    terms: 7,
  });
  expect(() => mixtureFit(["a", "b"], [{ x: [0.5, 0.6], y: 1 }], "linear")).toThrow(
    "shares >= 0 that add up to 1 in run 0, got [0.5, 0.6]",
  );
});

test("J2 least squares: residuals stand square on the design", () => {
  const tables = fc.array(
    fc.tuple(
      fc.integer({ min: -9, max: 9 }),
      fc.integer({ min: -9, max: 9 }),
      fc.integer({ min: -99, max: 99 }),
    ),
    { minLength: 4, maxLength: 9 },
  );
  fc.assert(
    fc.property(tables, (rows) => {
      const design = rows.map(([a, b]) => [1, a, b]);
      const fit = leastSquares(
        design,
        rows.map(([, , y]) => y),
      );
      if (fit === null) return;
      const left = rows.map(
        ([a, b, y]) =>
          y - (fit.coefficients[0] ?? 0) - a * (fit.coefficients[1] ?? 0) - b * (fit.coefficients[2] ?? 0),
      );
      for (let j = 0; j < 3; j += 1) {
        expect(
          Math.abs(design.reduce((sum, row, i) => sum + (row[j] ?? 0) * (left[i] ?? 0), 0)),
        ).toBeLessThan(1e-8);
      }
      expect(fit.residual).toBeCloseTo(
        left.reduce((sum, x) => sum + x * x, 0),
        7,
      );
    }),
  );
});

test("J3 Kendall's tau: exact p counted over every order, ties by scipy 1.17.1's approximation", () => {
  const y = [2, 1, 4, 3, 6, 5];
  const found = kendallTau([1, 2, 3, 4, 5, 6], y);
  let [all, atLeast] = [0, 0];
  for (const order of arrangements([1, 2, 3, 4, 5, 6])) {
    all += 1;
    if (kendallTau([1, 2, 3, 4, 5, 6], order).same >= found.same) atLeast += 1;
  }
  expect(found.pSame).toBeCloseTo(atLeast / all, 14);
  expect(found.p).toBeCloseTo(2 * found.pSame, 14);
  expect(found.tau).toBeCloseTo(0.6, 12);
  const ties = kendallTau([1, 2, 2, 3, 5, 5, 7], [2, 2, 4, 3, 3, 5, 9]);
  expect(ties.tau).toBeCloseTo(0.6842105263157894, 10);
  expect(ties.p).toBeCloseTo(0.041136383569940586, 10);
  expect(kendallTau([1, 1], [1, 2])).toMatchObject({ tau: null, p: 1 });
  expect(() => kendallTau([1], [1])).toThrow("2 pairs or more, got 1");
});

test("J4 Brier's score and Murphy's parts add up, by hand and always", () => {
  expect(
    brier([
      { confidence: 0.9, right: true },
      { confidence: 0.6, right: false },
    ]).score,
  ).toBeCloseTo(0.185, 12);
  fc.assert(
    fc.property(
      fc.array(fc.record({ confidence: fc.constantFrom(0, 0.25, 0.5, 0.75, 1), right: fc.boolean() }), {
        minLength: 1,
        maxLength: 30,
      }),
      (said) => {
        const { score, reliability, resolution, baseline } = brier(said);
        expect(score).toBeCloseTo(reliability - resolution + baseline, 12);
      },
    ),
  );
  expect(() => brier([])).toThrow("at least 1 statement, got 0");
  expect(() => brier([{ confidence: 90, right: true }])).toThrow("a confidence from 0 to 1, got 90");
});

test("J5 power of rankings by simulation: alpha at most where nothing differs, near 1 where much does, the same again", () => {
  const tables = process.env["PARTSPROOF_LONG"] === "1" ? 4000 : 300;
  const at = (logWorth: readonly number[], judges: number) =>
    rankingPower({ logWorth, judges, alpha: 0.05 }, repeatableRng(19), tables);
  const [nothing, some, much] = [at([0, 0, 0, 0], 6), at([1.5, 0, 0, 0], 6), at([4, 2, 0, -2], 8)];
  console.log(
    `LONG ranking power | 6 sheets of 4, ${tables} tables | nothing there ${(100 * nothing.power).toFixed(1)} %, one ahead by 1.5 ${(100 * some.power).toFixed(1)} %; 8 sheets, steps of 2: ${(100 * much.power).toFixed(1)} %`,
  );
  expect(nothing.interval.low).toBeLessThan(0.05);
  expect(much.power).toBeGreaterThan(0.98);
  expect(some.power).toBeGreaterThan(nothing.power);
  expect(Math.abs(nothing.bestFirst - 0.25)).toBeLessThan(0.1);
  expect(at([1.5, 0, 0, 0], 6)).toEqual(some);
  expect(() => at([0], 3)).toThrow("2 items or more, got 1");
});
