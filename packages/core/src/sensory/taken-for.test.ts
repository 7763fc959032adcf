import { expect, test } from "vitest";
import { takenFor } from "./index.ts";

const offer = { A: 1, B: 1, C: 1, D: 1 };
const truth = ["A", "B", "C", "D"];

test("X1 two glasses swapped on every sheet stand out, and the price of looking at all pairs is paid", () => {
  const sheets = Array.from({ length: 4 }, () => ({ truth, guesses: ["B", "A", "D", "C"], offer }));
  const ab = takenFor(sheets).find(({ pair }) => pair.join("") === "AB");
  // Of the 9 ways to get all four wrong 1 swaps A with B (and C with D), 4 send one of the two to the other.
  expect(ab).toMatchObject({ there: 4, back: 4, glasses: 8 });
  expect(ab?.p).toBeCloseTo(9 ** -4, 15);
  expect(ab?.pTogether).toBeCloseTo(6 * 9 ** -4, 14);
  // Knowing nothing, 2 of the 24 ways swap A with B.
  expect(takenFor(sheets, "nothing").find(({ pair }) => pair.join("") === "AB")?.p).toBeCloseTo(
    (2 / 24) ** 4,
    15,
  );
});

test("X1 with two wrong glasses they can only have been swapped: p = 1 given which were right", () => {
  const [ab, ...others] = takenFor([{ truth, guesses: ["B", "A", "C", "D"], offer }]);
  expect(ab).toMatchObject({ pair: ["A", "B"], there: 1, back: 1, p: 1, pTogether: 1 });
  expect(others).toEqual([]);
});

test("X1 all right: nothing to be mixed up; a broken offer throws", () => {
  expect(takenFor([{ truth, guesses: truth, offer }])).toEqual([]);
  expect(() => takenFor([{ truth, guesses: ["A", "A", null, null], offer }])).toThrow(
    'keep to the offer, got "A" 2 times',
  );
  expect(() => takenFor([{ truth, guesses: ["A"], offer }])).toThrow("got 1 guesses for 4 glasses");
});
