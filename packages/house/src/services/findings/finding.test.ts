import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import type { Client } from "../../protocol/index.ts";
import { describe, expect, test } from "vitest";
import {
  type EveningShelf,
  eveningShelf,
  lock,
  setFlight,
  takeSheets,
  type Taken,
} from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

/** What goes on a sheet, by glass as the host listed them: guess by bottle number, rank, score. */
interface Writing {
  readonly guesses?: readonly (number | null)[];
  readonly ranks?: readonly number[];
  readonly scores?: readonly number[];
}

/** The codes of one taster for the glasses as the host listed them; two pours of a bottle in the order met. */
async function codesByGlass(
  client: Client,
  shelf: EveningShelf,
  at: { household: string; flight: string },
  pourerToken: string,
  glasses: readonly number[],
  row: number,
): Promise<string[]> {
  const list = await client("getPourList", { at, token: pourerToken });
  const left = [...(list.tasters[row]?.glasses ?? [])];
  return glasses.map((i) => {
    const place = left.findIndex(({ vesselId }) => vesselId === shelf.vesselIds[i]);
    return left.splice(place, 1)[0]?.code ?? "";
  });
}

async function write(client: Client, shelf: EveningShelf, taken: Taken, codes: string[], writing: Writing) {
  const { token } = taken;
  const at = { household: shelf.household, flight: taken.sheet.flightId, sheet: taken.sheet.id };
  const { version } = await client("getSheet", { at, token });
  const ranks = writing.ranks ?? [];
  const groups = [...new Set(ranks)].toSorted((a, b) => a - b);
  const empty = { nose: "", palate: "", finish: "" };
  await client("editSheet", {
    at,
    token,
    body: {
      version,
      guesses: (writing.guesses ?? []).map((guess, i) => ({
        code: codes[i] ?? "",
        nameId: guess === null ? null : (shelf.nameIds[guess] ?? ""),
      })),
      ranking:
        ranks.length === 0 ? null : groups.map((rank) => codes.filter((_, glass) => ranks[glass] === rank)),
      notes: (writing.scores ?? []).map((score, i) => ({
        code: codes[i] ?? "",
        first: empty,
        second: empty,
        score,
      })),
    },
  });
}

