import { expect, test } from "vitest";
import { combineLiquids } from "./combine-liquids.ts";

const said = (values: Readonly<Record<string, number>>) =>
  Object.fromEntries(Object.entries(values).map(([id, mean]) => [id, { mean, sd: 0.5 }]));

// Made data: two liquids, two tasters; one of them says everything 2 higher.
test("N13 a taster's use of the scale is learned over liquids, and holds for one that they tasted alone", () => {
  const { profiles, scales } = combineLiquids([
    { liquid: "Lamp", taster: "low", profile: said({ a: 2, b: 3, c: 4, d: 5, e: 6, f: 3 }) },
    { liquid: "Lamp", taster: "high", profile: said({ a: 4, b: 5, c: 6, d: 7, e: 8, f: 5 }) },
    { liquid: "Wick", taster: "high", profile: said({ a: 6 }) },
  ]);
  expect((scales.get("high")?.offset ?? 0) - (scales.get("low")?.offset ?? 0)).toBeGreaterThan(1);
  expect(profiles.get("Wick")?.["a"]?.mean).toBeLessThan(5.5);
  expect(Object.keys(profiles.get("Wick") ?? {})).toEqual(["a"]);
});

test("N12 what nobody spoke of is not there; what everybody says is not there is 0", () => {
  const { profiles } = combineLiquids([
    { liquid: "Lamp", taster: "x", profile: said({ smoke: 0 }) },
    { liquid: "Lamp", taster: "y", profile: said({ smoke: 0, honey: 4 }) },
    { liquid: "Wick", taster: "y", profile: {} },
  ]);
  expect(profiles.get("Lamp")?.["smoke"]?.mean).toBe(0);
  expect(profiles.get("Wick")).toEqual({});
});

test("no notes, no liquids", () => {
  expect(combineLiquids([]).profiles.size).toBe(0);
});
