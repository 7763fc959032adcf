import type { Recipe } from "@partsproof/house/protocol";
import { expect, test } from "vitest";
import { lowestTerms, printRatio } from "./lowest-terms.ts";
import { namedIssues } from "./named-issues.ts";
import { asTyped, BLANK, isOtherBody, readBody } from "./recipe-typed.ts";

const ID = "01kr6txbb0jkzbh387qgxyr5t7";
const recipe: Recipe = {
  id: ID,
  version: 3,
  name: "Two to one",
  targetWhiskeyId: null,
  latest: {
    number: 2,
    slots: [
      { parts: 2, of: { kind: "whiskey", whiskeyId: ID } },
      { parts: 1, of: { kind: "batch", batchId: ID } },
    ],
    waterTo: { basis: "proof60F", value: 92 },
    restDays: 28,
    oak: "one stick",
    note: "a note",
    createdAt: "2026-01-01T00:00:00.000Z",
  },
  createdAt: "2026-01-01T00:00:00.000Z",
  updatedAt: "2026-01-01T00:00:00.000Z",
};

test("a recipe typed out and read back is the same recipe, its water on the basis it was written", () => {
  const read = readBody(asTyped(recipe));
  const { number: _, createdAt: __, ...body } = recipe.latest;
  expect(read).toEqual({ ok: true, body });
});

test("what cannot be read is told with the paths of the fields", () => {
  const read = readBody({ ...BLANK, water: "lots", rest: "a month" });
  expect(read.ok ? [] : read.issues.map(({ path }) => path)).toEqual([
    ["slots", 0, "of"],
    ["slots", 1, "of"],
    ["waterTo"],
    ["restDays"],
  ]);
});

test("a new name is no new version; parts, water, rest, oak or note are", () => {
  const typed = asTyped(recipe);
  expect(isOtherBody(typed, { ...typed, name: "Other", target: ID })).toBe(false);
  expect(isOtherBody(typed, { ...typed, water: "46%" })).toBe(true);
  expect(isOtherBody(typed, { ...typed, slots: typed.slots.toReversed() })).toBe(true);
});

test("R1 parts are kept as written and shown in lowest terms too", () => {
  expect(printRatio([4, 2])).toBe("4 : 2, that is 2 : 1");
  expect(printRatio([3, 0, 1])).toBe("3 : 1");
  expect(lowestTerms([0, 0])).toEqual([0, 0]);
});

test("an issue names a whiskey, not its id", () => {
  const stocks = new Map([[`whiskey:${ID}`, { label: "Slack Water", abv20: 46, perMl: [] }]]);
  const issue = {
    code: "slot_repeated",
    path: ["slots", 1, "of"],
    limit: "",
    received: ID,
    message: `got ${ID} twice`,
  };
  expect(namedIssues([issue], stocks).map(({ message }) => message)).toEqual(["got Slack Water twice"]);
});
