import fc from "fast-check";
import { expect, test } from "vitest";
import { type Bound, chooseRuns, keeps, logDeterminantOf, pourInSteps } from "./index.ts";

const bounds: Bound[] = [
  { low: 0.2, high: 0.6 },
  { low: 0.1, high: 0.6 },
  { low: 0.1, high: 0.5 },
];

test("T3 chosen runs keep the bounds and add up to 1", () => {
  for (const criterion of ["D", "I"] as const) {
    const { runs } = chooseRuns({ criterion, model: "quadratic", bounds, runs: 8 }) ?? { runs: [] };
    expect(runs.length).toBe(8);
    for (const shares of runs) {
      expect(keeps(bounds, shares)).toBe(true);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 10);
    }
  }
});

test("T5 chosen for I, predictions vary no more than of the D plan, and D's determinant is the larger", () => {
  for (const model of ["quadratic", "special-cubic"] as const) {
    const of = (criterion: "D" | "I") => chooseRuns({ criterion, model, bounds, runs: 10 });
    const [d, i] = [of("D"), of("I")];
    expect(i?.meanVariance ?? 1).toBeLessThanOrEqual((d?.meanVariance ?? 0) + 1e-9);
    expect(d?.logDeterminant ?? 0).toBeGreaterThanOrEqual((i?.logDeterminant ?? 0) - 1e-9);
  }
});

test("T6 what is known counts: three more beside four tell more than three blind to them", () => {
  const known = [
    [0.6, 0.3, 0.1],
    [0.2, 0.6, 0.2],
    [0.3, 0.2, 0.5],
    [0.4, 0.3, 0.3],
  ];
  const found = chooseRuns({ criterion: "D", model: "quadratic", bounds, runs: 3, known });
  const together = logDeterminantOf("quadratic", [...known, ...(found?.runs ?? [])]);
  expect(together).toBeCloseTo(found?.logDeterminant ?? 0, 8);
  const blind = chooseRuns({ criterion: "D", model: "quadratic", bounds, runs: 6 })?.runs.slice(0, 3) ?? [];
  expect(together).toBeGreaterThanOrEqual(logDeterminantOf("quadratic", [...known, ...blind]));
});

test("T7 pours are whole steps, fill the glass, keep the shares, and no smaller amount would", () => {
  const share = fc.double({ min: 0.05, max: 1, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(share, { minLength: 2, maxLength: 4 }),
      fc.constantFrom(0.1, 0.2, 0.5, 1),
      (raw, step) => {
        const all = raw.reduce((sum, one) => sum + one, 0);
        const shares = raw.map((one) => one / all);
        const stepMl = raw.map(() => step);
        const limits = { leastMl: 20, mostMl: 100, stepMl, within: 0.01 };
        const made = pourInSteps(shares, limits);
        expect(made.totalMl).toBeGreaterThanOrEqual(20 - 1e-9);
        expect(made.totalMl).toBeLessThanOrEqual(100 + 1e-9);
        for (const ml of made.ml) expect(Math.abs(ml / step - Math.round(ml / step))).toBeLessThan(1e-6);
        expect(made.off).toBeLessThanOrEqual(0.01 + 1e-9);
        // Every smaller total of whole steps, each part rounded to the nearest, is farther off or too little.
        for (let total = 20; total < made.totalMl - step / 2; total += step) {
          const ml = shares.map((one) => Math.max(1, Math.round((one * total) / step)) * step);
          const sum = ml.reduce((a, b) => a + b, 0);
          if (sum > made.totalMl - step / 2) continue;
          const off = Math.max(...ml.map((part, i) => Math.abs(part / sum - (shares[i] as number))));
          expect(sum < 20 - 1e-9 || off > 0.01 + 1e-12).toBe(true);
        }
      },
    ),
  );
});

test("T7 halves of a 1 mL syringe need 20 mL; a seventh needs more; what never fits is the closest", () => {
  const limits = { leastMl: 20, mostMl: 100, within: 0.01 };
  expect(pourInSteps([0.5, 0.5], { ...limits, stepMl: [1, 1] })).toMatchObject({ ml: [10, 10], off: 0 });
  expect(pourInSteps([1, 0, 0], { ...limits, stepMl: [1, 1, 1] }).ml).toEqual([20, 0, 0]);
  const seventh = pourInSteps([1 / 7, 6 / 7], { ...limits, stepMl: [1, 1], within: 0.001 });
  expect(seventh.ml).toEqual([3, 18]);
  const coarse = pourInSteps([0.03, 0.97], { ...limits, mostMl: 30, stepMl: [5, 5], within: 0.001 });
  expect(coarse.ml[0]).toBe(5);
  expect(coarse.off).toBeGreaterThan(0.1);
  expect(() => pourInSteps([1, 0], { ...limits, stepMl: [0, 1] })).toThrow("more than 0 mL");
});

test("T8 asked twice, the same plan", () => {
  const asked = { criterion: "D", model: "quadratic", bounds, runs: 7 } as const;
  expect(chooseRuns(asked)).toEqual(chooseRuns(asked));
});
