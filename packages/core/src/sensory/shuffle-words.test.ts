import fc from "fast-check";
import { expect, test } from "vitest";
import { arrangements } from "../statistics/index.ts";
import { shuffleWords } from "./index.ts";

test("U1 five glasses: 8 of 120 shuffles leave all in or next to their place, and it says that this exposes little", () => {
  const still = shuffleWords([0, 1, 2, 3, 4]);
  expect(still.nearPlace.fractionAtLeast(5)).toEqual({ numerator: 1n, denominator: 15n });
  expect(still.inPlace.fractionAtLeast(5)).toEqual({ numerator: 1n, denominator: 120n });
  expect(still.said).toEqual([
    "5 glasses of 5 stand where they stood before. How often a fair shuffle leaves as many or more: one in 120.",
    "5 glasses of 5 stand there or next to it. How often a fair shuffle leaves as many or more: one in 15.",
    "With 5 glasses this exposes little: of fair shuffles one in 15 leaves all of them there or next to it.",
  ]);
  const moved = shuffleWords([2, 1, 4, 0, 3]);
  expect(moved.said.slice(0, 2)).toEqual([
    "1 glass of 5 stands where it stood before. How often a fair shuffle leaves as many or more: about 63 in 100.",
    "2 glasses of 5 stand there or next to it. How often a fair shuffle leaves as many or more: about 80 in 100.",
  ]);
});

test("U1 the chances are counted over every shuffle, up to five glasses", () => {
  for (let n = 2; n <= 5; n += 1) {
    const all = Array.from(arrangements([...Array(n).keys()]), (order) => [...order]);
    const near = (order: readonly number[], reach: number): number =>
      order.filter((place, i) => Math.abs(place - i) <= reach).length;
    for (const ended of all) {
      const { pInPlace, pNearPlace } = shuffleWords(ended);
      expect(pInPlace).toBe(all.filter((order) => near(order, 0) >= near(ended, 0)).length / all.length);
      expect(pNearPlace).toBe(all.filter((order) => near(order, 1) >= near(ended, 1)).length / all.length);
    }
  }
});

test("U2 whatever the shuffle, it is called neither real nor fake", () => {
  const shuffles = fc
    .integer({ min: 2, max: 12 })
    .chain((n) => fc.shuffledSubarray([...Array(n).keys()], { minLength: n, maxLength: n }));
  fc.assert(
    fc.property(shuffles, (ended) => {
      const text = shuffleWords(ended).said.join(" ");
      expect(text).not.toMatch(
        /real|fake|sham|cheat|honest|genuine|suspicious|not shuffled|was shuffled|proof|proves/i,
      );
      expect(text.includes("exposes little")).toBe(ended.length <= 6);
      expect(text).not.toMatch(/NaN|undefined|everybody|nobody/);
    }),
  );
});

test("U1 places that are none throw", () => {
  expect(() => shuffleWords([0, 0])).toThrow("places 0 to n - 1 of 2 to 12 glasses, got [0,0]");
  expect(() => shuffleWords([0])).toThrow(RangeError);
});
