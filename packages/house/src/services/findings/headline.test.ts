import { describe, expect, test } from "vitest";
import { headline, type Said } from "./headline.ts";

const nothing: Said = {
  locked: 1,
  items: [],
  rankings: 0,
  toldApart: false,
  rankP: null,
  right: 0,
  guessed: 0,
  pooledP: null,
  leastSheetP: null,
};
const items = (...each: [string, number, number][]) =>
  each.map(([title, firsts, meanRank]) => ({ title, firsts, meanRank }));

describe("F16 the headline", () => {
  test("says that no sheet was locked", () => {
    expect(headline({ ...nothing, locked: 0 })).toBe("No sheet was locked, so the glasses said nothing");
  });

  test("says that nobody ranked or named anything", () => {
    expect(headline(nothing)).toBe("Nobody ranked or named a glass");
  });

  test("names the winner, on how many sheets it was first, and how much luck could do it", () => {
    const ranked = {
      ...nothing,
      locked: 4,
      rankings: 4,
      toldApart: true,
      items: items(["Saltreach 3:2", 3, 1.25], ["Lantern", 1, 2], ["Rope", 0, 2.75]),
    };
    expect(headline({ ...ranked, rankP: 0.069 })).toBe(
      "Saltreach 3:2 ranked first in 3 of 4 sheets; that the sheets agree on an order at all does not rule luck out",
    );
    expect(headline({ ...ranked, rankP: 0.042 })).toBe(
      "Saltreach 3:2 ranked first in 3 of 4 sheets; that the sheets agree on an order at all is hard to put down to luck",
    );
    expect(headline({ ...ranked, rankP: 0.0099 })).toContain("is very hard to put down to luck");
  });

  test("does not call the best mean rank a first place", () => {
    const said = headline({
      ...nothing,
      locked: 3,
      rankings: 3,
      toldApart: true,
      rankP: 0.5,
      items: items(["A", 1, 1.9], ["B", 2, 2], ["C", 0, 2.1]),
    });
    expect(said).toBe(
      "A had the best mean rank, 1.9, and was first in 1 of 3 sheets; that the sheets agree on an order at all could well be luck",
    );
  });

  test("names two that share the best mean rank, and counts more", () => {
    const ranked = { ...nothing, locked: 2, rankings: 2, toldApart: true, rankP: 1 };
    expect(headline({ ...ranked, items: items(["A", 1, 1.5], ["B", 1, 1.5], ["C", 0, 3]) })).toMatch(
      /^A and B share the best mean rank, 1.5;/,
    );
    expect(headline({ ...ranked, items: items(["A", 1, 2], ["B", 1, 2], ["C", 0, 2]) })).toMatch(
      /^No glass stood out: 3 share the best mean rank, 2;/,
    );
  });

  test("says that one ranking is one, and tests nothing", () => {
    const one = { ...nothing, rankings: 1, toldApart: true };
    expect(headline({ ...one, items: items(["A", 1, 1], ["B", 0, 2]) })).toBe(
      "A ranked first in the one ranking there is",
    );
    expect(headline({ ...one, items: items(["A", 1, 1.5], ["B", 1, 1.5], ["C", 0, 3]) })).toBe(
      "A and B ranked first, level, in the one ranking there is",
    );
  });

  test("says that rankings of one big tie told nothing apart", () => {
    const tied = { ...nothing, locked: 2, rankings: 2, items: items(["A", 2, 1.5], ["B", 2, 1.5]) };
    expect(headline(tied)).toBe("Nobody ranked any glass above another");
  });

  test("says that it is not shown, never that nobody can, where luck could well do it", () => {
    expect(headline({ ...nothing, right: 2, guessed: 2, pooledP: 0.5, leastSheetP: 0.5 })).toBe(
      "Whether anybody could tell the names is not shown: 2 of 2 guesses right, which could well be luck",
    );
    expect(headline({ ...nothing, right: 0, guessed: 12, pooledP: 1, leastSheetP: 1 })).toBe(
      "Whether anybody could tell the names is not shown: 0 of 12 guesses right",
    );
  });

  test("says what guesses beat luck, together or one sheet alone", () => {
    expect(headline({ ...nothing, right: 9, guessed: 15, pooledP: 0.003, leastSheetP: 0.008 })).toBe(
      "9 of 15 guesses right, which is very hard to put down to luck",
    );
    expect(headline({ ...nothing, right: 5, guessed: 15, pooledP: 0.2, leastSheetP: 0.008 })).toBe(
      "5 of 15 guesses right, which all together could well be luck, though one sheet alone is hard to put down to it",
    );
  });
});
