import { expect, test } from "vitest";
import { filled, typedNumber, typedNumbers } from "./typed-number.ts";

test("numbers are read with a point or a comma, and what is none is kept to be refused", () => {
  expect(["12", " 0,5 ", "-1.5", "", "ten", "1e999"].map(typedNumber)).toEqual([
    12,
    0.5,
    -1.5,
    undefined,
    "ten",
    "1e999",
  ]);
  expect(typedNumbers("1, 0.5 0;0")).toEqual([1, 0.5, 0, 0]);
  expect([typedNumbers(" "), typedNumbers("2,x")]).toEqual([undefined, [2, "x"]]);
  expect(filled({ a: 1, b: undefined, c: null })).toEqual({ a: 1, c: null });
});
