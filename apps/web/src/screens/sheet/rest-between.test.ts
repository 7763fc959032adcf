import { expect, test } from "vitest";
import { begun, clockWords, readRest, secondsLeft, writeRest } from "./rest-between.ts";

const NOW = 1_764_000_000_000;

test("a rest runs on over a reload: what is kept says when it is over", () => {
  const rest = begun({ minutes: 2, until: null }, NOW);
  const again = readRest(writeRest(rest));
  expect(again).toEqual(rest);
  expect([0, 65_000, 119_001, 120_000, 500_000].map((ms) => secondsLeft(again, NOW + ms))).toEqual([
    120, 55, 1, 0, 0,
  ]);
});

test("none wanted, none begun; a clock set back lengthens none; nonsense is none", () => {
  expect(begun({ minutes: 0, until: null }, NOW).until).toBeNull();
  expect(secondsLeft(begun({ minutes: 1, until: null }, NOW), NOW - 3_600_000)).toBe(60);
  for (const text of [null, "", "9", "2 x", "-1"])
    expect(readRest(text)).toEqual({ until: null, minutes: 0 });
});

test("written as a clock", () => {
  expect([0, 9, 65, 300].map((seconds) => clockWords(seconds))).toEqual(["0:00", "0:09", "1:05", "5:00"]);
});
