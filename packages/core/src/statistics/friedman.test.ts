import { expect, test } from "vitest";
import { EXACT_STEP_LIMIT, friedman } from "./index.ts";

const agreed = (judges: number, items: number) =>
  Array.from({ length: judges }, () => Array.from({ length: items }, (_, i) => i));

test("F5 when every judge tied everything, nobody told any apart", () => {
  expect(
    friedman([
      [2, 2, 2],
      [7, 7, 7],
    ]),
  ).toEqual({
    ok: false,
    code: "nobody_told_any_apart",
    judges: 2,
    items: 3,
    rankSums: [4, 4, 4],
    meanRanks: [2, 2, 2],
  });
});

test("F5 one judge who told some apart is enough for a test", () => {
  const test = friedman([
    [2, 2, 2],
    [1, 2, 3],
  ]);
  // One untied row and one tied: all six orders of the untied row give the same statistic.
  expect(test).toMatchObject({ ok: true, statistic: 2, p: 1, kendallW: 0.5 });
});

test.each([2, 3, 7, 12, 20])("F6 one judge of %i items gives p = 1", (items) => {
  expect(friedman(agreed(1, items))).toMatchObject({ ok: true, p: 1, method: "exact" });
});

test.each([
  [5, 13],
  [6, 6],
  [7, 3],
  [8, 2],
  [9, 2],
  [10, 2],
])(
  "F4 %i items are exact up to %i judges without ties, then chi-square",
  (items, judges) => {
    expect(friedman(agreed(judges, items))).toMatchObject({ method: "exact" });
    expect(friedman(agreed(judges + 1, items))).toMatchObject({ method: "chi-square" });
  },
  60_000,
);

test.each([
  [3, 227],
  [4, 40],
])(
  "F4 %i items are exact for %i judges without ties",
  (items, judges) => {
    expect(friedman(agreed(judges, items))).toMatchObject({ method: "exact" });
  },
  60_000,
);

test("F4 the limit can be set: 0 steps is always chi-square", () => {
  expect(EXACT_STEP_LIMIT).toBe(6_000_000);
  expect(friedman(agreed(3, 3), { exactStepLimit: 0 })).toMatchObject({ method: "chi-square", df: 2 });
});

test("F7 bad tables throw and name the row", () => {
  expect(() => friedman([])).toThrow("friedman requires at least 1 judge, got 0");
  expect(() => friedman([[1]])).toThrow("friedman requires at least 2 items, got 1");
  expect(() => friedman([[1, 2], [1]])).toThrow("friedman requires 2 values in row 1, got 1");
  expect(() => friedman([[1, Number.NaN]])).toThrow("got NaN at index 1");
});
