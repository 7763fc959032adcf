import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import {
  createClient,
  fillSchema,
  type RecipeFile,
  recipeFileSchema,
  ResultFile,
  resultFileSchema,
} from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";
import { canonicalJson } from "./canonical-json.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const docs = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../../../docs/${name}`, import.meta.url), "utf8"));
const recipe: RecipeFile = docs("saltreach-recipe.json");
const shelf = docs("saltreach-shelf.json");

test("the published schemas are the ones the house reads by", () => {
  expect(docs("fill.schema.json")).toEqual(JSON.parse(JSON.stringify(fillSchema())));
  expect(docs("recipe-file.schema.json")).toEqual(JSON.parse(JSON.stringify(recipeFileSchema())));
  expect(docs("result-file.schema.json")).toEqual(JSON.parse(JSON.stringify(resultFileSchema())));
  expect(ResultFile.safeParse(docs("saltreach-result.json")).error).toBeUndefined();
});

test("the canonical form is that of RFC 8785, sections 3.2.2 to 3.2.4 (its example, from memory)", () => {
  const value = {
    numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
    literals: [null, true, false],
  };
  expect(canonicalJson(value)).toBe(
    String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  );
  // Section 3.2.3: by UTF-16 units, so that an emoji stands before a letter of the private area.
  const names = { "\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\u{1f600}": 5, "\u0080": 6, "\u00f6": 7 };
  expect(Object.values(JSON.parse(canonicalJson(Object.entries(names).map(([, own]) => own))))).toHaveLength(
    7,
  );
  expect([...canonicalJson(names).matchAll(/:(\d)/gu)].map(([, own]) => own).join("")).toBe("2467153");
  expect(() => canonicalJson({ a: "\ud800" })).toThrow("whole Unicode");
});

test("a recipe has one hash, however its file is written, and keeps what is not known of it", async () => {
  const checked = await client("checkRecipe", { body: recipe });
  const turned = Object.fromEntries(Object.entries(recipe).toReversed()) as RecipeFile;
  expect((await client("checkRecipe", { body: turned })).sha256).toBe(checked.sha256);
  expect(checked.canonical).toBe(canonicalJson(recipe));
  expect(checked.rules[1]).toBe("rye >= 51 %, only American oak, not the same distillery as slot 1");
  const newer = { ...recipe, version: 2, glassware: { stem: "short" } };
  const kept = await client("checkRecipe", { body: newer });
  expect(kept).toMatchObject({ version: 2, unknownFields: ["glassware"] });
  expect(JSON.parse(kept.canonical)).toEqual(newer);
  expect(kept.sha256).not.toBe(checked.sha256);
});

test.each([
  ["no recipe", { ...recipe, format: "else" }, ["format"]],
  ["a slot of nothing", { ...recipe, slots: [{ parts: 1 }] }, ["slots", 0]],
  ["half a part", { ...recipe, slots: [{ parts: 0.5, rule: "anything" }] }, ["slots", 0, "parts"]],
  ["a rule that is none", { ...recipe, slots: [{ parts: 1, rule: "wheat > 5" }] }, ["slots", 0, "rule"]],
  [
    "a slot compared with itself",
    { ...recipe, slots: [{ parts: 1, rule: "not the same maker as slot 1" }] },
    ["slots", 0, "rule"],
  ],
])("refused at its place: %s", async (_, body, path) => {
  const { issues } = await refusalOf(client("checkRecipe", { body: body as never }));
  expect(issues.map((issue) => issue.path)).toContainEqual(path);
});

test("a recipe is filled from another shelf, with every reason", async () => {
  const answer = await client("fillRecipe", { body: { recipe, shelf, waterTo: 46 } });
  expect(answer).toMatchObject({ proven: true, empty: [] });
  expect(answer.best?.ids).toEqual(["copper-hood", "stile-end", "soft-loaf"]);
  expect(answer.distance).toBe(answer.best?.distance);
  expect(answer.best?.waterMl).toBeGreaterThan(200);
  expect(answer.slots[1]?.rejected.find(({ id }) => id === "port-rye")?.breaks).toEqual([
    { rule: "only American oak", value: "European oak" },
  ]);
  expect(answer.slots[2]?.asked).toEqual([
    { id: "quiet-field", missing: [{ rule: "wheat >= 16 %", fact: "grains" }] },
  ]);
  const poured = await client("fillRecipe", { body: { recipe, shelf, pouredMl: 700 } });
  expect(poured.slots[0]?.asked[0]?.missing.at(-1)?.fact).toBe("volume left");
  expect(poured.best).toBeNull();
});

test("an empty slot: what to look for, and a bottle that could be bought is tried in it", async () => {
  const less = { whiskeys: shelf.whiskeys.filter(({ id }: { id: string }) => id !== "stile-end") };
  const bought = shelf.whiskeys.filter(({ id }: { id: string }) => id === "stile-end");
  const answer = await client("fillRecipe", { body: { recipe, shelf: less, couldBuy: bought } });
  expect(answer.empty).toEqual([2]);
  expect(answer.best?.ids).toEqual(["copper-hood", null, "soft-loaf"]);
  // What the shelf's own bottles leave missing is what the missing bottle has.
  expect(answer.wanted[0]?.profile["spice.sharp"]).toBeCloseTo(8, 9);
  expect(answer.bought[0]?.ids).toEqual(["copper-hood", "stile-end", "soft-loaf"]);
});

test("what the file does not say of the original is worked out, as far as it is known of every slot", async () => {
  const { original: _, ...bare } = recipe;
  const answer = await client("fillRecipe", { body: { recipe: bare, shelf } });
  expect(answer.counted).toEqual({ attributes: [], strength: true, age: true });
  // 3 of 58.9, 2 of 59.03 and 1 of 46 % vol: a mean of 56.79, and a little above.
  const strength = answer.best?.off.find(({ what }) => what === "strength");
  expect(strength?.original).toBeGreaterThan(56.79);
  expect(strength?.original).toBeLessThan(56.9);
  const nothing = { ...bare, slots: [{ parts: 1, rule: "anything" }] };
  const { issues } = await refusalOf(client("fillRecipe", { body: { recipe: nothing, shelf } }));
  expect(issues[0]).toMatchObject({ code: "nothing_to_come_close_to" });
});
