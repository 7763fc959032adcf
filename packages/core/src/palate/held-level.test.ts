import { expect, test } from "vitest";
import { heldLevel } from "./held-level.ts";

// Against plain sums over the normal density in steps of a thousandth of a standard deviation.
test.each([
  [-1, 1],
  [0.3, 1.5],
  [5, 1],
  [9.6, 2],
  [12, 0.5],
  [5, 6],
])("a level of %f ± %f held within the scale", (mean, sd) => {
  let [weight, first, second] = [0, 0, 0];
  for (let z = -9; z <= 9; z += 0.001) {
    const by = Math.exp((-z * z) / 2);
    const x = Math.min(10, Math.max(0, mean + sd * z));
    weight += by;
    first += by * x;
    second += by * x * x;
  }
  const found = heldLevel({ mean, sd }, 0.95);
  expect(found.mean).toBeCloseTo(first / weight, 4);
  expect(found.sd).toBeCloseTo(Math.sqrt(second / weight - (first / weight) ** 2), 3);
  expect(found.low).toBeCloseTo(Math.min(10, Math.max(0, mean - 1.959964 * sd)), 5);
  expect(found.high).toBeCloseTo(Math.min(10, Math.max(0, mean + 1.959964 * sd)), 5);
});
