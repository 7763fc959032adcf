import { expect, test } from "vitest";
import { waterToStrength } from "../alcoholometry/index.ts";
import { abv20, millilitres20 } from "../quantity/index.ts";
import type { FillProblem } from "./fill-problem.ts";
import { fillSlots } from "./fill-slots.ts";
import { readRule } from "./fixtures/fill-problems.ts";

// Invented, as are all names here.
const problem: FillProblem = {
  whiskeys: [
    { id: "stair", abv20: abv20(54), profile: { honey: 6 }, ageYears: 10, group: "north" },
    { id: "loft", abv20: abv20(60), profile: { honey: 2 }, ageYears: 8, group: "south" },
    { id: "sack", abv20: abv20(46), profile: { honey: null }, group: "south" },
  ],
  slots: [
    { parts: 2, rule: readRule("50 % or stronger") },
    { parts: 1, rule: readRule("not the same distillery as slot 1") },
  ],
  original: { profile: { honey: 5 }, abv20: 56, youngestYears: 9 },
};

test("F2 F4 the best filling, what is missing of it, and between what it may lie", () => {
  const { fillings, proven, empty } = fillSlots(problem, 9);
  expect({ proven, empty }).toEqual({ proven: true, empty: [] });
  expect(fillings.map(({ ids }) => ids.join())).toEqual(["stair,loft", "loft,stair", "stair,sack"]);
  // Two parts of 54 and one of 60 % vol: a mean of 56, and a little above.
  expect(fillings[0]!.abv20).toBeGreaterThan(56);
  expect(fillings[0]!.abv20).toBeLessThan(56.1);
  expect(fillings[0]!.off[0]).toMatchObject({ what: "honey", original: 5 });
  expect(fillings[0]!.off[0]!.low).toBeCloseTo(14 / 3, 12);
  expect(fillings[0]!.least).toBe(fillings[0]!.distance);
  const unsure = fillings[2]!;
  expect(unsure.off[0]).toMatchObject({ what: "honey", low: 4, least: 0 });
  expect(unsure.off[0]!.high).toBeCloseTo(22 / 3, 12);
  expect(unsure.off[2]).toMatchObject({ what: "age", low: 0, high: 10, least: 0, most: 3 });
  expect(unsure.youngestYears).toBeNull();
  expect(unsure.least).toBeLessThan(unsure.distance);
});

test("F3 water makes the strengths equal, and only what is missing to it counts", () => {
  const { fillings } = fillSlots({ ...problem, waterTo: abv20(46) });
  const [first] = fillings;
  expect(first!.off[1]).toMatchObject({ what: "strength", original: 46, most: 0 });
  const water = waterToStrength({ volumeMl: millilitres20(1000), from: abv20(first!.abv20), to: abv20(46) });
  expect(water.ok && water.waterMl).toBe(first!.waterMl);
});

test("F5 a slot that nobody keeps stays empty, and what would fill it is said", () => {
  const slots = [problem.slots[0]!, { parts: 1, rule: readRule("65 % or stronger") }];
  const found = fillSlots({ ...problem, slots });
  expect(found.empty).toEqual([2]);
  expect(found.slots[1]!.rejected.map(({ id, breaks }) => [id, breaks])).toEqual([
    ["stair", [{ rule: "65 % or stronger", value: 54 }]],
    ["loft", [{ rule: "65 % or stronger", value: 60 }]],
    ["sack", [{ rule: "65 % or stronger", value: 46 }]],
  ]);
  expect(found.fillings[0]!.ids).toEqual(["stair", null]);
  // 5 = (2 × 6 + 3) / 3 and 56 = (2 × 54 + 60) / 3.
  expect(found.wanted).toHaveLength(1);
  expect(found.wanted[0]).toMatchObject({ slot: 2, rule: "65 % or stronger" });
  expect(found.wanted[0]!.profile["honey"]).toBeCloseTo(3, 9);
  expect(found.wanted[0]!.abv20).toBeCloseTo(60, 9);
});

test("F5 where whiskeys cannot stand together, as few slots as possible stay empty", () => {
  const same = { parts: 1, rule: readRule("the same distillery as slot 1, 50 % or stronger") };
  const found = fillSlots({ ...problem, slots: [problem.slots[0]!, same] });
  expect(found.empty).toHaveLength(1);
  const none = fillSlots({ ...problem, whiskeys: [] });
  expect(none).toMatchObject({ fillings: [], proven: true, empty: [1, 2] });
});

test("F2 what makes no sense is refused", () => {
  expect(() => fillSlots({ ...problem, slots: [] })).toThrow("a recipe requires 1 to 12 slots, got 0");
  const slots = [{ parts: 1, rule: readRule("not the same maker as slot 1") }];
  expect(() => fillSlots({ ...problem, slots })).toThrow("slot 1 requires another slot of 1");
  const original = { profile: {}, abv20: null, youngestYears: null };
  expect(() => fillSlots({ ...problem, original })).toThrow("to come close to, got none");
});

test("F2 a limit on what is looked at ends the search, unproven", () => {
  const slots = [problem.slots[0]!, { parts: 1, rule: [] }, { parts: 1, rule: [] }];
  expect(fillSlots({ ...problem, slots }, 1, 2)).toMatchObject({ fillings: [], proven: false });
});
