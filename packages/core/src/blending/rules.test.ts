import { expect, test } from "vitest";
import { conflictOf } from "./conflict.ts";
import { bestByEnumeration, keeps } from "./fixtures/every-recipe.ts";
import { problem, shelf } from "./fixtures/shelf.ts";
import { keepsRule } from "./keeps-rule.ts";
import type { FoundRecipe } from "./recipe.ts";
import type { RuleKind } from "./rule.ts";
import { search } from "./search.ts";

const said = ({ parts }: FoundRecipe): string =>
  parts.map(({ id, parts: own }) => `${own} ${id}`).join(" + ");

/** A rule that changes the best recipe, and one of its kind that nothing on the shelf can keep. */
const cases: readonly (readonly [string, RuleKind, RuleKind])[] = [
  ["strength before water", { kind: "strength", low: 46, high: 47 }, { kind: "strength", low: 60, high: 62 }],
  [
    "strength after water",
    { kind: "strength", low: 40, high: 60, waterTo: 54 },
    { kind: "strength", low: 40, high: 60, waterTo: 58 },
  ],
  [
    "onlyWhiskeys",
    { kind: "onlyWhiskeys", ids: ["peat", "rye", "wheat"] },
    { kind: "onlyWhiskeys", ids: [] },
  ],
  [
    "withoutWhiskeys (kept for another day)",
    { kind: "withoutWhiskeys", ids: ["peat"] },
    { kind: "withoutWhiskeys", ids: shelf.map(({ id }) => id) },
  ],
  ["onlyMakers", { kind: "onlyMakers", makers: ["Ebbmark"] }, { kind: "onlyMakers", makers: ["Nobody"] }],
  [
    "withoutMakers",
    { kind: "withoutMakers", makers: ["Ebbmark"] },
    { kind: "withoutMakers", makers: ["Ebbmark", "Cairnhollow", "Tidewright"] },
  ],
  [
    "onlyWoods (only American oak)",
    { kind: "onlyWoods", species: ["American oak"] },
    { kind: "onlyWoods", species: ["chestnut"] },
  ],
  [
    "withoutWoods",
    { kind: "withoutWoods", species: ["European oak"] },
    { kind: "withoutWoods", species: ["European oak", "American oak"] },
  ],
  ["onlyCasks", { kind: "onlyCasks", held: ["bourbon"] }, { kind: "onlyCasks", held: ["rum"] }],
  [
    "withoutCasks",
    { kind: "withoutCasks", held: ["wine"] },
    { kind: "withoutCasks", held: ["wine", "new", "bourbon"] },
  ],
  ["onlyGrains", { kind: "onlyGrains", grains: ["barley"] }, { kind: "onlyGrains", grains: ["oats"] }],
  [
    "withoutGrains",
    { kind: "withoutGrains", grains: ["rye"] },
    { kind: "withoutGrains", grains: ["barley"] },
  ],
  [
    "requireTags",
    { kind: "requireTags", tags: ["light"] },
    { kind: "requireTags", tags: ["light", "peated"] },
  ],
  [
    "forbidTags",
    { kind: "forbidTags", tags: ["rich"] },
    { kind: "forbidTags", tags: ["peated", "light", "spicy", "rich"] },
  ],
  ["minAge", { kind: "minAge", years: 10 }, { kind: "minAge", years: 30 }],
  ["oneGroup", { kind: "oneGroup" }, { kind: "oneGroup" }],
  ["notGone", { kind: "notGone" }, { kind: "notGone" }],
  ["mustUse", { kind: "mustUse", ids: ["plain"] }, { kind: "mustUse", ids: ["no such whiskey"] }],
  [
    "atLeastParts",
    { kind: "atLeastParts", id: "rye", parts: 3 },
    { kind: "atLeastParts", id: "rye", parts: 40 },
  ],
  [
    "atMostParts",
    { kind: "atMostParts", id: "peat", parts: 1 },
    { kind: "atMostParts", id: "peat", parts: 0 },
  ],
  [
    "grainShare, at least",
    { kind: "grainShare", grain: "rye", low: 0.51, high: 1 },
    { kind: "grainShare", grain: "rye", low: 0.96, high: 1 },
  ],
  [
    "grainShare, at most",
    { kind: "grainShare", grain: "barley", low: 0, high: 0.4 },
    { kind: "grainShare", grain: "barley", low: 0, high: 0.01 },
  ],
  [
    "tagShare",
    { kind: "tagShare", tag: "light", low: 0.6, high: 1 },
    { kind: "tagShare", tag: "sour", low: 0.1, high: 1 },
  ],
  ["maxPricePerLitre", { kind: "maxPricePerLitre", price: 60 }, { kind: "maxPricePerLitre", price: 30 }],
  [
    "maxPricePerBottle",
    { kind: "maxPricePerBottle", bottleMl: 700, price: 42 },
    { kind: "maxPricePerBottle", bottleMl: 700, price: 20 },
  ],
  [
    "maxPricePerBottle after water",
    { kind: "maxPricePerBottle", bottleMl: 700, price: 42, waterTo: 43 },
    { kind: "maxPricePerBottle", bottleMl: 700, price: 20, waterTo: 43 },
  ],
  ["batch", { kind: "batch", ml: 1500 }, { kind: "batch", ml: 9000 }],
];

