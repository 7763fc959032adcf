import { NOTED_SD, type Problem, search } from "@partsproof/core/blending";
import { abv20 } from "@partsproof/core/quantity";
import { expect, test } from "vitest";
import { answerWhy } from "./answer-why.ts";
import {
  attributeName,
  FIRST_RULES,
  NO_AIM,
  problemOf,
  proofWords,
  readRules,
  type Rules,
  ruleWords,
  tastedTogetherAt,
  type Taste,
  tasteOf,
  toggled,
  withIntensity,
  withWeight,
} from "./index.ts";
import { Searching } from "./searching.ts";

const ATTRIBUTES = ["smoke.smoke", "fruit.stone", "sweet.honey"];
const whiskey = (id: string, profile: readonly (number | null)[], facts = {}) => ({
  id,
  abv20: abv20(50),
  profile: Object.fromEntries(ATTRIBUTES.map((name, a) => [name, profile[a] ?? null])),
  ageYears: 12,
  ...facts,
});
const shelf = {
  whiskeys: [whiskey("smoky", [9, 1, 2]), whiskey("fruity", [0, 8, 3]), whiskey("sweet", [1, 2, null])],
  tastes: new Map<string, Taste>(
    ["smoky", "fruity", "sweet"].map((id) => [id, { values: {}, tastedAt: 46 }]),
  ),
  attributes: ATTRIBUTES,
};
const about = { targetId: "", onShelf: ["smoky", "fruity", "sweet"], currency: "USD" };
const aim = withIntensity(withIntensity(NO_AIM, "smoke.smoke", 3), "fruit.stone", 5);
const rules: Rules = { ...FIRST_RULES, on: ["onShelf"] };
const problem = (): Problem => {
  const read = readRules(rules, about);
  const made = read.ok ? problemOf(shelf, aim, rules, read.value) : null;
  if (made === null) throw new Error("the test requires a problem, got none");
  return made;
};

test("what is not set does not count, and nothing counting is no problem to search", () => {
  expect(Object.keys(problem().target.profile)).toEqual(["smoke.smoke", "fruit.stone"]);
  const none = withIntensity(withIntensity(aim, "smoke.smoke", null), "fruit.stone", null);
  const read = readRules(rules, about);
  expect(read.ok && problemOf(shelf, none, rules, read.value)).toBeNull();
  const weightless = withWeight(withWeight(aim, "smoke.smoke", 0), "fruit.stone", 0);
  expect(read.ok && problemOf(shelf, weightless, rules, read.value)).toBeNull();
});

test("what a whiskey says is taken as it is: unknown stays unknown, zero zero, and a number is off by as much as notes are", () => {
  const tastedAt = { basis: "proof60F" as const, value: 80 };
  const intensities = { "smoke.smoke": 0, "sweet.honey": null, "nut.nut": { value: 4, sd: 2 } };
  const taste = tasteOf({ profile: { tastedAt, intensities } });
  expect(taste?.values).toEqual({
    "smoke.smoke": { value: 0, sd: NOTED_SD },
    "sweet.honey": null,
    "nut.nut": { value: 4, sd: 2 },
  });
  // 80 proof (US) is 40 % vol at 60 °F, and near it at 20 °C.
  expect(Math.abs((taste?.tastedAt ?? 0) - 40)).toBeLessThan(0.1);
  expect(tasteOf({ profile: null })).toBeNull();
  expect(tasteOf({ profile: { tastedAt, intensities: { "sweet.honey": null } } })).toBeNull();
});

test("an intensity of zero counts: it is not the same as none set", () => {
  const zero = withIntensity(NO_AIM, "smoke.smoke", 0);
  expect(zero.profile).toEqual({ "smoke.smoke": 0 });
  expect(withIntensity(zero, "smoke.smoke", null).profile).toEqual({});
  expect(withIntensity(zero, "smoke.smoke", 14).profile).toEqual({ "smoke.smoke": 10 });
});

test("a search in slices ends with core's own list, and says nothing is proven before", () => {
  const asked = problem();
  let ticks = 0;
  // A clock that is a whole slice further at every look: each slice does the least it can.
  const searching = new Searching(7, asked, 20, () => (ticks += 100));
  searching.slice(50);
  expect(searching.told().done).toBe(searching.done);
  for (let n = 0; n < 10_000 && !searching.done; n += 1) searching.slice(50);
  const last = searching.found();
  expect(last.done).toBe(true);
  expect(searching.told()).toEqual({
    turn: 7,
    done: true,
    best: last.recipes[0],
    gap: last.gap,
    nodes: last.nodes,
    tookMs: last.tookMs,
  });
  expect(last.turn).toBe(7);
  const whole = search(asked, 20);
  expect(last.recipes.map(({ parts, distance }) => ({ parts, distance }))).toEqual(
    whole.recipes.map(({ parts, distance }) => ({ parts, distance })),
  );
  expect(last.recipes.every(({ expected, distance }) => expected >= distance - 1e-12)).toBe(true);
});

