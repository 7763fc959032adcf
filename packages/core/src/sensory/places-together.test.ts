import { expect, test } from "vitest";
import { placesTogether } from "./index.ts";

test("first of three, twice, and second of four: by hand", () => {
  const found = placesTogether([
    { place: 1, of: 3, level: 1 },
    { place: 1, of: 3, level: 1 },
    { place: 2, of: 4, level: 1 },
  ]);
  expect(found.first).toBe(2);
  expect(found.byLuck).toBeCloseTo(2 / 3 + 1 / 4, 14);
  // Two of the three or all: 1/9 · 3/4 + 2 · (1/3 · 2/3) · 1/4 + 1/9 · 1/4 = 2/9.
  expect(found.pAtLeast).toBeCloseTo(2 / 9, 14);
  expect(found.ahead).toBeCloseTo((1 + 1 + 2 / 3) / 3, 14);
});

test("a tie at the front is no first place; a place beyond the glasses is refused", () => {
  expect(placesTogether([{ place: 1.5, of: 3, level: 2 }]).first).toBe(0);
  expect(placesTogether([{ place: 1.5, of: 3, level: 2 }]).pAtLeast).toBe(1);
  expect(() => placesTogether([{ place: 4, of: 3, level: 1 }])).toThrow("got 4 of 3");
  expect(() => placesTogether([])).toThrow("got none");
});
