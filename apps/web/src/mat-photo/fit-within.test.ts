import fc from "fast-check";
import { expect, test } from "vitest";
import { fitWithin } from "./fit-within.ts";

test("the longer side comes down to the most, the shorter in proportion; a small picture stays", () => {
  expect(fitWithin(4032, 3024, 1600)).toEqual({ width: 1600, height: 1200 });
  expect(fitWithin(3024, 4032, 1600)).toEqual({ width: 1200, height: 1600 });
  expect(fitWithin(800, 600, 1600)).toEqual({ width: 800, height: 600 });
});

test("law: within the most, at least a pixel, proportions kept to a pixel", () => {
  const side = fc.integer({ min: 1, max: 20_000 });
  fc.assert(
    fc.property(side, side, (width, height) => {
      const fit = fitWithin(width, height, 1600);
      expect(Math.max(fit.width, fit.height)).toBeLessThanOrEqual(1600);
      expect(Math.min(fit.width, fit.height)).toBeGreaterThanOrEqual(1);
      const share = Math.min(1, 1600 / Math.max(width, height));
      expect(Math.abs(fit.width - Math.max(1, width * share))).toBeLessThanOrEqual(0.5);
    }),
  );
});
