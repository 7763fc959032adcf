import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { openReckoner } from "../../open-reckoner.ts";
import { countsSchema, createClient, MixtureDraft, PairsDraft, RankDraft } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";
import published from "./counts.published.json" with { type: "json" };

const client = createClient(openReckoner(), "http://reckoner.test");
const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../../../${path}`, import.meta.url), "utf8"));
const farthest = (got: readonly number[] | null, expected: readonly number[]): number =>
  Math.max(...expected.map((x, i) => Math.abs(x - (got?.[i] ?? Number.NaN))));

test("N2 the published schema is the one the house reads by, and the examples keep to it", () => {
  expect(read("docs/counts.schema.json")).toEqual(JSON.parse(JSON.stringify(countsSchema())));
  for (const [schema, name] of [
    [RankDraft, "rankings"],
    [PairsDraft, "wins"],
    [MixtureDraft, "runs"],
  ] as const)
    expect(schema.safeParse(read(`examples/saltreach-${name}.json`)).success).toBe(true);
});

test("N1 published figures through the API: salad dressings, journals, yarn, finding first base", async () => {
  const { salad, citations, yarn, bases } = published;
  const rankings = salad.orderings.map((order) => Array.from(order, (item) => [item]));
  const ranked = await client("countsRank", { body: { items: ["A", "B", "C", "D"], rankings } });
  const pairs = await client("countsPairs", { body: { items: citations.items, wins: citations.wins } });
  const fit = await client("countsMixture", { body: { components: ["x1", "x2", "x3"], runs: yarn.runs } });
  const names = ["round out", "narrow angle", "wide angle"];
  const times = bases.times.map((row) =>
    [...new Set(row)].toSorted((a, b) => a - b).map((time) => names.filter((_, i) => row[i] === time)),
  );
  const agreed = await client("countsRank", { body: { items: names, rankings: times } });
  const off = {
    friedman: Math.abs((ranked.friedman.statistic ?? 0) - salad.chi2),
    chiSquareP: Math.abs((ranked.friedman.pChiSquare ?? 0) - salad.p),
    tied: Math.abs((agreed.friedman.statistic ?? 0) - bases.chi2),
    tiedP: Math.abs((agreed.friedman.pChiSquare ?? 0) - bases.p),
    w: Math.abs((agreed.kendallW ?? 0) - bases.w),
    worths: farthest(ranked.plackettLuce.logWorth, salad.logWorth),
    likelihood: Math.abs((ranked.plackettLuce.logLikelihood ?? 0) - salad.logLikelihood),
    pairs: farthest(pairs.logWorth, citations.logWorth),
    errors: farthest(pairs.standardError, citations.standardError),
    mixture: Math.max(
      ...Object.entries(yarn.coefficients).map(([term, value]) =>
        Math.abs((fit.coefficients?.[term] ?? 0) - value),
      ),
      ...Object.entries(yarn.standardErrors).map(([term, value]) =>
        Math.abs((fit.standardErrors?.[term] ?? 0) - value),
      ),
      Math.abs((fit.sigma ?? 0) - yarn.sigma),
      Math.abs((fit.rSquared ?? 0) - yarn.rSquared),
    ),
  };
  console.log(`counts against published figures: ${JSON.stringify(off)}`);
  expect(Math.max(off.friedman, off.tied, off.w, off.tiedP, off.mixture)).toBeLessThan(1e-9);
  expect(off.chiSquareP).toBeLessThan(1e-15);
  expect(Math.max(off.worths, off.likelihood, off.pairs, off.errors)).toBeLessThan(1e-6);
});

test("N1 seven teams of a league (Agresti, Categorical Data Analysis; from memory): the printed log worths", async () => {
  const items = ["Baltimore", "Milwaukee", "Detroit", "Toronto", "New York", "Boston", "Cleveland"];
  const wins = [
    [0, 2, 4, 1, 3, 1, 7],
    [11, 0, 7, 9, 7, 7, 9],
    [9, 6, 0, 7, 5, 11, 9],
    [12, 4, 6, 0, 7, 7, 8],
    [10, 6, 8, 6, 0, 6, 7],
    [12, 6, 2, 6, 7, 0, 7],
    [6, 4, 4, 5, 6, 6, 0],
  ];
  const { logWorth, tieParameter } = await client("countsPairs", { body: { items, wins } });
  expect(logWorth?.map((x) => Number(x.toFixed(2)))).toEqual([0, 1.58, 1.44, 1.29, 1.25, 1.11, 0.68]);
  expect(tieParameter).toBe(0);
});

test("N6 none right, all right, the largest: answers without a bound are null with a reason", async () => {
  const asked = (right: number, of: number) =>
    client("countsDiffer", { body: { test: "triangle", right, of } });
  expect(await asked(0, 3)).toMatchObject({
    p: 1,
    dPrime: 0,
    dPrimeExact: [0, expect.any(Number)],
    critical5: 3,
  });
  expect(await asked(2, 2)).toMatchObject({
    p: 1 / 9,
    critical5: null,
    dPrime: null,
    dPrimeInterval: [expect.any(Number), null],
    dPrimeReason: { code: "all_right" },
  });
  // scipy 1.17.1, binom.sf(3399, 10000, 1/3).
  expect((await asked(3400, 10_000)).p).toBeCloseTo(0.0803856043824, 12);
  const all = await client("countsMatch", { body: { glasses: 60, right: 60 } });
  expect(all.known).toMatchObject({ share: expect.closeTo(1, 6) });
  // Far fewer right than luck gives.
  const few = { glasses: 4, right: 0, sheets: 30, pours: [2, 2] };
  expect(await client("countsMatch", { body: few })).toMatchObject({ known: { share: 0, interval: [0, 0] } });
  expect(await client("countsMatch", { body: { glasses: 5, right: 4 } })).toMatchObject({
    pAtLeast: 1 / 120,
    known: null,
    knownReason: { code: "cannot_come_up" },
  });
});

test("N4 N5 separated and disconnected data, names like others: null, why, and beliefs", async () => {
  const items = ["__proto__", "constructor", "toString"];
  const separated = await client("countsRank", {
    body: { items, rankings: [[["__proto__"], ["constructor"], ["toString"]]] },
  });
  expect(separated.plackettLuce).toMatchObject({
    logWorth: null,
    reason: { code: "always_ahead", ahead: ["__proto__"], behind: ["constructor", "toString"] },
  });
  expect(separated.bayesian.better[0]?.[2]).toBeGreaterThan(0.6);
  const apart = await client("countsPairs", {
    body: {
      items: ["a", "b", "c", "d"],
      wins: [
        [0, 2, 0, 0],
        [1, 0, 0, 0],
        [0, 0, 0, 1],
        [0, 0, 3, 0],
      ],
    },
  });
  expect(apart.reason).toMatchObject({ code: "never_compared", ahead: ["a", "b"], behind: ["c", "d"] });
  expect(apart.tieParameter).toBeNull();
  expect(apart.bayesian.better[0]?.[1]).toBeGreaterThan(0.5);
  const nothing = await client("countsPairs", {
    body: {
      items: ["a", "b"],
      wins: [
        [0, 0],
        [0, 0],
      ],
    },
  });
  expect(nothing.bayesian.better[0]?.[1]).toBeCloseTo(0.5, 1);
});

test("N7 asked twice, the same; tasters and the order of serving are taken in", async () => {
  const body = {
    items: ["a", "b", "c"],
    rankings: [
      [["a"], ["b"], ["c"]],
      [["b"], ["a"], ["c"]],
      [["c"], ["a", "b"]],
      [["a"], ["c"], ["b"]],
    ],
    tasters: ["x", "y", "x", "y"],
    served: [
      ["a", "b", "c"],
      ["b", "c", "a"],
      ["c", "a", "b"],
      ["a", "c", "b"],
    ],
  };
  const first = await client("countsRank", { body });
  expect(await client("countsRank", { body })).toEqual(first);
  expect(first.bayesian.spread?.map(({ sd }) => sd)).toEqual([0, 0.5, 1, 2]);
  const served = await client("countsPairs", {
    body: {
      items: ["a", "b"],
      served: [
        { first: "a", second: "b", firstWon: 6, secondWon: 2 },
        { first: "b", second: "a", firstWon: 5, secondWon: 3 },
      ],
    },
  });
  // By hand: log odds of coming first in either order, half their sum and half their difference.
  const [one, two] = [Math.log(6 / 2), Math.log(5 / 3)];
  expect(served.orderEffect?.value).toBeCloseTo((one + two) / 2, 9);
  expect(served.logWorth?.[1]).toBeCloseTo(-(one - two) / 2, 9);
});

const rank = (change: object): never =>
  ({ items: ["a", "b"], rankings: [[["a"], ["b"]]], ...change }) as never;
const pairs = (change: object): never =>
  ({
    items: ["a", "b"],
    wins: [
      [0, 1],
      [2, 0],
    ],
    ...change,
  }) as never;
const mixture = (change: object): never =>
  ({ components: ["a", "b"], runs: [{ x: [1, 0], y: 1 }], ...change }) as never;

test.each([
  [
    "more right than answers",
    "countsDiffer",
    { test: "triangle", right: 4, of: 3 } as never,
    "right_above_of",
    ["right"],
  ],
  ["no answers", "countsDiffer", { test: "triangle", right: 0, of: 0 } as never, "value_too_small", ["of"]],
  [
    "half an answer",
    "countsDiffer",
    { test: "triangle", right: 0.5, of: 3 } as never,
    "wrong_type",
    ["right"],
  ],
  [
    "too many",
    "countsDiffer",
    { test: "triangle", right: 1, of: 10_001 } as never,
    "value_too_large",
    ["of"],
  ],
  ["an unknown test", "countsDiffer", { test: "square", right: 1, of: 3 } as never, "unknown_word", ["test"]],
  [
    "two sides of a triangle",
    "countsDiffer",
    { test: "triangle", right: 1, of: 3, sides: 2 } as never,
    "sides_not_for_test",
    ["sides"],
  ],
  [
    "pours that are not the glasses",
    "countsMatch",
    { glasses: 5, right: 1, pours: [2, 2] } as never,
    "pours_do_not_add_up",
    ["pours"],
  ],
  [
    "more right than glasses",
    "countsMatch",
    { glasses: 5, right: 11, sheets: 2 } as never,
    "right_above_glasses",
    ["right"],
  ],
  [
    "too many ways to know",
    "countsCouldShow",
    { of: "match", glasses: 60, known: 3, pours: [10, 10, 10, 10, 10, 10] } as never,
    "too_many_ways",
    ["pours"],
  ],
  ["an unknown field", "countsRank", rank({ raters: [] }), "unknown_field", ["raters"]],
  [
    "an unknown item",
    "countsRank",
    rank({ rankings: [[["a"], ["c"]]] }),
    "name_unknown",
    ["rankings", 0, 1, 0],
  ],
  ["an item twice", "countsRank", rank({ rankings: [[["a"], ["a"]]] }), "name_twice", ["rankings", 0, 1, 0]],
  ["a name twice", "countsRank", rank({ items: ["a", "a"] }), "name_twice", ["items", 1]],
  ["no ranking", "countsRank", rank({ rankings: [] }), "value_too_small", ["rankings"]],
  ["an empty place", "countsRank", rank({ rankings: [[[], ["a"]]] }), "value_too_small", ["rankings", 0, 0]],
  ["a flat ranking", "countsRank", rank({ rankings: [["a", "b"]] }), "wrong_type", ["rankings", 0, 0]],
  ["one taster for two", "countsRank", rank({ tasters: [] }), "not_one_each", ["tasters"]],
  ["served otherwise", "countsRank", rank({ served: [["a"]] }), "served_not_ranked", ["served", 0]],
  ["a table too small", "countsPairs", pairs({ wins: [[0, 1]] }), "table_not_square", ["wins"]],
  [
    "a diagonal",
    "countsPairs",
    pairs({
      wins: [
        [1, 1],
        [2, 0],
      ],
    }),
    "compared_with_itself",
    ["wins", 0, 0],
  ],
  [
    "half a win",
    "countsPairs",
    pairs({
      wins: [
        [0, 1.5],
        [2, 0],
      ],
    }),
    "wrong_type",
    ["wins", 0, 1],
  ],
  [
    "a win below nothing",
    "countsPairs",
    pairs({
      wins: [
        [0, -1],
        [2, 0],
      ],
    }),
    "value_too_small",
    ["wins", 0, 1],
  ],
  [
    "ties one way",
    "countsPairs",
    pairs({
      ties: [
        [0, 1],
        [2, 0],
      ],
    }),
    "ties_not_symmetric",
    ["ties", 1, 0],
  ],
  ["neither table", "countsPairs", { items: ["a", "b"] } as never, "wins_or_served", ["wins"]],
  [
    "shares short of 1",
    "countsMixture",
    mixture({ runs: [{ x: [0.4, 0.5], y: 1 }] }),
    "shares_do_not_add_up",
    ["runs", 0, "x"],
  ],
  [
    "a share too many",
    "countsMixture",
    mixture({ runs: [{ x: [0.5, 0.5, 0], y: 1 }] }),
    "not_one_each",
    ["runs", 0, "x"],
  ],
  ["no y", "countsMixture", mixture({ runs: [{ x: [1, 0], y: null }] }), "wrong_type", ["runs", 0, "y"]],
] as const)("N3 %s is refused at its place", async (_, route, body, code, path) => {
  const { status, issues } = await refusalOf(client(route, { body }));
  expect({ status, code: issues[0]?.code, path: issues[0]?.path }).toEqual({ status: 422, code, path });
});

test("a mixture: as many terms as runs go through every point and say so; thirds as written are used", async () => {
  const runs = [
    { x: [1, 0], y: 3 },
    { x: [0, 1], y: 5 },
    { x: [0.5, 0.5], y: 6 },
  ];
  const fit = await client("countsMixture", { body: { components: ["a", "b"], runs } });
  expect(fit).toMatchObject({ reason: { code: "no_degrees_left" }, standardErrors: null, df: 0 });
  expect(fit.coefficients?.["a:b"]).toBeCloseTo(8, 9);
  const thirds = {
    components: ["a", "b", "c"],
    runs: [...Array(5)].map((_, n) => ({ x: [0.33, 0.33, 0.33], y: n })),
  };
  expect(await client("countsMixture", { body: { ...thirds, model: "linear" } })).toMatchObject({
    reason: { code: "terms_not_separable" },
    notes: { length: 5 },
  });
});

test("N8 what could be shown: exact power, never a false finding above the risk", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 99 }),
      async (trials, share) => {
        const answer = await client("countsCouldShow", {
          body: { of: "differ", test: "triangle", trials, effect: { share: share / 100 } },
        });
        expect(answer.falseFinding).toBeLessThanOrEqual(0.05);
        expect(answer.power).toBeGreaterThanOrEqual(answer.falseFinding ?? 0);
      },
    ),
    { numRuns: 30 },
  );
  const match = await client("countsCouldShow", { body: { of: "match", glasses: 5, known: 5, sheets: 1 } });
  expect(match).toMatchObject({ power: 1, critical: 5, falseFinding: 1 / 120 });
  const turn = await client("countsCouldShow", {
    body: { of: "in-turn", test: "duo_trio", trials: 60, effect: { share: 0.6 } },
  });
  expect(turn.power).toBeGreaterThan(0.7);
  expect(turn.expectedTrials?.withEffect).toBeLessThan(40);
  const rank = await client("countsCouldShow", {
    body: { of: "rank", sheets: 6, logWorth: [0, 0, 0, 0], flights: 400 },
  });
  expect(rank.power).toBeLessThan(0.1);
});

test("one at a time: found when the evidence is there, and Wald's test stops", async () => {
  const results = Array.from({ length: 12 }, (_, i) => i % 6 !== 5);
  const answer = await client("countsInTurn", { body: { test: "triangle", results } });
  expect(answer).toMatchObject({ right: 10, of: 12, wald: { verdict: "difference" } });
  expect(answer.anytimeP).toBeLessThan(0.05);
  expect(answer.foundAt).not.toBeNull();
  const none = await client("countsInTurn", {
    body: { test: "triangle", results: results.map(() => false) },
  });
  expect(none).toMatchObject({ anytimeP: 1, foundAt: null, wald: { verdict: "less than the effect" } });
});
