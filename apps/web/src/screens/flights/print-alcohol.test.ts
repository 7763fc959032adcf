import { describe, expect, test } from "vitest";
import { drinksDigits, gramsDigits, pourToKeep } from "./print-alcohol.ts";

describe("alcohol in figures", () => {
  test("tenths below 10 g, whole grams above; drinks to a tenth", () => {
    expect([9.44, 9.94, 9.96, 28.4, 30.5].map(gramsDigits)).toEqual(["9.4", "9.9", "10", "28", "31"]);
    expect(drinksDigits(2.149)).toBe("2.1");
  });

  test("the pour that keeps a limit keeps it, and one more millilitre does not", () => {
    const grams = 33.7;
    const pourMl = 17;
    const less = pourToKeep(28, grams, pourMl);
    expect((grams / pourMl) * less).toBeLessThanOrEqual(28);
    expect((grams / pourMl) * (less + 1)).toBeGreaterThan(28);
    expect(pourToKeep(28, 0, 15)).toBe(15);
  });
});
