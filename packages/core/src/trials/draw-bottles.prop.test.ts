import fc from "fast-check";
import { expect, test } from "vitest";
import { drawBottles } from "./index.ts";

const amount = fc.double({ min: 0, max: 700, noNaN: true });
const bottles = fc
  .array(fc.record({ ml: amount, keepMl: amount }), { minLength: 0, maxLength: 5 })
  .map((all) => all.map((one, i) => ({ id: `b${i}`, ...one })));
const sum = (all: readonly number[]): number => all.reduce((so, one) => so + one, 0);

test("T9 no bottle gives more than is free beside what stays in it; what is short is short of all together", () => {
  fc.assert(
    fc.property(bottles, fc.array(amount, { maxLength: 6 }), (shelf, pours) => {
      const { draws, shortMl } = drawBottles(shelf, pours);
      for (const { id, ml, keepMl } of shelf)
        expect(sum(draws.filter(({ bottle }) => bottle === id).map((one) => one.ml))).toBeLessThanOrEqual(
          Math.max(0, ml - keepMl) + 1e-6,
        );
      const free = sum(shelf.map(({ ml, keepMl }) => Math.max(0, ml - keepMl)));
      expect(shortMl).toBeCloseTo(Math.max(0, sum(pours) - free), 5);
      expect(sum(draws.map(({ ml }) => ml)) + shortMl).toBeCloseTo(sum(pours), 5);
    }),
  );
});

test("T9 the first bottle down to what stays in it, the rest of the next", () => {
  const shelf = [
    { id: "a", ml: 60, keepMl: 15 },
    { id: "b", ml: 50, keepMl: 0 },
  ];
  expect(drawBottles(shelf, [30, 40])).toEqual({
    draws: [
      { bottle: "a", pour: 0, ml: 30 },
      { bottle: "a", pour: 1, ml: 15 },
      { bottle: "b", pour: 1, ml: 25 },
    ],
    shortMl: 0,
  });
  expect(drawBottles(shelf, [100]).shortMl).toBe(5);
});

test("T9 amounts that are none", () => {
  expect(() => drawBottles([{ id: "a", ml: -1, keepMl: 0 }], [])).toThrow(
    "a requires 0 mL or more, got -1 mL",
  );
  expect(() => drawBottles([{ id: "a", ml: 1, keepMl: Number.NaN }], [])).toThrow("what stays in a requires");
  expect(() => drawBottles([], [Infinity])).toThrow("pour 1 requires 0 mL or more, got Infinity mL");
});
