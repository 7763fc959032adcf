import { expect, test } from "vitest";
import { climb } from "./climb.ts";

// Rosenbrock's valley, the usual trial of such methods: minimum 0 at (1, 1), from its usual start.
test("finds the end of a bent valley", () => {
  const valley = (x: Float64Array) => {
    const [a, b] = [x[0] as number, x[1] as number];
    return {
      value: -((1 - a) ** 2 + 100 * (b - a * a) ** 2),
      gradient: Float64Array.of(2 * (1 - a) + 400 * a * (b - a * a), -200 * (b - a * a)),
    };
  };
  const { at, steps } = climb(valley, Float64Array.of(-1.2, 1), Float64Array.of(1, 1), { gain: 1e-14 });
  expect(at[0]).toBeCloseTo(1, 5);
  expect(at[1]).toBeCloseTo(1, 5);
  expect(steps).toBeLessThan(60);
});

test("a start at the top is the answer; no numbers at all are no fault", () => {
  const flat = (x: Float64Array) => ({ value: 0, gradient: x.map(() => 0) });
  expect(climb(flat, Float64Array.of(2), Float64Array.of(1))).toMatchObject({ steps: 0 });
  expect(climb(flat, new Float64Array(0), new Float64Array(0)).at).toHaveLength(0);
});
