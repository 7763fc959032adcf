import { describe, expect, test } from "vitest";
import type { FlightEvidence } from "./flight-evidence.ts";
import { ordersFound, repeatsFound } from "./repeats-found.ts";

/** A flight of five glasses, the first two of one name, put in order once. */
const flight = (number: number, ranking: readonly (readonly number[])[]): FlightEvidence => ({
  flightId: `flight ${number}`,
  name: `Evening ${number}`,
  revealedAt: "2026-11-01T20:00:00Z",
  question: "like_best",
  glasses: ["tide", "tide", "gull", "rope", "mill"].map((nameId) => ({ nameId, label: nameId })),
  labels: new Map([["tide", "Saltreach Tide"]]),
  offer: {},
  targetNameId: null,
  sheets: [
    {
      sheetId: `sheet ${number}`,
      tasterId: "Pell",
      order: [0, 1, 2, 3, 4],
      placed: [{ ranking, served: [0, 1, 2, 3, 4] }],
      guesses: [],
      sure: [],
      scores: [],
      written: () => [],
    },
  ],
  sets: null,
});
const near = [[2], [0], [1], [3], [4]];

// Of the 10 pairs of places among five, 4 are next to each other: p = 0.4 for one pair, 0.4³ = 0.064, 0.4⁴ = 0.0256.
describe("the same whiskey poured twice", () => {
  test("pairs too few to show steadiness, however near, are never called luck", () => {
    for (const [count, pairs, p] of [
      [1, "1 pair", "0.4"],
      [3, "3 pairs", "0.064"],
    ] as const) {
      const found = repeatsFound(
        Array.from({ length: count }, (_, i) => flight(i, near)),
        "Pell",
      );
      expect(found?.leastP).toBeCloseTo(0.4 ** count, 12);
      expect(found?.sentence).toMatch(
        new RegExp(
          `Whether they put the same whiskey near itself ${pairs} cannot show, however near \\(p = ${p}\\)\\.$`,
        ),
      );
      expect(found?.sentence).not.toMatch(/well be luck|so near/);
    }
  });

  test("four pairs can show it: the verdict follows how near they were put", () => {
    const put = (ranking: readonly (readonly number[])[]) =>
      repeatsFound(
        Array.from({ length: 4 }, (_, i) => flight(i, ranking)),
        "Pell",
      );
    expect(put(near)?.luck.p).toBeCloseTo(0.4 ** 4, 12);
    expect(put(near)?.sentence).toContain("so near that it is hard to put down to luck (p = 0.026, ");
    expect(put([[0], [2], [3], [4], [1]])?.sentence).toContain("so near that it could well be luck (p = 1, ");
  });
});

describe("the same glasses put in order twice", () => {
  const again = (count: number, size: number, second: readonly number[]) => {
    const order = Array.from({ length: size }, (_, i) => i);
    const one = flight(1, near);
    const [sheet] = one.sheets;
    if (sheet === undefined) throw new Error("a flight requires a sheet, got none");
    const placed = [order, second].map((glasses) => ({
      ranking: glasses.map((glass) => [glass]),
      served: order,
    }));
    const glasses = order.map((glass) => ({ nameId: `name ${glass}`, label: "" }));
    return ordersFound(
      Array.from({ length: count }, () => ({
        ...one,
        question: "agree_with_myself" as const,
        glasses,
        sheets: [{ ...sheet, placed }],
      })),
      "Pell",
    );
  };

  test("three glasses once cannot show it, however alike: all three pairs again have 1 in 3!", () => {
    const found = again(1, 3, [0, 1, 2]);
    expect(found?.leastP).toBeCloseTo(1 / 6, 12);
    expect(found?.sentence).toMatch(
      /Whether they put the same glasses in the same order again 3 pairs cannot show, however alike \(p = 0\.17\)\.$/,
    );
    expect(found?.sentence).not.toMatch(/luck/);
  });

  test("four glasses can show it: the verdict follows how many pairs were kept", () => {
    expect(again(1, 4, [0, 1, 2, 3])).toMatchObject({ kept: 6, leastP: expect.closeTo(1 / 24, 12) });
    expect(again(1, 4, [0, 1, 2, 3])?.sentence).toContain("that is hard to put down to luck (p = 0.042, ");
    expect(again(1, 4, [3, 2, 1, 0])?.sentence).toContain("that could well be luck (p = 1, ");
  });
});
