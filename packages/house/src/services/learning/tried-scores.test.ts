import { expect, test } from "vitest";
import { triedRankings } from "./tried-rankings.ts";

const [A, B, C] = ["whiskey:a", "whiskey:b", "whiskey:c"] as const;

/** One revealed flight of one sheet: what it scored and how it ranked, glass by glass. */
const flight = (
  question: "like_best" | "how_close",
  names: readonly string[],
  scores: readonly (number | null)[],
  ranking: readonly (readonly number[])[] | null,
) => ({
  flightId: "flight",
  name: "Sunday",
  revealedAt: "2026-11-01T20:00:00.000Z",
  question,
  glasses: names.map((nameId) => ({ nameId, label: nameId })),
  labels: new Map(names.map((name) => [name, name])),
  offer: {},
  targetNameId: question === "how_close" ? C : null,
  sheets: [
    {
      sheetId: "sheet",
      tasterId: "ilka",
      order: names.map((_, glass) => glass),
      placed: ranking === null ? [] : [{ ranking, served: names.map((_, glass) => glass) }],
      guesses: [],
      sure: [],
      scores,
      written: () => [],
    },
  ],
  sets: null,
});
const by = { flightId: "flight", tasterId: "ilka" };
const said = (...given: Parameters<typeof flight>) =>
  triedRankings([flight(...given)], given[0] === "how_close" ? C : null).said;

test("N1 a sheet counts once: by its scores where they tell enough, else by its order", () => {
  const [first, second, third] = [0, 1, 2].map((glass) => [glass]) as [number[], number[], number[]];
  const order = [first, second, third];
  expect(said("like_best", [A, B, C], [80, 75, 60], order)).toEqual([
    {
      ...by,
      marks: [
        { id: A, mark: 80 },
        { id: B, mark: 75 },
        { id: C, mark: 60 },
      ],
    },
  ]);
  const ranked = [{ ...by, places: [[A], [B], [C]] }];
  expect(said("like_best", [A, B, C], [80, null, 60], order)).toEqual(ranked);
  expect(said("like_best", [A, B, C], [80, 80, 80], order)).toEqual(ranked);
  expect(said("like_best", [A, B, C], [null, null, null], order)).toEqual(ranked);
  expect(said("like_best", [A, B, C], [80, null, 60], null)).toEqual([
    {
      ...by,
      marks: [
        { id: A, mark: 80 },
        { id: C, mark: 60 },
      ],
    },
  ]);
  expect(said("like_best", [A, B], [80, null], null)).toEqual([]);
});

test("N1 a glass poured twice has both its scores, and stands in an order where it was put first", () => {
  expect(said("like_best", [A, B, A], [80, 60, 70], [[0], [2], [1]])).toEqual([
    {
      ...by,
      marks: [
        { id: A, mark: 80 },
        { id: B, mark: 60 },
        { id: A, mark: 70 },
      ],
    },
  ]);
  expect(said("like_best", [A, B, A], [80, null, 70], [[0], [1], [2]])).toEqual([
    { ...by, places: [[A], [B]] },
  ]);
});

test("N1 scores on a sheet of closeness count as closeness where its order does not say otherwise", () => {
  const marked = said("how_close", [A, B, C], [50, 40, 90], [[2], [0], [1]]);
  expect(marked).toHaveLength(1);
  expect(marked[0]).toHaveProperty("marks");
  expect(said("how_close", [A, B, C], [90, 40, 50], [[2], [0], [1]])).toEqual([
    { ...by, places: [[C], [A], [B]] },
  ]);
});

test("N1 where a target is sought and no sheet says how close, sheets of liking count by their order, scores or not", () => {
  const liked = flight("like_best", [A, B, C], [80, 75, 60], [[0], [1], [2]]);
  const ordered = [{ ...by, places: [[A], [B], [C]] }];
  expect(triedRankings([liked], "whiskey:target")).toEqual({ by: "liking", said: ordered });
  expect(triedRankings([liked], null).said[0]).toHaveProperty("marks");
});
