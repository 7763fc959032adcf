import { expect, test } from "vitest";
import { repeatableRng } from "../statistics/index.ts";
import { confidenceFound } from "./index.ts";

test("C1 scored by hand: three sheets of two glasses out of two names", () => {
  const sheet = (first: boolean) => [
    { sure: 90, right: first, byLuck: 0.5 },
    { sure: 50, right: first, byLuck: 0.5 },
  ];
  const found = confidenceFound([sheet(true), sheet(false), [], sheet(true)]);
  // Squares: 0.01 and 0.25, 0.81 and 0.25, 0.01 and 0.25.
  expect(found?.brier.score).toBeCloseTo(1.58 / 6, 12);
  expect(found).toMatchObject({ guesses: 6, right: 4, byLuck: 0.25 });
  expect(found?.said).toBeCloseTo(0.7, 12);
  // Sheets' means 0.13, 0.53, 0.13: Student's t of 2 degrees, 4.302653, by half of 0.2309401 × 2/√3.
  expect(found?.interval?.low).toBeCloseTo(
    0.79 / 3 - (4.302652729911275 * 0.23094010767585) / Math.sqrt(3),
    9,
  );
  expect(found?.groups.map(({ sure, right, of }) => [sure, right, of])).toEqual([
    [50, 2, 3],
    [90, 2, 3],
  ]);
  // Where both of a sheet were right, or none, their confidence tells nothing of which.
  expect(found?.surer).toEqual({ p: 1, leastP: 1 });
  expect(confidenceFound([[], []])).toBeNull();
  expect(() => confidenceFound([[{ sure: 0.5, right: true, byLuck: 0.5 }]])).toThrow("whole per cents");
});

test("C1 who knows nothing and says so scores what is stated, and is found neither over-sure nor knowing in more than 5 of 100", () => {
  const rng = repeatableRng(77);
  const trials = 400;
  const found = Array.from({ length: trials }, () =>
    confidenceFound(
      Array.from({ length: 5 }, () =>
        Array.from({ length: 4 }, () => ({ sure: 25, right: rng.below(4) === 0, byLuck: 0.25 })),
      ),
    ),
  );
  const score = found.reduce((sum, one) => sum + (one?.brier.score ?? 0), 0) / trials;
  expect(score).toBeCloseTo(found[0]?.byLuck ?? 0, 2);
  const wrong = (is: (one: (typeof found)[number]) => boolean): number => found.filter(is).length / trials;
  const bound = 0.05 + 2 * Math.sqrt((0.05 * 0.95) / trials);
  expect(wrong((one) => (one?.calibrated.p ?? 1) < 0.05)).toBeLessThan(bound);
  expect(wrong((one) => (one?.surer?.p ?? 1) < 0.05)).toBeLessThan(bound);
});
