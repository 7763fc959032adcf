import { readFileSync } from "node:fs";
import { MOST_PIECES, openRest, REFERENCE } from "@partsproof/core/rest";
import { expect, test } from "vitest";
import { createClient, restSchema } from "../../protocol/index.ts";
import { openReckoner } from "../../open-reckoner.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const client = createClient(openReckoner(), "http://reckoner.test");
const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../../../${path}`, import.meta.url), "utf8"));
const pull = { attribute: "toasted wood", level: 6 };

test("docs/rest.schema.json is the schemas that read the file", () => {
  expect(read("docs/rest.schema.json")).toEqual(JSON.parse(JSON.stringify(restSchema())));
});

test("every number is core's, for every attribute that was tasted", async () => {
  const answer = await client("rest", {
    body: {
      pull,
      tastings: [
        { day: 4, levels: { "toasted wood": 3, vanilla: 4 } },
        { day: 9, levels: { "toasted wood": 5 } },
      ],
    },
  });
  const rest = openRest({
    conditions: REFERENCE,
    course: "rises",
    form: "two-stage",
    pullAt: 6,
    leadsAt: 7.5,
  });
  const belief = rest(
    [
      { day: 4, level: 3 },
      { day: 9, level: 5 },
    ],
    9,
  );
  expect(answer.today).toBe(9);
  expect(answer.leadsAt).toBe(7.5);
  expect(answer.ready.middle).toBe(belief.ready.middle);
  expect(answer.ready.never).toBe(belief.ready.never);
  expect(answer.nextTastings).toEqual(belief.nextTastings());
  expect(answer.attributes.map(({ attribute, tastings }) => [attribute, tastings])).toEqual([
    ["toasted wood", 2],
    ["vanilla", 1],
  ]);
  expect(answer.notKnown).toContain("Nobody has published constants");
  expect(answer.cautions.join(" ")).toContain("lead crystal");
});

test("pieces with days of their own are core's too; the same wood said as pieces or as one is the same", async () => {
  const tastings = [{ day: 6, levels: { "toasted wood": 3.5 } }];
  const answer = await client("rest", {
    body: {
      pull,
      oak: {
        pieces: [
          { areaPerLitre: 46, outDay: 9 },
          { areaPerLitre: 92, thicknessMm: 5, use: 2, inDay: 4 },
        ],
      },
      today: 12,
      tastings,
    },
  });
  const wood = { thicknessCm: 0.7, use: 1, inDay: 0, outDay: null };
  const believed = openRest({
    conditions: REFERENCE,
    pieces: [
      { ...wood, caskRatio: 0.5, outDay: 9 },
      { caskRatio: 1, thicknessCm: 0.5, use: 2, inDay: 4, outDay: null },
    ],
    course: "rises",
    form: "two-stage",
    pullAt: 6,
    leadsAt: 7.5,
  })([{ day: 6, level: 3.5 }], 12);
  expect(answer.ready).toEqual(believed.ready);
  const two = await client("rest", {
    body: { pull, oak: { pieces: [{ areaPerLitre: 23 }, { areaPerLitre: 69 }] }, tastings },
  });
  expect(two.ready).toEqual(
    (await client("rest", { body: { pull, oak: { areaPerLitre: 92 }, tastings } })).ready,
  );
  const most = Array.from({ length: MOST_PIECES }, (_, inDay) => ({ areaPerLitre: 10, inDay }));
  const asked = (pieces: readonly object[]) => client("rest", { body: { pull, oak: { pieces } } as never });
  expect((await asked(most)).sentences.length).toBeGreaterThan(0);
  expect((await refusalOf(asked([...most, { areaPerLitre: 10 }]))).issues[0]).toMatchObject({
    path: ["oak", "pieces"],
  });
});

test("the sentences say when to taste, when it is ready and when the oak leads", async () => {
  const body = {
    pull,
    tastings: [
      { day: 4, levels: { "toasted wood": 3.5 } },
      { day: 8, levels: { "toasted wood": 5.5 } },
      { day: 10, levels: { "toasted wood": 5 } },
    ],
  };
  const { sentences } = await client("rest", { body });
  expect(sentences[0]).toMatch(/^Taste again on day \d+\.$|^It is as likely as not there already/);
  expect(sentences.join(" ")).toMatch(/between day \d+ and day \d+/);
  const gone = await client("rest", {
    body: {
      pull,
      tastings: [
        { day: 9, levels: { "toasted wood": 9 } },
        { day: 12, levels: { "toasted wood": 9 } },
      ],
    },
  });
  expect(gone.sentences[0]).toContain("taste today");
  expect(gone.sentences.at(-1)).toBe("As likely as not the oak leads already.");
  const used = await client("rest", { body: { pull, oak: { use: 3, areaPerLitre: 30 } } });
  expect(used.ready.low).toBeNull();
  expect(used.sentences.join(" ")).toMatch(
    /never reaches 6 with this wood: about 9\d in 100|next to certain/,
  );
});

test("what cannot be is refused at its place", async () => {
  for (const [body, code, path] of [
    [{ pull, leadsAt: 5 }, "leads_below_pull", ["leadsAt"]],
    [{ pull, today: 3, tastings: [{ day: 4, levels: {} }] }, "tasting_after_today", ["tastings", 0, "day"]],
    [
      { pull, tastings: [{ day: 4, levels: { vanilla: 11 } }] },
      "value_too_large",
      ["tastings", 0, "levels", "vanilla"],
    ],
    [{ pull, oak: { use: 2, pieces: [{ areaPerLitre: 10 }] } }, "pieces_or_one_wood", ["oak"]],
    [
      { pull, oak: { pieces: [{ areaPerLitre: 10, inDay: 5, outDay: 4 }] } },
      "out_before_in",
      ["oak", "pieces", 0, "outDay"],
    ],
    [{ pull, strength: 60 }, "unknown_field", ["strength"]],
  ] as const) {
    const [issue] = (await refusalOf(client("rest", { body: body as never }))).issues;
    expect(issue).toMatchObject({ code, path });
  }
});
