import { expect, test } from "vitest";
import { readScore } from "./read-score.ts";

test("a score is read as people type it", () => {
  expect(["", " ", "0", "87", "87.5", "87,5", "100"].map(readScore)).toEqual(
    [null, null, 0, 87, 87.5, 87.5, 100].map((score) => ({ ok: true, score })),
  );
});

test("anything else is refused and says that it is not saved", () => {
  for (const text of ["101", "-1", "ninety", "8 7", "1e2", "87."]) {
    expect(readScore(text)).toEqual({
      ok: false,
      why: `a score requires a number from 0 to 100, got ${text}; it is not saved`,
    });
  }
});
