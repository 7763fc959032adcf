import { describe, expect, test } from "vitest";
import { combineProfiles, type TasterProfile } from "./combine-profiles.ts";

const note = (taster: string, values: Readonly<Record<string, number>>, sd = 0.5): TasterProfile => ({
  taster,
  profile: Object.fromEntries(Object.entries(values).map(([id, mean]) => [id, { mean, sd }])),
});

describe("N13 several notes", () => {
  test("one taster alone keeps what they said", () => {
    const { profile } = combineProfiles([note("a", { "smoke.smoke": 6, "sweet.honey": 3 })]);
    expect(profile["smoke.smoke"]).toEqual({ mean: 6, sd: 0.5 });
    expect(profile["sweet.honey"]?.mean).toBe(3);
  });

  test("what nobody spoke of is not there; what one said is not watered down by another's silence", () => {
    const { profile } = combineProfiles([note("a", { "smoke.smoke": 6 }), note("b", { "sweet.honey": 4 })]);
    expect(Object.keys(profile).toSorted()).toEqual(["smoke.smoke", "sweet.honey"]);
    expect(profile["smoke.smoke"]?.mean).toBeCloseTo(6, 1);
  });

  // Made data: one liquid, two tasters who say the same of it, one of them 2 higher on every attribute.
  test("a taster who says everything higher is learned to", () => {
    const truth = { a: 2, b: 3, c: 4, d: 5, e: 6, f: 3, g: 5, h: 4 };
    const high = Object.fromEntries(Object.entries(truth).map(([id, value]) => [id, value + 2]));
    const { scales, profile } = combineProfiles([note("low", truth), note("high", high)]);
    const apart = (scales.get("high")?.offset ?? 0) - (scales.get("low")?.offset ?? 0);
    expect(apart).toBeGreaterThan(1);
    expect(apart).toBeLessThanOrEqual(2.1);
    expect(profile["c"]?.mean).toBeCloseTo(5, 0);
  });

  test("tasters who disagree leave more doubt than those who agree, and more notes leave less", () => {
    const sd = (...values: readonly number[]): number =>
      combineProfiles(values.map((value, n) => note(`t${n}`, { x: value }))).profile["x"]?.sd ?? Number.NaN;
    expect(sd(2, 8)).toBeGreaterThan(sd(5, 5));
    expect(sd(5, 5, 5, 5)).toBeLessThan(sd(5, 5));
  });

  test("not there at all stays 0", () => {
    const { profile } = combineProfiles([note("a", { x: 0, y: 6, z: 4 }), note("b", { x: 0, y: 8, z: 6 })]);
    expect(profile["x"]?.mean).toBe(0);
  });
});
