import fc from "fast-check";
import { expect, test } from "vitest";
import { stackDots, tallest } from "./stack-dots.ts";

test("no dot hides another, and the first of each value stands on the line", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 12 }), (values) => {
      const dots = stackDots(values, (value) => value);
      const spots = dots.map(({ value, step }) => `${value} ${step}`);
      expect(new Set(spots).size).toBe(values.length);
      for (const value of new Set(values)) {
        expect(dots.find((dot) => dot.value === value)?.step).toBe(0);
      }
      const most = Math.max(0, ...values.map((one) => values.filter((other) => other === one).length));
      expect(tallest(dots)).toBe(Math.floor(most / 2));
    }),
  );
});