test("proven is said of a finished search only", () => {
  const searching = new Searching(1, problem(), 1, () => 0);
  searching.slice(1);
  const found = searching.told();
  expect(found.best).not.toBeNull();
  const words = (change: object, state: "searching" | "done" | "stopped", current = true): string =>
    proofWords({ told: { ...found, done: false, ...change }, current, state }, false);
  expect(words({ gap: 0 }, "searching")).toBe("Within less than 0.01 of the best possible, still looking.");
  expect(words({ gap: 0.031 }, "stopped")).toBe("Within 0.03 of the best possible, stopped.");
  expect(words({ done: true }, "done")).toBe("Proven: nothing closer keeps your rules.");
  expect(words({ done: true }, "searching", false)).toBe("Looking …");
  expect(words({ done: true, best: null }, "done")).toBe("No recipe keeps all your rules: proven.");
});

test("profiles tasted at one strength mix by alcohol, others by what is poured", () => {
  expect(problem().shares).toBe("alcohol");
  const tastes = new Map(shelf.tastes).set("sweet", { values: {}, tastedAt: null });
  expect(tastedTogetherAt({ tastes }, ["smoky", "sweet"])).toBeNull();
  expect(tastedTogetherAt({ tastes }, ["smoky", "fruity"])).toBe(46);
});

test("every rule becomes core's, once, and has words of its own", () => {
  const keys = [
    "notTarget",
    "onShelf",
    "strength",
    "minAge",
    "wood",
    "withoutHeld",
    "notGone",
    "onePlace",
    "grain",
    "mustUse",
    "keep",
    "mostOfOne",
    "price",
    "batch",
  ] as const;
  const all: Rules = {
    ...FIRST_RULES,
    on: keys,
    held: "port",
    grain: "rye",
    mustUse: ["smoky"],
    keep: ["sweet"],
    mostOf: "smoky",
  };
  const read = readRules(all, { ...about, targetId: "sweet" });
  const named = read.ok ? read.value.rules : [];
  expect(named.map(({ name }) => name).toSorted()).toEqual(keys.toSorted());
  expect(named.find(({ name }) => name === "price")).toMatchObject({ price: 6000, bottleMl: 700 });
  expect(named.find(({ name }) => name === "withoutHeld")).toMatchObject({ held: ["port", "not known"] });
  const words = [...keys, "maxBottles", "maxParts"].map((key) => ruleWords(key, all, (id) => id, "USD"));
  expect(new Set(words).size).toBe(16);
  expect(toggled(all, "price").on).not.toContain("price");
});

test("a value that cannot be read is told with its field, and only while its rule stands", () => {
  const typed: Rules = { ...FIRST_RULES, on: ["strength", "batch"], low: "lots", high: "40", batch: "a jug" };
  const read = readRules(typed, about);
  expect(read.ok ? [] : read.issues.map(({ path }) => path[0])).toEqual(["low", "batch"]);
  expect(read.ok ? "" : read.issues[0]?.message).toBe('lowest strength requires 0 to 100 % vol, got "lots"');
  expect(readRules({ ...typed, on: [] }, about).ok).toBe(true);
  const crossed = readRules({ ...typed, on: ["strength"], low: "60" }, about);
  expect(crossed.ok ? [] : crossed.issues.map(({ message }) => message)).toEqual([
    'highest strength requires at least 60 % vol, got "40"',
  ]);
});

test("a saving that makes up for 0.1 is a goal in minor units a litre", () => {
  const besides = { cheaperBy: "10", olderBy: "", lowBelow: "150 mL" };
  const read = readRules({ ...rules, besides }, about);
  // 10 USD less for 700 mL is 1428.57 minor units less a litre.
  expect(read.ok && (read.value.goals.price ?? 0) * (1000 / 0.7)).toBeCloseTo(0.1, 12);
  expect(read.ok && read.value.goals.useUp).toEqual({ weight: 0.3, belowMl: 150 });
});

test("an impossible search is explained by the rules' own names", () => {
  const typed: Rules = { ...FIRST_RULES, on: ["minAge", "mustUse"], years: "30", mustUse: ["smoky"] };
  const read = readRules(typed, about);
  const asked = read.ok ? problemOf(shelf, aim, typed, read.value) : null;
  if (asked === null) throw new Error("the test requires a problem, got none");
  const because = answerWhy({ kind: "conflict", problem: asked });
  // No whiskey here is 30: the age alone cannot be kept.
  expect(because.kind === "conflict" && because.conflict?.names).toEqual(["minAge"]);
  expect(because.kind === "conflict" && because.conflict?.nearest?.breaks).toEqual(["minAge"]);
});

test("an attribute is called by its words", () => {
  expect(ATTRIBUTES.map(attributeName)).toEqual(["smoke", "stone fruit", "honey"]);
});
