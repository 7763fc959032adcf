import { expect, test } from "vitest";
import { compositionAt, courseOf, keepUp, type KeptUp, type KeptUpStep, youngestAt } from "./index.ts";

const add = (at: number, liquidId: string, g: number): KeptUpStep => ({
  kind: "add",
  at,
  liquidId,
  ethanolG: g * 0.5,
  waterG: g * 0.5,
});
const pour = (at: number, ml: number): KeptUpStep => ({ kind: "pour", at, ml });
function folded(steps: readonly KeptUpStep[]): KeptUp {
  const found = keepUp(steps, 750);
  if (!found.ok) throw new Error(found.code);
  return found;
}
/** 300 g of half alcohol by mass: so many mL. */
const V = folded([add(0, "a", 300)]).volumeMl[0] as number;

test("U3 a half-life ends with the step that leaves half or less, and is null while more is left", () => {
  const { additions } = folded([
    add(0, "a", 300),
    pour(10, V / 2),
    add(12, "b", 150),
    pour(40, V / 4),
    pour(90, V / 2),
  ]);
  // Of a: half after day 10. Of b, added on day 12: three quarters after day 40, a quarter after day 90.
  expect(additions[0]?.halfLife).toBe(10);
  expect(additions[1]?.halfLife).toBe(78);
  expect(additions[1]?.left).toBeCloseTo(0.25, 12);
  expect(additions[0]?.left).toBeCloseTo(0.125, 12);
  expect(folded([add(0, "a", 300), pour(3, V / 4)]).additions[0]?.halfLife).toBeNull();
});

test("an emptied bottle begins anew: nothing of before is left", () => {
  const found = folded([add(0, "a", 300), pour(1, V), add(2, "b", 300)]);
  expect(compositionAt(found, 2).map(({ liquidId }) => liquidId)).toEqual(["b"]);
  expect(found.additions[0]).toMatchObject({ left: 0, halfLife: 1 });
  // So small a part that it is no longer a number of its own: poured 400 times to a half and filled up again.
  const often = Array.from({ length: 400 }, (_, n) => [
    add(n, `w${n}`, n === 0 ? 300 : 150),
    pour(n, V / 2),
  ]).flat();
  const long = folded(often);
  expect(long.additions[0]?.left).toBe(0);
  expect(long.additions.at(-1)?.left).toBeCloseTo(0.5, 10);
});

test("U4 youngest age is that of what is still in it, null where one states none", () => {
  const ages = new Map([
    ["old", 18],
    ["young", 3],
    ["unsaid", null],
  ]);
  const steps = [add(0, "old", 300), add(1, "young", 30), pour(2, 50), add(3, "unsaid", 30)];
  const found = folded(steps);
  expect([0, 1, 2, 3].map((step) => youngestAt(found, step, ages))).toEqual([18, 3, 3, null]);
  const emptied = folded([add(0, "young", 300), pour(1, V), add(2, "old", 300)]);
  expect(youngestAt(emptied, 1, ages)).toBeNull();
  expect(youngestAt(emptied, 2, ages)).toBe(18);
});

test("U5 more than there is, or than goes in, is a no that names the step and the limit", () => {
  expect(keepUp([add(0, "a", 300), pour(1, V + 10)], 750)).toMatchObject({
    ok: false,
    code: "more_than_there_is",
    step: 1,
    receivedMl: V + 10,
  });
  expect(keepUp([add(0, "a", 300), add(1, "b", 500)], 750)).toMatchObject({
    ok: false,
    code: "above_capacity",
    step: 1,
    limitMl: 750,
  });
  expect(() => keepUp([pour(0, -1)], 750)).toThrow("step 0 requires a pour of more than 0 mL, got -1 mL");
  expect(() => keepUp([add(5, "a", 30), pour(4, 1)], 750)).toThrow(
    "step 1 requires a day not before the last, got 4",
  );
  expect(() => keepUp([], 0)).toThrow("more than 0 mL, got 0 mL");
});

test("the course for drawing has the first and the last step, and shares that add up to 1", () => {
  const steps = Array.from({ length: 300 }, (_, n) =>
    n % 2 === 0 ? add(n, `w${n % 7}`, n === 0 ? 300 : 50) : pour(n, 55),
  );
  const course = courseOf(folded(steps), 40);
  expect(course.length).toBe(40);
  expect([course[0]?.step, course.at(-1)?.step]).toEqual([0, 299]);
  for (const { parts } of course) expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  expect(courseOf(folded([]), 40)).toEqual([]);
});
