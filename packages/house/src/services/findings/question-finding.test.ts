import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { PourList, Sheet } from "../../protocol/index.ts";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";

type More = NonNullable<Parameters<typeof setFlight>[2]>;
type Poured = PourList["tasters"][number]["glasses"];
/** What one taster writes, knowing (as only a test can) what was poured for them. */
type Written = (sheet: Sheet, poured: Poured) => object;
type Answer = { set: number; picked: string[] };

eachDatabase((database) => {
  describe(`findings by question (${database})`, () => {
    /** A whole evening: what each taster writes, all locked but those named open; then the reveal. */
    const evening = async (
      glasses: readonly number[],
      more: More,
      writing: readonly Written[],
      { open = [] as readonly number[], whiskeys = 5 } = {},
    ) => {
      const house = await temporaryHouse(database);
      const { client } = house;
      const shelf = await eveningShelf(house.client, { whiskeys, tasters: writing.length });
      const target = more.targetNameId === "first" ? (shelf.nameIds[0] ?? null) : null;
      const vessels =
        more.expectedVesselId === undefined ? {} : { expectedVesselId: shelf.vesselIds[0] ?? null };
      const made = await setFlight(shelf, glasses, { ...more, ...vessels, targetNameId: target });
      const at = { household: shelf.household, flight: made.flight.id };
      const list = await client("getPourList", { at, token: made.pourerToken ?? "" });
      await client("markPoured", { at, token: made.pourerToken ?? "" });
      for (const [i, taken] of (await takeSheets(shelf, at.flight)).entries()) {
        const { sheet, token } = taken;
        const body = writing[i]?.(sheet, list.tasters[i]?.glasses ?? []) ?? {};
        await client("editSheet", {
          at: { ...at, sheet: sheet.id },
          token,
          body: { version: sheet.version, ...body },
        });
        if (!open.includes(i)) await lock(shelf, taken);
      }
      const finding = await client("revealFlight", {
        at,
        token: made.hostToken,
        body: { closeOpenSheets: true },
      });
      return { house, client, shelf, at, made, finding, [Symbol.asyncDispose]: () => house.close() };
    };

    const inSet = (poured: Poured, set: number) => poured.filter((glass) => glass.set === set);
    /** The odd one of a triangle, or one of the two that are alike. */
    const odd =
      (rights: readonly boolean[]): Written =>
      (_, poured) => ({
        answers: rights.map((right, i): Answer => {
          const three = inSet(poured, i + 1);
          const count = (vesselId: string) => three.filter((other) => other.vesselId === vesselId).length;
          const picked = three.find(({ vesselId }) => count(vesselId) === (right ? 1 : 2))?.code ?? "";
          return { set: i + 1, picked: [picked] };
        }),
      });
    const triangle = { question: "tell_apart", method: "triangle" } as const;

    test("Q13 three triangles of three right: 1/27, exact, and hard to put down to luck", async () => {
      await using it = await evening([0, 1], triangle, [odd([true]), odd([true]), odd([true])]);
      const { sets, headline, sheets, canSay, cannotSay, ranks, pooledGuesses, leftOut } = it.finding;
      expect(sets).toMatchObject({
        method: "triangle",
        standard: "ISO 4120",
        answered: 3,
        right: 3,
        chance: "1/3",
        sides: 1,
        needed: 3,
        expected: null,
        luck: {
          fraction: "1/27",
          words: "one in 27 would do as well by guessing",
          method: "exact binomial law, one-sided, 3 sets, chance 1/3 a set",
        },
        sentence:
          "3 of 3 sets right: that is hard to put down to luck (p = 0.037, exact binomial law, one-sided, 3 sets, chance 1/3 a set).",
      });
      expect(headline).toBe("3 of 3 sets right, which is hard to put down to luck");
      expect(sheets.every(({ glasses }) => glasses.every(({ set }) => set === 1))).toBe(true);
      expect([ranks, pooledGuesses, leftOut]).toEqual([null, null, []]);
      expect(canSay).toEqual([
        "It says whether this panel told the two apart more often than luck would.",
        "3 of 3 right or more would be hard to put down to luck.",
      ]);
      expect(cannotSay).toContain(
        "A difference that half of the panel can tell takes 16 sets to be found four times in five; there were 3.",
      );
      expect(cannotSay).toContain("That nobody was found to tell them apart does not show that nobody can.");
    });

    test("Q13 none right, or too few sets: it is never said that the two are the same", async () => {
      await using it = await evening([0, 1], { ...triangle, sets: 2 }, [odd([false, false])]);
      const { sets, cannotSay } = it.finding;
      expect(sets).toMatchObject({ answered: 2, right: 0, needed: null, luck: { p: 1, fraction: "1/1" } });
      expect(sets?.sentence).toContain("With 2 sets even all right would not rule luck out.");
      expect(cannotSay[0]).toBe("With 2 of at least 3 sets even a perfect result would not rule luck out.");
      expect(cannotSay).toContain("With one taster it speaks of that taster only.");
      const { headline, canSay, leftOut, designSaid } = it.finding;
      // The task itself speaks of two that are alike, as every triangle must.
      const all = [headline, sets?.sentence, ...canSay, ...cannotSay, ...leftOut, ...designSaid].join(" ");
      expect(all).not.toMatch(/taste the same|are the same|no difference|identical/);
    });

    test("Q13 sets of an open sheet and blank sets are left out and said", async () => {
      const half: Written = (sheet, poured) => ({
        answers: (odd([true])(sheet, poured) as { answers: Answer[] }).answers,
      });
      await using it = await evening(
        [0, 1],
        { ...triangle, sets: 2 },
        [odd([true, false]), half, () => ({}), odd([true, true])],
        { open: [3] },
      );
      expect(it.finding.sets).toMatchObject({ answered: 3, right: 2 });
      expect(
        it.finding.sets?.sheets.map(({ counted, answered, right }) => [counted, answered, right]),
      ).toEqual([
        [true, 2, 1],
        [true, 1, 1],
        [true, 0, 0],
        [false, 0, 0],
      ]);
      expect(
        it.finding.sets?.sheets[3]?.sets.map(({ right }) => right),
        "shown, not counted",
      ).toEqual([true, true]);
      expect(it.finding.leftOut).toEqual([
        "Taster 2 answered 1 of 2 sets; the others are left out.",
        "Taster 3 answered no set and is left out.",
        "Taster 4's sheet was not locked: its answers are not counted.",
      ]);
    });

    test("Q13 duo-trio: right is the one poured like R", async () => {
      const like =
        (right: boolean): Written =>
        (_, poured) => {
          const [r, ...two] = inSet(poured, 1);
          const picked = two.find(({ vesselId }) => (vesselId === r?.vesselId) === right)?.code ?? "";
          return { answers: [{ set: 1, picked: [picked] }] };
        };
      const writing = [like(true), like(true), like(false), like(true)];
      await using it = await evening([0, 1], { question: "changed", method: "duo_trio" }, writing);
      // C(4,3)/16 + 1/16 = 5/16.
      expect(it.finding.sets).toMatchObject({
        answered: 4,
        right: 3,
        chance: "1/2",
        luck: { fraction: "5/16" },
      });
      expect(it.finding.sets?.sheets[0]?.sets[0]?.glasses[0]?.code).toBe("R");
      expect(it.finding.canSay[0]).toBe(
        "It says whether this panel told before and now apart more often than luck would.",
      );
    });

    test("Q13 tetrad: either group of two names the same split", async () => {
      const split =
        (which: 0 | 1): Written =>
        (_, poured) => {
          const four = inSet(poured, 1);
          const vessel = [...new Set(four.map(({ vesselId }) => vesselId))][which];
          return {
            answers: [{ set: 1, picked: four.filter((g) => g.vesselId === vessel).map(({ code }) => code) }],
          };
        };
      const wrong: Written = (_, poured) => {
        const four = inSet(poured, 1);
        const other = four.find(({ vesselId }) => vesselId !== four[0]?.vesselId);
        return { answers: [{ set: 1, picked: [four[0]?.code ?? "", other?.code ?? ""] }] };
      };
      await using it = await evening([0, 1], { question: "tell_apart", method: "tetrad" }, [
        split(0),
        split(1),
        wrong,
      ]);
      // C(3,2)·2/27 + 1/27 = 7/27.
      expect(it.finding.sets).toMatchObject({ answered: 3, right: 2, luck: { fraction: "7/27" } });
    });

    const sweeter =
      (times: readonly boolean[]): Written =>
      (_, poured) => ({
        answers: times.map((first, i) => {
          const two = inSet(poured, i + 1).toSorted((a, b) => (a.label < b.label ? -1 : 1));
          return { set: i + 1, picked: [two[first ? 0 : 1]?.code ?? ""] };
        }),
      });
    const pair = { question: "tell_apart", method: "paired", asked: "sweeter", sets: 6 } as const;

    test("Q13 a pair nobody said anything of beforehand is two-sided: six alike are 2/64, and none is right or wrong", async () => {
      await using it = await evening([0, 1], pair, [sweeter([true, true, true, true, true, true])]);
      const { sets, headline } = it.finding;
      expect(it.made.flight.design).toMatchObject({ sides: 2, asked: "sweeter" });
      expect(sets).toMatchObject({
        task: "Which of the two is sweeter?",
        sides: 2,
        right: 6,
        luck: { fraction: "1/32" },
      });
      expect(sets?.sheets[0]).toMatchObject({ answered: 6, right: null });
      expect(new Set(sets?.sheets[0]?.sets.map(({ right }) => right))).toEqual(new Set([null]));
      expect(headline).toBe(
        "Saltreach Tide No. A was picked as sweeter in 6 of 6 sets, which is hard to put down to luck",
      );
      expect(sets?.between.map(({ label, timesPicked }) => [label, timesPicked]).toSorted()).toEqual([
        ["Saltreach Tide No. A", 6],
        ["Saltreach Tide No. B", 0],
      ]);
    });

    test("Q13 one said beforehand to have more makes it one-sided, and is told after the reveal", async () => {
      const more = { ...pair, expectedVesselId: "first" };
      await using it = await evening([0, 1], more, [sweeter([true, true, true, true, true, false])]);
      const { sets, glasses } = it.finding;
      expect(it.made.flight.design.sides).toBe(1);
      expect(glasses[sets?.expected ?? -1]?.nameId).toBe(it.shelf.nameIds[0]);
      // (C(6,5) + 1)/64 = 7/64.
      expect(sets).toMatchObject({ sides: 1, right: 5, luck: { fraction: "7/64" } });
      expect(sets?.sheets[0]?.right).toBe(5);
    });

    /** All glasses in a row by bottle number, closest or best first. */
    const byBottle =
      (order: readonly number[]): Written =>
      (sheet, poured) => ({
        ranking: order.map((n) => {
          const label = `Tide No. ${String.fromCharCode(65 + n)}`;
          const own = poured.filter((glass) => glass.position > 0 && glass.label.endsWith(label));
          return own
            .map(({ code }) => code)
            .filter((code) => sheet.glasses.some((glass) => glass.code === code));
        }),
      });

    test("Q14 closeness: the order, who put the hidden target where, and luck by the exact law", async () => {
      const more = { question: "how_close", targetNameId: "first", reference: true } as const;
      const writing = [byBottle([0, 1, 2]), byBottle([0, 2, 1]), byBottle([1, 0, 2])];
      await using it = await evening([0, 1, 2], more, writing);
      const { closeness, headline, sets, glasses } = it.finding;
      expect(sets).toBeNull();
      expect(closeness?.order.map(({ label, target, place }) => [label, target, place])).toEqual([
        ["Saltreach Tide No. A", true, 1],
        ["Saltreach Tide No. B", false, 2],
        ["Saltreach Tide No. C", false, 3],
      ]);
      expect(closeness?.sheets.map(({ taster, rank, of }) => [taster, rank, of])).toEqual([
        ["Taster 1", 1, 3],
        ["Taster 2", 1, 3],
        ["Taster 3", 2, 3],
      ]);
      // C(3,2)·2/27 + 1/27 = 7/27.
      expect(closeness).toMatchObject({ first: 2, luck: { fraction: "7/27" } });
      expect(headline).toBe(
        "Saltreach Tide No. B came closest to Saltreach Tide No. A; the hidden target itself was put first in 2 of 3 sheets, which could well be luck",
      );
      expect(glasses).toHaveLength(3);
      // One hidden and one labelled for each of three.
      const { items } = await it.client("listTransfers", { at: { household: it.at.household } });
      const poured = items.filter(
        ({ from }) => from.kind === "vessel" && from.vesselId === it.shelf.vesselIds[0],
      );
      expect(poured.map(({ amount }) => amount)).toEqual([{ kind: "volume", ml: 90 }]);
      expect(it.finding.cannotSay).toContain("It does not say how far off a glass is, only which is closer.");
    });

    test("Q14 agreement: pairs put the same way again, by the exact law of pairs turned round", async () => {
      const twice =
        (first: readonly number[], second: readonly number[]): Written =>
        (_, poured) => {
          const round = (set: number, order: readonly number[]) => {
            const sorted = inSet(poured, set).toSorted((a, b) => (a.label < b.label ? -1 : 1));
            return { set, ranking: order.map((n) => [sorted[n]?.code ?? ""]) };
          };
          return { answers: [round(1, first), round(2, second)] };
        };
      await using it = await evening([0, 1, 2], { question: "agree_with_myself" }, [
        twice([0, 1, 2], [0, 1, 2]),
        twice([2, 1, 0], [2, 0, 1]),
        () => ({}),
      ]);
      const { agreement, headline, leftOut, sheets, glasses } = it.finding;
      // Inversions of 3: 1, 2, 2, 1 of 6 orders (Mahonian numbers, OEIS A008302). All three kept: 1/6; two or more: 3/6.
      expect(agreement?.sheets.map(({ kept, pairs, luck }) => [kept, pairs, luck.fraction])).toEqual([
        [3, 3, "1/6"],
        [2, 3, "1/2"],
      ]);
      // Five or six kept of two sheets: (1·2 + 2·1 + 1)/36.
      expect(agreement).toMatchObject({ kept: 5, pairs: 6, luck: { fraction: "5/36" } });
      expect(headline).toBe("5 of 6 pairs put the same way again, which does not rule luck out");
      expect(leftOut).toEqual(["Taster 3 did not put both rounds in order and is left out."]);
      expect(sheets[0]?.glasses.map(({ set }) => set)).toEqual([1, 1, 1, 2, 2, 2]);
      expect(sheets[0]?.glasses.map(({ rank }) => rank).toSorted()).toEqual([1, 1, 2, 2, 3, 3]);
      expect(glasses.map(({ meanRank }) => meanRank ?? 0).toSorted((a, b) => a - b)).toEqual([1.75, 2, 2.25]);
      expect(it.finding.ranks).toBeNull();
    });

    test("Q5, Q15 some of the glasses for each: mean ranks where served, and no test, which is said", async () => {
      const asServed: Written = (sheet, poured) => ({
        ranking: sheet.glasses
          .map(({ code }) => poured.find((glass) => glass.code === code))
          .toSorted((a, b) => ((a?.label ?? "") < (b?.label ?? "") ? -1 : 1))
          .map((glass) => [glass?.code ?? ""]),
      });
      const more = { question: "like_best", glassesEach: 3 } as const;
      const tasters = Array.from({ length: 7 }, () => asServed);
      await using it = await evening([0, 1, 2, 3, 4, 5, 6], more, tasters, { whiskeys: 7 });
      expect(it.made.flight).toMatchObject({ glassCount: 3, design: { glassesEach: 3 } });
      expect(it.made.flight.design.said).toEqual(
        [
          "Each whiskey is served 3 times, and any two meet in 1 servings.",
          "That is balanced: every two are compared equally well.",
          expect.stringMatching(/^At a turn|^$/),
        ].slice(0, it.made.flight.design.said.length),
      );
      const { glasses, ranks, leftOut, headline } = it.finding;
      for (const { codes, rankSum, meanRank } of glasses) {
        expect([codes.length, rankSum]).toEqual([3, null]);
        expect(meanRank).toBeGreaterThanOrEqual(1);
      }
      expect(ranks).toBeNull();
      expect(leftOut.at(-1)).toMatch(/^Each taster had only some of the glasses/);
      expect(headline).toContain("Saltreach Tide No. A ranked first in 3 of 7 sheets");
    });

    test("Q6 a repeat that the house drew and a control are told apart after the reveal", async () => {
      const house = await temporaryHouse(database);
      await using _ = { [Symbol.asyncDispose]: () => house.close() };
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 2 });
      const control = shelf.vesselIds[3] ?? "";
      const more = { question: "like_best", repeats: 1, controlVesselId: control, late: true } as const;
      const made = await setFlight(shelf, [0, 1, 2], more);
      const at = { household: shelf.household, flight: made.flight.id };
      expect(made.flight).toMatchObject({
        glassCount: 5,
        design: { repeats: 1, controlNameId: shelf.nameIds[3], late: true },
      });
      expect(made.flight.namesOnOffer.map(({ count }) => count)).toEqual([2, 2, 2, 1]);
      // 40, 43, 46 and 50 % vol of 15 mL, and once more the strongest that can be drawn, 46.
      expect(made.flight.alcoholAtMost.grams).toBeCloseTo(15 * 0.78924 * (0.4 + 0.43 + 0.46 + 0.5 + 0.46), 2);
      await house.client("markPoured", { at, token: made.pourerToken ?? "" });
      const body = { closeOpenSheets: true };
      const finding = await house.client("revealFlight", { at, token: made.hostToken, body });
      expect(
        finding.glasses.map(({ control: known, nameId }) => known === (nameId === shelf.nameIds[3])),
      ).toEqual(Array.from({ length: 5 }, () => true));
      expect(finding.glasses.map(({ pour }) => pour).toSorted()).toEqual([
        "",
        "",
        "",
        "first pour",
        "second pour",
      ]);
      const said = finding.designSaid.slice(made.flight.design.said.length);
      expect(said).toEqual([
        expect.stringMatching(/^Two glasses of the same whiskey (never )?stand side by side/),
        expect.stringMatching(/^The strong and smoky glasses come/),
      ]);
    });
  });
});
