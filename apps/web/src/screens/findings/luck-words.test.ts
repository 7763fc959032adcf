import { expect, test } from "vitest";
import { luckVerdict, printP } from "./luck-words.ts";

test("the verdict follows the levels of the headline, 0.2, 0.05 and 0.01, each on its own side", () => {
  expect([0.2, 0.1999, 0.05, 0.0499, 0.01, 0.0099].map(luckVerdict)).toEqual([
    "Could well be luck",
    "Luck is not ruled out",
    "Luck is not ruled out",
    "Hard to put down to luck",
    "Hard to put down to luck",
    "Very hard to put down to luck",
  ]);
});

test("three figures, small ones as a power of ten", () => {
  expect([1, 0.125, 11 / 120, 0.000123, 0.0000123, 0].map(printP)).toEqual([
    "1",
    "0.125",
    "0.0917",
    "0.000123",
    "1.2 × 10⁻⁵",
    "0",
  ]);
});
