import { expect, test } from "vitest";
import { asWritten, FIRST, nextRowId } from "./sum.ts";

test("what the device kept comes back as it was", () => {
  expect(asWritten(JSON.stringify(FIRST))).toEqual(FIRST);
});

test("anything that is not a whole sum is forgotten rather than half believed", () => {
  const bad = [
    null,
    "",
    "null",
    "{}",
    JSON.stringify({ ...FIRST, rows: [] }),
    JSON.stringify({ ...FIRST, fixed: "x" }),
  ];
  expect(bad.map(asWritten)).toEqual(bad.map(() => null));
  expect(asWritten(JSON.stringify({ ...FIRST, rows: [{ id: 1, parts: 0.5, strength: "46%" }] }))).toBeNull();
});

test("a new row never takes the id of one that stands", () => {
  expect(
    nextRowId([
      { id: 7, parts: 1, strength: "" },
      { id: 2, parts: 1, strength: "" },
    ]),
  ).toBe(8);
  expect(nextRowId([])).toBe(1);
});
