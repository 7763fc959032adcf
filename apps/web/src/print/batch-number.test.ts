import { expect, test } from "vitest";
import { batchNumber } from "./batch-number.ts";

test("a batch's number is its day and the end of its id", () => {
  expect(batchNumber({ id: "01m89526crwf6x6vmpz1q1hb7k", madeAt: "2026-11-25T22:10:00.000Z" })).toBe(
    "261125-HB7K",
  );
});
