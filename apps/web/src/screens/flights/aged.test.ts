import { expect, test } from "vitest";
import { aDaySince } from "./aged.ts";

test("a day is 24 hours, to the millisecond; what never happened is no day ago", () => {
  const at = "2026-03-01T20:00:00.000Z";
  const then = Date.parse(at);
  expect(aDaySince(at, then + 86_399_999)).toBe(false);
  expect(aDaySince(at, then + 86_400_000)).toBe(true);
  expect(aDaySince(null, then)).toBe(false);
});
