import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient, type NextFlightDraft, nextFlightSchema } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const docs = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../../../docs/${name}`, import.meta.url), "utf8"));
const history: NextFlightDraft = docs("saltreach-history.json");

test("docs/next.schema.json is the schema that reads a file", () => {
  expect(docs("next.schema.json")).toEqual(JSON.parse(JSON.stringify(nextFlightSchema())));
});

test("the example: five glasses, the anchor first, beliefs of all seven recipes, an unknown level among them", async () => {
  const answer = await client("nextFlight", { body: history });
  expect(answer.glasses).toHaveLength(5);
  const top = answer.posterior.toSorted((a, b) => b.mean - a.mean)[0];
  expect(answer.glasses[0]?.parts).toEqual(history.tried.find(({ id }) => id === top?.id)?.parts);
  expect(answer.posterior.map(({ id }) => id)).toEqual(history.tried.map(({ id }) => id));
  expect(answer.posterior.reduce((sum, { pBest }) => sum + pBest, 0)).toBeCloseTo(1, 9);
  // Last in every flight it stood in: no chance to speak of.
  expect(answer.posterior.find(({ id }) => id === "third")?.pBest).toBeLessThan(0.05);
  expect(await client("nextFlight", { body: history })).toEqual(answer);
});

test("rankings may say whose they are: one taster is as nobody named", async () => {
  const plain = await client("nextFlight", { body: history });
  const named = history.rankings.flatMap((order) =>
    Array.isArray(order) ? [{ taster: "Ilka", order }] : [],
  );
  expect(await client("nextFlight", { body: { ...history, rankings: named } })).toEqual(plain);
  expect(plain.ownShare).toBe(0);
});

describe("bad input says what and where", () => {
  const first = history.items[0] as NextFlightDraft["items"][number];
  test.each<[string, string, (string | number)[], Partial<NextFlightDraft>]>([
    ["an item twice", "id_twice", ["items", 1, "id"], { items: [first, first], tried: [], rankings: [] }],
    [
      "parts of what is no item",
      "item_unknown",
      ["tried", 0, "parts", "rye"],
      { tried: [{ id: "x", parts: { rye: 1 } }], rankings: [] },
    ],
    [
      "a ranking of what was not tried",
      "not_tried",
      ["rankings", 0, 1, 0],
      { rankings: [[["first"], ["x"]]] },
    ],
    [
      "a taster's ranking of what was not tried",
      "not_tried",
      ["rankings", 0, "order", 0, 0],
      { rankings: [{ taster: "Ilka", order: [["x"], ["first"]] }] },
    ],
    ["one twice in a ranking", "ranked_twice", ["rankings", 0, 1, 0], { rankings: [[["first"], ["first"]]] }],
  ])("%s", async (_, code, path, change) => {
    const refusal = await refusalOf(client("nextFlight", { body: { ...history, ...change } }));
    expect(refusal.issues).toContainEqual(expect.objectContaining({ code, path }));
  });
});
