import { expect, test } from "vitest";
import { glassMarks } from "./glass-marks.ts";

test("one number is one whiskey on the map and in the table of mix-ups; its pours have letters", () => {
  const glasses = ["wick", "lamp", "wick", "loud"].map((name) => ({ name }));
  const names = ["kettle", "lamp", "wick"].map((key) => ({ key }));
  expect(glassMarks(glasses, names)).toEqual(["3a", "2", "3b", "4"]);
  expect(glassMarks(glasses)).toEqual(["1a", "2", "1b", "3"]);
});