eachDatabase((database) => {
  describe(`the finding (${database})`, () => {
    /** A whole evening: what each taster writes, which of them lock; then the reveal by the host. */
    const evening = async (
      glasses: readonly number[],
      sheets: readonly (Writing & { readonly open?: boolean })[],
      more: { readonly distractors?: readonly number[]; readonly target?: number } = {},
    ) => {
      const house = await temporaryHouse(database);
      const { client } = house;
      const shelf = await eveningShelf(client, { whiskeys: 5, tasters: sheets.length });
      const made = await setFlight(shelf, glasses, {
        distractors: more.distractors ?? [],
        targetNameId: more.target === undefined ? null : (shelf.nameIds[more.target] ?? null),
      });
      const at = { household: shelf.household, flight: made.flight.id };
      const pourer = made.pourerToken ?? "";
      await client("markPoured", { at, token: pourer });
      const before = await refusalOf(client("getFinding", { at }));
      for (const [row, taken] of (await takeSheets(shelf, at.flight)).entries()) {
        const codes = await codesByGlass(client, shelf, at, pourer, glasses, row);
        await write(client, shelf, taken, codes, sheets[row] ?? {});
        if (!sheets[row]?.open) await lock(shelf, taken);
      }
      const finding = await client("revealFlight", {
        at,
        token: made.hostToken,
        body: { closeOpenSheets: true },
      });
      return { house, client, shelf, at, before, finding, [Symbol.asyncDispose]: () => house.close() };
    };

    test("F12 there is none before the reveal, and it says so to every caller alike", async () => {
      await using it = await evening([0, 1], [{}]);
      expect(it.before).toMatchObject({ status: 409, codes: ["not_revealed"] });
      expect(await it.client("getFinding", { at: it.at })).toEqual(it.finding);
    });

    test("F13 luck is the exact law of the multiset: five glasses all right are one in 120", async () => {
      await using it = await evening([0, 1, 2, 3, 4], [{ guesses: [0, 1, 2, 3, 4] }]);
      const [sheet] = it.finding.sheets;
      expect(sheet).toMatchObject({ guessed: 5, right: 5 });
      expect(sheet?.luck).toMatchObject({
        fraction: "1/120",
        words: "one in 120 would do as well by guessing",
        method: "exact, 5 glasses named from 5 names on offer",
      });
      expect(sheet?.luck?.p).toBeCloseTo(1 / 120, 15);
      expect(it.finding.pooledGuesses).toMatchObject({ guessed: 5, right: 5, luck: { fraction: "1/120" } });
      expect(it.finding.headline).toBe("5 of 5 guesses right, which is very hard to put down to luck");
    });

    test("F13 three of five right: (C(5,3)·2 + 0 + 1) / 120 = 11 of 120 by the matching law", async () => {
      // Rencontres numbers for n = 5, OEIS A008290: 44, 45, 20, 10, 0, 1. P(3 or more) = 11/120.
      await using it = await evening([0, 1, 2, 3, 4], [{ guesses: [0, 1, 2, 4, 3] }]);
      expect(it.finding.sheets[0]).toMatchObject({ right: 3, luck: { fraction: "11/120" } });
    });

    test("F13 two pours of one name are interchangeable, and stand apart as items", async () => {
      await using it = await evening([0, 1, 1], [{ guesses: [0, 1, 1], ranks: [2, 1, 3] }]);
      const { sheets, glasses } = it.finding;
      // Names 1, 2 on glasses 1, 2: 3!/2! = 3 ways to lay them, one right.
      expect(sheets[0]).toMatchObject({ right: 3, luck: { fraction: "1/3" } });
      const pours = glasses.map(({ nameId, pour }) => `${nameId === it.shelf.nameIds[1]} ${pour}`);
      expect(pours.toSorted()).toEqual(["false ", "true first pour", "true second pour"]);
      expect(it.finding.headline).toMatch(
        /^Saltreach Tide No\. B \((first|second) pour\) ranked first in the one ranking there is;/,
      );
    });

    test("F10, F13 what is blank is left out and said", async () => {
      await using it = await evening([0, 1, 2], [{ guesses: [0, null, null] }, {}]);
      expect(it.finding.sheets[0]).toMatchObject({
        guessed: 1,
        right: 1,
        luck: { fraction: "1/3", method: "exact, 1 glass named from 3 names on offer" },
      });
      expect(it.finding.sheets[1]).toMatchObject({ guessed: 0, luck: null, ranking: null });
      expect(it.finding.ranks).toBeNull();
      expect(it.finding.leftOut).toEqual([
        "Taster 1 named 1 of 3 glasses; the others are left out.",
        "Taster 2 named no glass and is left out of the guesses.",
        "Taster 1 ranked nothing and is left out of the ranks.",
        "Taster 2 ranked nothing and is left out of the ranks.",
        "No locked sheet has a ranking, so there is no test of the ranks.",
      ]);
    });

    test("F13 Friedman over three tasters who agree: statistic 6, exact p 1/36", async () => {
      // Three judges rank three items alike: 1 of 3!² joint orders of the other two, Friedman 1937, table II.
      await using it = await evening(
        [0, 1, 2],
        [{ ranks: [1, 2, 3] }, { ranks: [1, 2, 3] }, { ranks: [1, 2, 3] }],
      );
      expect(it.finding.ranks).toMatchObject({ sheetsCounted: 3, statistic: 6, df: 2, kendallW: 1 });
      expect(it.finding.ranks?.chance.p).toBeCloseTo(1 / 36, 12);
      expect(it.finding.ranks?.chance.words).toBe("one in 36 panels ranking at random would agree as much");
      expect(it.finding.ranks?.sentence).toBe(
        "The agreement is hard to put down to luck (p = 0.028, Friedman's test, exact, 3 tasters, 3 glasses).",
      );
      expect(it.finding.headline).toBe(
        "Saltreach Tide No. A ranked first in 3 of 3 sheets; that the sheets agree on an order at all is hard to put down to luck",
      );
      const sums = new Map(
        it.finding.glasses.map(({ nameId, rankSum, meanRank }) => [nameId, [rankSum, meanRank]]),
      );
      expect(it.shelf.nameIds.slice(0, 3).map((id) => sums.get(id))).toEqual([
        [3, 1],
        [6, 2],
        [9, 3],
      ]);
    });

    test("F13 ties share the mean rank; one ranking is no test; all tied is said", async () => {
      await using one = await evening([0, 1, 2], [{ ranks: [1, 1, 2] }, {}]);
      const ranks = one.finding.sheets[0]?.glasses.map(({ nameId, rank }) => [nameId, rank] as const);
      expect(one.shelf.nameIds.slice(0, 3).map((id) => new Map(ranks).get(id))).toEqual([1.5, 1.5, 3]);
      expect(one.finding.ranks).toBeNull();
      expect(one.finding.leftOut.at(-1)).toBe(
        "Only one locked sheet has a ranking: it has nothing to agree with, so there is no test of the ranks.",
      );
      await using tied = await evening([0, 1], [{ ranks: [1, 1] }, { ranks: [1, 1] }]);
      expect(tied.finding.ranks).toBeNull();
      expect(tied.finding.leftOut.at(-1)).toMatch(/^Nobody told any of the glasses apart/);
      expect(tied.finding.headline).toBe("Nobody ranked any glass above another");
    });

    test("F11, F13 a closed sheet counts for nothing, its notes are kept", async () => {
      await using it = await evening(
        [0, 1],
        [
          { guesses: [0, 1], ranks: [1, 2], scores: [80, 70] },
          { guesses: [1, 0], ranks: [2, 1], scores: [10, 20], open: true },
        ],
      );
      const [, closed] = it.finding.sheets;
      expect(closed).toMatchObject({ state: "closed", guessed: 0, right: 0, luck: null, ranking: null });
      expect(closed?.glasses.map(({ guessNameId, rank }) => [guessNameId, rank])).toEqual([
        [null, null],
        [null, null],
      ]);
      expect(closed?.glasses.map(({ notes }) => notes?.score).toSorted()).toEqual([10, 20]);
      const scores = new Map(it.finding.glasses.map(({ nameId, meanScore }) => [nameId, meanScore]));
      expect(it.shelf.nameIds.slice(0, 2).map((id) => scores.get(id))).toEqual([80, 70]);
      expect(it.finding.pooledGuesses).toMatchObject({ guessed: 2, right: 2 });
    });

    test("F13 pooled luck is the law of the sum, and says what it takes for granted", async () => {
      await using it = await evening([0, 1], [{ guesses: [0, 1] }, { guesses: [0, 1] }]);
      // Two sheets of two: each right with 1/2, both with 1/4.
      expect(it.finding.pooledGuesses).toMatchObject({
        guessed: 4,
        right: 4,
        luck: {
          fraction: "1/4",
          method: "exact, 2 sheets taken as independent: true if nobody compared guesses",
        },
      });
    });

    test("F13 a distractor may be guessed, is wrong, and widens the law; the target is marked", async () => {
      await using it = await evening([0, 1], [{ guesses: [2, 1] }], { distractors: [2], target: 0 });
      // Three names for two glasses: 6 ways, one right for both, 1 + 1 for each alone with the third: P(>= 1) = 3/6.
      expect(it.finding.sheets[0]).toMatchObject({ right: 1, luck: { fraction: "1/2" } });
      const target = it.finding.glasses.filter((glass) => glass.target);
      expect(target.map(({ nameId }) => nameId)).toEqual([it.shelf.nameIds[0]]);
    });

    test("alcohol after the reveal is that of the glasses poured, and stays so when the bottle changes", async () => {
      await using it = await evening([0, 1], [{}], { distractors: [4] });
      // 15 mL each at 40 and 43 %, ethanol 0.78924 g/mL at 20 °C (OIML R 22).
      const grams = 15 * (0.4 + 0.43) * 0.78924;
      expect(it.finding.alcoholPerTaster.grams).toBeCloseTo(grams, 3);
      expect(it.finding.flight.alcoholAtMost.grams).toBeGreaterThan(grams + 1);
      const { household } = it.at;
      const to = { kind: "vessel" as const, vesselId: it.shelf.vesselIds[0] ?? "" };
      const from = { kind: "outside" as const, name: "tap" as const };
      await it.client("addTransfer", {
        at: { household },
        body: { from, to, amount: { kind: "volume", ml: 10 } },
      });
      expect(await it.client("getFinding", { at: it.at })).toEqual(it.finding);
    });

    test("findings are listed newest first, revealed flights only", async () => {
      await using it = await evening([0, 1], [{ guesses: [0, 1] }]);
      await setFlight(it.shelf, [0, 1], { name: "still sealed" });
      const { items, next } = await it.client("listFindings", { at: { household: it.at.household } });
      expect(next).toBeNull();
      expect(items).toEqual([
        {
          flightId: it.at.flight,
          name: "Tuesday",
          revealedAt: "2026-11-25T18:00:00.000Z",
          tasters: 1,
          glasses: 2,
          headline: it.finding.headline,
        },
      ]);
    });
  });
});
