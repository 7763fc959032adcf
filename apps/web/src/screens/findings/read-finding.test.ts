import { describe, expect, test } from "vitest";
import { revealedEvening } from "./fixtures/revealed-evening.ts";
import { type RankedGlass, rankedGlasses, ranksSentence } from "./ranked-glasses.ts";
import { repeatedPours, repeatSentence } from "./repeated-pours.ts";

const glass = (title: string, ...ranks: number[]): RankedGlass => ({
  glass: 0,
  title,
  target: false,
  mean: ranks.reduce((sum, rank) => sum + rank, 0) / ranks.length,
  ranks: ranks.map((rank, i) => ({ taster: ["Ana", "Ben", "Cai"][i] ?? "", rank })),
});

describe("a finding of a real house", { timeout: 60_000 }, () => {
  test("ranks of locked sheets only, best mean first, and their means are the house's", async () => {
    const { finding, close } = await revealedEvening();
    await close();
    const ranked = rankedGlasses(finding);
    expect(ranked).toHaveLength(4);
    for (const { ranks, mean } of ranked) {
      expect(ranks.map(({ taster }) => taster)).toEqual(["Ana", "Ben"]);
      expect(ranks.reduce((sum, { rank }) => sum + rank, 0) / ranks.length).toBeCloseTo(mean, 12);
    }
    expect(ranked.map(({ mean }) => mean)).toEqual(ranked.map(({ mean }) => mean).toSorted((a, b) => a - b));
  });

  test("the name poured twice is found with both ranks of each taster", async () => {
    const { finding, close } = await revealedEvening();
    await close();
    const [repeat, ...others] = repeatedPours(finding);
    expect(others).toEqual([]);
    expect(repeat?.label).toBe("Saltreach Tarn");
    expect(repeat?.pairs.map(({ taster }) => taster)).toEqual(["Ana", "Ben"]);
  });
});

describe("the sentence over the ranks", () => {
  test("names who is first and over how many sheets", () => {
    expect(ranksSentence([glass("Tarn", 1, 2), glass("Skerry", 2, 1.5), glass("Ember", 3, 3)])).toBe(
      "Tarn has the best mean rank: 1.5 over 2 sheets",
    );
  });

  test("says a tie, one ranking alone, and that nothing stood out", () => {
    expect(ranksSentence([glass("Tarn", 1, 2), glass("Skerry", 2, 1), glass("Ember", 3, 3)])).toBe(
      "Tarn and Skerry share the best mean rank: 1.5 over 2 sheets",
    );
    expect(ranksSentence([glass("Tarn", 1), glass("Skerry", 2)])).toBe("Ana ranked Tarn first");
    expect(ranksSentence([glass("Tarn", 1.5), glass("Skerry", 1.5)])).toBe("No glass stood above another");
    expect(ranksSentence([])).toBe("Nobody ranked the glasses");
  });
});

test("the sentence over the repeats says how far apart they landed", () => {
  const pair = (first: number, second: number) => ({ taster: "Ana", first, second });
  const said = (...pairs: ReturnType<typeof pair>[]) => repeatSentence({ label: "Tarn", pairs });
  expect(said(pair(2, 2))).toBe("Two pours of Tarn got the same rank");
  expect(said(pair(1, 2))).toBe("Two pours of Tarn landed 1 place apart");
  expect(said(pair(1, 4), pair(3, 2))).toBe("Two pours of Tarn landed 1 to 3 places apart");
});