test.each(cases)("R1: %s alone changes the answer, and what is found keeps it", (_, rule) => {
  const free = problem();
  const ruled = problem([rule]);
  const found = search(ruled).recipes;
  expect(said(found[0]!)).not.toBe(said(search(free).recipes[0]!));
  expect(found.map(said)).toEqual(
    bestByEnumeration(ruled, 20).map(({ parts }) => parts.map(([id, own]) => `${own} ${id}`).join(" + ")),
  );
  for (const recipe of found) expect(keepsRule(ruled, ruled.rules[0]!, recipe)).toBe(true);
  expect(keepsRule(ruled, ruled.rules[0]!, search(free).recipes[0]!)).toBe(false);
});

/** What the shelf must be for the second rule to be impossible, where it is not by itself. */
const bare: Readonly<Record<string, Parameters<typeof problem>[1]>> = {
  oneGroup: { whiskeys: shelf.map((whiskey) => ({ ...whiskey, group: null })) },
  notGone: { whiskeys: shelf.map((whiskey) => ({ ...whiskey, gone: true })) },
  atMostParts: { whiskeys: shelf.filter(({ id }) => id === "peat") },
};

test.each(cases)(
  "R3: %s that cannot be kept gives no recipe, and the conflict names it alone",
  (name, _, rule) => {
    const ruled = problem([rule], bare[name] ?? {});
    const { recipes, provenOptimal } = search(ruled);
    expect(recipes).toEqual([]);
    expect(provenOptimal).toBe(true);
    const conflict = conflictOf(ruled);
    expect(conflict?.names).toEqual([ruled.rules[0]!.name]);
    expect(conflict?.proven).toBe(true);
    expect(conflict?.nearest?.breaks).toEqual([ruled.rules[0]!.name]);
  },
);

test("R2: what is not known keeps no rule about it", () => {
  const unknown = shelf.filter(({ id }) => id === "plain");
  const about: readonly RuleKind[] = cases
    .map(([, rule]) => rule)
    .filter(({ kind }) => /Makers|Woods|Casks|Grains|minAge|Price|batch|oneGroup/.test(kind));
  expect(about.length).toBeGreaterThan(10);
  for (const rule of about) {
    const ruled = problem([rule], { whiskeys: unknown });
    expect(search(ruled).recipes, rule.kind).toEqual([]);
    expect(keeps(ruled.rules[0]!, [{ whiskey: unknown[0]!, parts: 1 }])).toBe(false);
  }
});

test("R4: of five rules the two that cannot stand together are named", () => {
  const ruled = problem([
    { kind: "minAge", years: 4 },
    { kind: "onlyMakers", makers: ["Cairnhollow"] },
    { kind: "maxPricePerLitre", price: 100 },
    { kind: "strength", low: 50, high: 60 },
    { kind: "notGone" },
  ]);
  const conflict = conflictOf(ruled);
  expect(conflict?.names).toEqual(["onlyMakers 1", "strength 3"]);
  expect(conflict?.proven).toBe(true);
});

test("R4: bottles and parts are named when they are to blame", () => {
  const three = { kind: "mustUse", ids: ["peat", "rye", "wheat"] } as const;
  expect(conflictOf(problem([three], { maxBottles: 2 }))?.names).toEqual(["mustUse 0", "maxBottles"]);
  expect(conflictOf(problem([three], { maxParts: 2 }))?.names).toEqual(["mustUse 0", "maxParts"]);
  expect(conflictOf(problem([three]))).toBeNull();
});

test("R5: the nearest recipe breaks the fewest rules, and is the closest of those", () => {
  const ruled = problem([
    { kind: "onlyMakers", makers: ["Cairnhollow"] },
    { kind: "strength", low: 50, high: 60 },
    { kind: "mustUse", ids: ["rye"] },
  ]);
  const nearest = conflictOf(ruled)?.nearest;
  expect(nearest?.breaks).toEqual(["onlyMakers 0"]);
  const without = { ...ruled, rules: ruled.rules.slice(1) };
  expect(said(nearest!.recipe)).toBe(said(search(without).recipes[0]!));
});

test("R4: an empty shelf is in conflict with nothing", () => {
  expect(conflictOf(problem([], { whiskeys: [] }))).toEqual({ names: [], nearest: null, proven: true });
});
