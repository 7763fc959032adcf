import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { createClient, type NextFlightDraft, nextFlightSchema } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const docs = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../../../docs/${name}`, import.meta.url), "utf8"));
const example: NextFlightDraft = docs("saltreach-history.json");
const { scores: exampleScores, ...history } = example;

test("docs/next.schema.json is the schema that reads a file", () => {
  expect(docs("next.schema.json")).toEqual(JSON.parse(JSON.stringify(nextFlightSchema())));
});

test("the example: five glasses, the anchor first, beliefs of all seven recipes, an unknown level among them", async () => {
  const answer = await client("nextFlight", { body: example });
  expect(answer.glasses).toHaveLength(5);
  const top = answer.posterior.toSorted((a, b) => b.mean - a.mean)[0];
  expect(answer.glasses[0]?.parts).toEqual(example.tried.find(({ id }) => id === top?.id)?.parts);
  expect(answer.posterior.map(({ id }) => id)).toEqual(example.tried.map(({ id }) => id));
  expect(answer.posterior.reduce((sum, { pBest }) => sum + pBest, 0)).toBeCloseTo(1, 9);
  // Last in every flight it stood in: no chance to speak of.
  expect(answer.posterior.find(({ id }) => id === "third")?.pBest).toBeLessThan(0.05);
  expect(await client("nextFlight", { body: example })).toEqual(answer);
  expect(exampleScores).toHaveLength(1);
  expect(answer.counted).toEqual({ rankings: 4, marks: 5 });
});

test("rankings may say whose they are: one taster is as nobody named", async () => {
  const plain = await client("nextFlight", { body: history });
  const named = history.rankings.flatMap((order) =>
    Array.isArray(order) ? [{ taster: "Ilka", order }] : [],
  );
  expect(await client("nextFlight", { body: { ...history, rankings: named } })).toEqual(plain);
  expect(plain.ownShare).toBe(0);
});

const scores = [
  {
    taster: "Ilka",
    flight: "fifth",
    scale: [0, 100] as [number, number],
    marks: { first: 82, fifth: [88, 85] },
  },
];

test("marks beside rankings; a sheet that has both counts once, by the one that says more", async () => {
  const plain = await client("nextFlight", { body: history });
  expect(plain.counted).toEqual({ rankings: 4, marks: 0 });
  const more = await client("nextFlight", { body: { ...history, scores } });
  expect(more.counted).toEqual({ rankings: 4, marks: 3 });
  expect(more.posterior).not.toEqual(plain.posterior);
  const both = (order: string[][]) => [...history.rankings, { taster: "Ilka", flight: "fifth", order }];
  const once = await client("nextFlight", {
    body: { ...history, scores, rankings: both([["fifth"], ["first"]]) },
  });
  expect(once).toEqual(more);
  const wider = await client("nextFlight", {
    body: { ...history, scores, rankings: both([["fifth"], ["first"], ["second"]]) },
  });
  expect(wider.counted).toEqual({ rankings: 5, marks: 0 });
});

test("with a target better is closer: marks of liking are left out, the target stands at the top unmarked", async () => {
  const [sheet] = scores;
  const to = (of: "liking" | "closeness" | undefined) => ({
    ...history,
    target: "third",
    scores: [{ ...sheet, marks: { first: 40, fifth: 60, second: 20 }, ...(of && { of }) }],
  });
  const close = await client("nextFlight", { body: to("closeness") });
  expect(close.counted).toEqual({ rankings: 4, marks: 3 });
  expect(await client("nextFlight", { body: to(undefined) })).toEqual(close);
  const liked = await client("nextFlight", { body: to("liking") });
  expect(liked.counted).toEqual({ rankings: 4, marks: 0 });
  const worth = (of: typeof close): number => of.posterior.find(({ id }) => id === "third")?.mean ?? 0;
  expect(worth(close)).toBeGreaterThan(worth(liked));
});

test("what is left: all glasses together take no more, mixes measured in steps of 0.5 mL; who is short is named", async () => {
  const ids = history.items.map(({ id }) => id);
  const plain = await client("nextFlight", { body: history });
  expect(plain.scarce).toEqual([]);
  const much = Object.fromEntries(ids.map((id) => [id, 5000]));
  expect(await client("nextFlight", { body: { ...history, shelf: { leftMl: much } } })).toEqual(plain);
  // 60 mL of a mix: too little for all that stood in the flight before.
  const leftMl = { ...much, "sweet-sack": 25, "full-kettle": 40 };
  const { glasses, scarce } = await client("nextFlight", {
    body: { ...history, shelf: { leftMl, mixMl: 60 } },
  });
  expect(scarce).toEqual(ids.filter((id) => id === "sweet-sack" || id === "full-kettle"));
  expect(glasses).toHaveLength(5);
  for (const id of ["sweet-sack", "full-kettle"] as const) {
    const taken = glasses.map(({ parts }) => {
      const all = Object.values(parts).reduce((sum, part) => sum + part, 0);
      return (60 * (parts[id] ?? 0)) / all;
    });
    // A share is off by a hundredth at most.
    expect(taken.reduce((sum, ml) => sum + ml, 0)).toBeLessThanOrEqual(leftMl[id] + 0.6 * glasses.length);
  }
});

describe("glasses decided otherwise", () => {
  const ids = history.items.map(({ id }) => id);
  const leftMl = { ...Object.fromEntries(ids.map((id) => [id, 5000])), "sweet-sack": 40 };
  const shelf = { leftMl, mixMl: 60 };
  const ask = (instead: NextFlightDraft["instead"]) =>
    client("nextFlight", { body: { ...history, shelf, ...(instead && { instead }) } });

  test("N5 change nothing in what is proposed; with which item they go beyond what is left is told, and by how much", async () => {
    const plain = await ask(undefined);
    expect(plain.lacks).toEqual([]);
    const own = await ask([{ glass: 3, parts: { "sweet-sack": 1 } }]);
    expect({ ...own, lacks: [] }).toEqual(plain);
    // 60 mL of it for the own glass, and what the others take of it: none of them is changed for that.
    const others = plain.glasses.flatMap(({ parts }, i) => (i === 2 ? [] : [parts]));
    const taken = others.map((parts) => {
      const all = Object.values(parts).reduce((sum, part) => sum + part, 0);
      return (60 * (parts["sweet-sack"] ?? 0)) / all;
    });
    const need = 60 + taken.reduce((sum, ml) => sum + ml, 0);
    expect(own.lacks).toEqual([{ id: "sweet-sack", needMl: expect.any(Number), leftMl: 40 }]);
    // A share is off by a hundredth at most, and 0.5 mL are a step.
    expect(Math.abs((own.lacks[0]?.needMl ?? 0) - need)).toBeLessThanOrEqual(1.1 * others.length);
    // Left out, it lacks nothing any more.
    expect((await ask([{ glass: 3, parts: null }])).lacks).toEqual([]);
  });

  test("N5 what stands ready is poured as it is", async () => {
    const instead = [{ glass: 3, parts: { "sweet-sack": 2 } }];
    const body = { ...history, mixes: ids.filter((id) => id !== "sweet-sack"), instead };
    const mixed = await client("nextFlight", { body: { ...body, shelf } });
    expect(mixed.lacks).toEqual([{ id: "sweet-sack", needMl: 60, leftMl: 40 }]);
    const stands = await client("nextFlight", {
      body: { ...body, shelf: { ...shelf, stands: [{ "sweet-sack": 1 }] } },
    });
    expect(stands.lacks).toEqual([]);
  });

  test("N5 a glass that is not proposed is refused", async () => {
    const refusal = await refusalOf(ask([{ glass: 9, parts: null }]));
    expect(refusal.issues).toEqual([
      expect.objectContaining({
        code: "glass_unknown",
        path: ["instead", 0, "glass"],
        limit: "1 to 5, the glasses that are proposed",
        received: 9,
      }),
    ]);
  });
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
    [
      "a mark of what was not tried",
      "not_tried",
      ["scores", 0, "marks", "x"],
      { scores: [{ marks: { x: 1 } }] },
    ],
    [
      "a mark outside its scale",
      "mark_outside_scale",
      ["scores", 0, "marks", "first", 1],
      { scores: [{ scale: [0, 10], marks: { first: [3, 11] } }] },
    ],
    [
      "a scale upside down",
      "scale_upside_down",
      ["scores", 0, "scale"],
      { scores: [{ scale: [10, 0], marks: { first: 3 } }] },
    ],
    [
      "closeness to nothing",
      "closeness_without_target",
      ["scores", 0, "of"],
      { scores: [{ of: "closeness", marks: { first: 3 } }] },
    ],
    [
      "what is left of no item",
      "item_unknown",
      ["shelf", "leftMl", "rye"],
      { shelf: { leftMl: { rye: 30 } } },
    ],
    [
      "less than nothing left",
      "value_too_small",
      ["shelf", "leftMl", first.id],
      { shelf: { leftMl: { [first.id]: -1 } } },
    ],
    [
      "a mix larger than can be told",
      "value_too_large",
      ["shelf", "mixMl"],
      { shelf: { leftMl: {}, mixMl: 201 } },
    ],
    [
      "a recipe that stands ready of no item",
      "item_unknown",
      ["shelf", "stands", 0, "rye"],
      { shelf: { leftMl: {}, stands: [{ rye: 1 }] } },
    ],
    [
      "a glass of one's own of no item",
      "item_unknown",
      ["instead", 0, "parts", "rye"],
      { instead: [{ glass: 2, parts: { rye: 1 } }] },
    ],
    [
      "a glass decided otherwise twice",
      "glass_twice",
      ["instead", 1, "glass"],
      {
        instead: [
          { glass: 2, parts: null },
          { glass: 2, parts: null },
        ],
      },
    ],
    ["one twice in a ranking", "ranked_twice", ["rankings", 0, 1, 0], { rankings: [[["first"], ["first"]]] }],
  ])("%s", async (_, code, path, change) => {
    const refusal = await refusalOf(client("nextFlight", { body: { ...history, ...change } }));
    expect(refusal.issues).toContainEqual(expect.objectContaining({ code, path }));
  });
});
