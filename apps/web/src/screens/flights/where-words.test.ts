import { expect, test } from "vitest";
import { whereWords } from "./where-words.ts";

test("in a row the glass, in sets and rounds which of them", () => {
  expect(whereWords(3, { setsEach: 0, glassesEach: 5, method: null })).toBe("at glass 3 of their row");
  // Two triangles: glasses 1 to 3 are the first, 4 to 6 the second.
  const triangle = { setsEach: 2, glassesEach: 6, method: "triangle" } as const;
  expect([1, 3, 4, 6].map((position) => whereWords(position, triangle))).toEqual([
    "at set 1 of 2, glass 1",
    "at set 1 of 2, glass 3",
    "at set 2 of 2, glass 1",
    "at set 2 of 2, glass 3",
  ]);
  expect(whereWords(5, { setsEach: 2, glassesEach: 8, method: null })).toBe("at round 2 of 2, glass 1");
});
