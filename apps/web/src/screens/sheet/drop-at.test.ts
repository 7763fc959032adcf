import { expect, test } from "vitest";
import { dropAt } from "./drop-at.ts";

const places = [
  { top: 0, bottom: 40 },
  { top: 48, bottom: 88 },
];

test("the middle of a place is level with it, its edges and the gaps are before or after it", () => {
  expect(dropAt(places, -50)).toEqual({ kind: "between", before: 0 });
  expect(dropAt(places, 5)).toEqual({ kind: "between", before: 0 });
  expect(dropAt(places, 20)).toEqual({ kind: "level", at: 0 });
  expect(dropAt(places, 38)).toEqual({ kind: "between", before: 1 });
  expect(dropAt(places, 44)).toEqual({ kind: "between", before: 1 });
  expect(dropAt(places, 70)).toEqual({ kind: "level", at: 1 });
  expect(dropAt(places, 500)).toEqual({ kind: "between", before: 2 });
});
