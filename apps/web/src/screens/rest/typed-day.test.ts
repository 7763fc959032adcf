import { expect, test } from "vitest";
import { dayTyped, instantOfDay } from "./typed-day.ts";

const now = new Date(2026, 10, 12, 23, 30).getTime();

test("a day is this device's own; today is sent as now", () => {
  expect(dayTyped(now)).toBe("2026-11-12");
  expect(instantOfDay("2026-11-12", now)).toEqual({});
  expect(instantOfDay("", now)).toEqual({});
  expect(instantOfDay("2026-13-45", now)).toEqual({});
  expect(instantOfDay("2026-11-03", now)).toEqual({ at: new Date(2026, 10, 3, 12).toISOString() });
});
