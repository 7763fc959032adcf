import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient, searchSchema } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";
import { findRecipes } from "./find-recipes.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const docs = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../../../docs/${name}`, import.meta.url), "utf8"));

const problem = {
  whiskeys: [
    { id: "stair", abv: 54.2, profile: { smoke: 0, honey: 8 }, pricePerLitre: 50, ageYears: 10 },
    { id: "loft", abv: 60, profile: { smoke: 9, honey: 1 }, pricePerLitre: 90, tags: ["peated"] },
    { id: "sack", abv: 40, profile: { smoke: 2, honey: null } },
  ],
  target: { profile: { smoke: 3, honey: 6 } },
  rules: { maxBottles: 2, maxParts: 6 },
};
const sent = (change: object): never => ({ ...problem, ...change }) as never;
const ruled = (rules: object): never => sent({ rules: { ...problem.rules, ...rules } });

test("SF3 the published schema is the one the house reads by", () => {
  expect(docs("search.schema.json")).toEqual(JSON.parse(JSON.stringify(searchSchema())));
});

test.each([
  ["an unknown field", sent({ tpo: 5 }), ["tpo"]],
  ["an unknown rule", ruled({ maxBotles: 2 }), ["rules", "maxBotles"]],
  [
    "an unknown field of a whiskey",
    sent({ whiskeys: [{ ...problem.whiskeys[0], age: 3 }] }),
    ["whiskeys", 0, "age"],
  ],
  ["no bottles", ruled({ maxBottles: 0 }), ["rules", "maxBottles"]],
  ["too many parts", ruled({ maxParts: 61 }), ["rules", "maxParts"]],
  ["half a part", ruled({ maxParts: 2.5 }), ["rules", "maxParts"]],
  ["a range upside down", ruled({ abv: [50, 40] }), ["rules", "abv"]],
  ["one id twice", sent({ whiskeys: [problem.whiskeys[0], problem.whiskeys[0]] }), ["whiskeys", 1, "id"]],
  ["a target of nothing", sent({ target: { profile: {} } }), ["target", "profile"]],
  [
    "weights all 0",
    sent({ target: { profile: { smoke: 1 }, weights: { smoke: 0 } } }),
    ["target", "weights"],
  ],
  ["an unknown target", sent({ target: { profile: { smoke: null } } }), ["target", "profile", "smoke"]],
  [
    "too many attributes",
    sent({ target: { profile: Object.fromEntries(Array.from({ length: 41 }, (_, n) => [`a${n}`, 1])) } }),
    ["target", "profile"],
  ],
  [
    "too many whiskeys",
    sent({ whiskeys: Array.from({ length: 2001 }, (_, n) => ({ id: `w${n}`, abv: 40, profile: {} })) }),
    ["whiskeys"],
  ],
])("SF4 %s is refused at its place", async (_, body, path) => {
  const { status, issues } = await refusalOf(client("search", { body }));
  expect({ status, path: issues[0]?.path }).toEqual({ status: 422, path });
});

test.each([
  ["an age nobody has", ruled({ minAgeYears: 30 }), ["minAgeYears"]],
  ["a whiskey that is not there", ruled({ mustUse: ["nobody"] }), ["mustUse"]],
  ["two in one bottle", ruled({ maxBottles: 1, mustUse: ["stair", "loft"] }), ["mustUse", "maxBottles"]],
  [
    "required and forbidden",
    ruled({ requireTags: ["peated"], forbidTags: ["peated"] }),
    ["forbidTags", "requireTags"],
  ],
  ["water to more than there is", ruled({ waterTo: 62 }), ["waterTo"]],
  ["grain nobody has said", ruled({ grainShare: [{ grain: "rye", share: [0.51, 1] }] }), ["grainShare"]],
])("SF5 %s: no recipe, and the rules that cannot stand together", async (_, body, conflict) => {
  const answer = await client("search", { body });
  expect(answer).toMatchObject({ recipes: [], provenOptimal: true, gap: 0, conflictProven: true });
  expect(answer.conflict?.toSorted()).toEqual(conflict.toSorted());
});

test("SF6 unknown values and weights that count for nothing are told", async () => {
  const target = { ...problem.target, weights: { honey: 2, salt: 1 } };
  const answer = await client("search", { body: sent({ target }) });
  expect(answer.unknown).toEqual([{ id: "sack", attribute: "honey" }]);
  expect(answer.unusedWeights).toEqual(["salt"]);
});

const wide = {
  whiskeys: Array.from({ length: 400 }, (_, n) => ({
    id: `w${n}`,
    abv: 40 + (n % 20),
    profile: Object.fromEntries(
      Array.from({ length: 24 }, (__, a) => [`a${a}`, ((n * 37 + a * 101 + n * a * 13) % 100) / 10]),
    ),
  })),
  target: { profile: Object.fromEntries(Array.from({ length: 24 }, (_, a) => [`a${a}`, 5])) },
  rules: { maxBottles: 6, maxParts: 24 },
};

test("SF7 stopped by time, it says so and how far off the best may be", { timeout: 30_000 }, async () => {
  const answer = await findRecipes(wide, { seconds: 0.2 });
  expect(answer.provenOptimal).toBe(false);
  expect(answer.recipes.length).toBeGreaterThan(0);
  expect(answer.gap).toBeGreaterThan(0);
});

// Half as long as it would go on: one that does not stop is too late.
test("SF8 aborted, it stops", { timeout: 30_000 }, async () => {
  const body = JSON.stringify(wide);
  const request = new Request("http://reckoner.test/api/search?seconds=60", {
    method: "POST",
    body,
    signal: AbortSignal.timeout(200),
  });
  expect((await openReckoner()(request)).status).toBe(499);
});
