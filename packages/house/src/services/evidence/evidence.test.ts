import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type EveningShelf, eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const blank = { nose: "", palate: "", finish: "" };

/** What a taster writes, by bottle number: the guess for each, the ranking best first, a word, a score. */
interface Writing {
  readonly guesses?: Readonly<Record<number, number>>;
  /** How sure each of those is, by bottle number, in per cent. */
  readonly sure?: Readonly<Record<number, number>>;
  readonly best?: readonly number[];
  readonly word?: string;
}

/** A flight of these bottles poured and written on; revealed where told. */
async function evening(
  shelf: EveningShelf,
  glasses: readonly number[],
  writings: readonly Writing[],
  reveal = true,
): Promise<string> {
  const { client, household, vesselIds, nameIds } = shelf;
  const made = await setFlight(shelf, glasses, { name: `Evening ${glasses.join("")}` });
  const at = { household, flight: made.flight.id };
  const token = made.pourerToken ?? "";
  await client("markPoured", { at, token });
  const list = await client("getPourList", { at, token });
  for (const [row, taken] of (await takeSheets(shelf, at.flight)).entries()) {
    const writing = writings[row] ?? {};
    const codeOf = (bottle: number): string =>
      list.tasters[row]?.glasses.find(({ vesselId }) => vesselId === vesselIds[bottle])?.code ?? "";
    await client("editSheet", {
      at: { ...at, sheet: taken.sheet.id },
      token: taken.token,
      body: {
        version: taken.sheet.version,
        guesses: Object.entries(writing.guesses ?? {}).map(([bottle, guess]) => ({
          code: codeOf(Number(bottle)),
          nameId: nameIds[guess] ?? "",
          ...(writing.sure?.[Number(bottle)] === undefined ? {} : { sure: writing.sure[Number(bottle)] }),
        })),
        ranking: writing.best === undefined ? null : writing.best.map((bottle) => [codeOf(bottle)]),
        notes:
          writing.word === undefined
            ? []
            : glasses.map((bottle, i) => ({
                code: codeOf(bottle),
                first: { ...blank, nose: i === 0 ? (writing.word ?? "") : "water" },
                second: blank,
                score: 70 + i,
              })),
      },
    });
    await lock(shelf, taken);
  }
  if (reveal) await client("revealFlight", { at, token: made.hostToken, body: {} });
  return at.flight;
}

const swapped: Writing = { guesses: { 0: 1, 1: 0, 2: 2 }, best: [2, 0, 1], word: "Marzipan" };

eachDatabase((database) => {
  describe(`evidence (${database})`, () => {
    test("W1 a sealed flight leaves no trace on any page, and is weighed after its reveal only", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const { household } = shelf;
      await evening(shelf, [0, 1, 2], [swapped, swapped]);
      const pages = async () => {
        const at = { household };
        return JSON.stringify([
          await Promise.all(
            shelf.whiskeyIds.map((whiskey) => house.client("getWhiskeyFinding", { at: { ...at, whiskey } })),
          ),
          await Promise.all(
            shelf.tasterIds.map((taster) => house.client("getTasterFinding", { at: { ...at, taster } })),
          ),
          await house.client("getLeague", { at }),
        ]);
      };
      const before = await pages();
      const flight = await evening(shelf, [0, 1], [{ guesses: { 0: 0, 1: 1 }, best: [0, 1] }], false);
      expect(await pages()).toBe(before);
      const at = { household, flight };
      const sealed = await refusalOf(house.client("getWeighedFlight", { at }));
      expect(sealed).toEqual(await refusalOf(house.client("getFinding", { at })));
      expect(sealed).toMatchObject({ status: 409, codes: ["not_revealed"] });
      await house.client("callOffFlight", { at, token: "0".repeat(64) }).catch(() => undefined);
      expect(await pages()).toBe(before);
    });

    test("W3 W4 mix-ups and names by hand: two of three swapped on two sheets", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const flight = await evening(shelf, [0, 1, 2], [swapped, swapped]);
      const at = { household: shelf.household, flight };
      const { known, mixUps } = await house.client("getWeighedFlight", { at });
      // Of 3 names 2, 3 and 1 of the 6 ways have 0, 1 and 3 right; two sheets give 2 or more right in
      // 1 − (2·2 + 2·2·3)/36 = 20/36 of all cases.
      expect(known).toMatchObject({ guessed: 6, right: 2, luck: { p: 20 / 36, fraction: "5/9" } });
      expect(known?.low).toBe(0);
      // With the third glass right the other two can only be wrong the one way round: nothing stands out.
      expect(mixUps?.pairs.map(({ there, back, p }) => [there, back, p])).toEqual([[2, 2, 1]]);
      const byName = new Map(mixUps?.names.map(({ key }, i) => [key, i]));
      const [a = 0, b = 0, c = 0] = shelf.nameIds.map((nameId) => byName.get(nameId));
      expect([mixUps?.board[a]?.[b], mixUps?.board[b]?.[a], mixUps?.board[c]?.[c]]).toEqual([2, 2, 2]);
    });

    test("W2 worths: probabilities that hang together, the word with its number, the same again from the same sheets", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 3 });
      const flight = await evening(
        shelf,
        [0, 1, 2],
        Array.from({ length: 3 }, () => ({ best: [2, 0, 1] })),
      );
      await evening(
        shelf,
        [2, 3],
        Array.from({ length: 3 }, () => ({ best: [2, 3] })),
      );
      const at = { household: shelf.household };
      const { worths } = await house.client("getWeighedFlight", { at: { ...at, flight } });
      expect(worths?.counted).toEqual({ flights: 1, sheets: 3, tasters: 3 });
      expect(worths?.items.map(({ label }) => label.slice(-1))).toEqual(["C", "A", "B"]);
      for (const { ranks } of worths?.items ?? [])
        expect(ranks.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
      worths?.better.forEach((row, i) =>
        row.forEach((p, j) => expect(p + (worths.better[j]?.[i] ?? Number.NaN)).toBeCloseTo(1, 9)),
      );
      expect(worths?.best.sentence).toMatch(
        /^Saltreach Tide No\. C is .* best liked of the 3 \(probability 0\.\d\d, by luck 0\.33; .*3 sheets\)\.$/,
      );
      expect(worths?.pairsSaid).toMatch(/^2 pairs are looked at and all are shown\./);
      const whiskey = shelf.whiskeyIds[2] ?? "";
      const page = await house.client("getWhiskeyFinding", { at: { ...at, whiskey } });
      expect(page.worths?.counted).toEqual({ flights: 2, sheets: 6, tasters: 3 });
      expect(page.worths?.items.map(({ rankings }) => rankings).toSorted()).toEqual([3, 3, 3, 6]);
      expect(page.worths?.items[0]?.key).toBe(`whiskey:${whiskey}`);
      expect(await house.client("getWhiskeyFinding", { at: { ...at, whiskey } })).toEqual(page);
      // No blend of one's own was poured, so there is no league.
      expect((await house.client("getLeague", { at })).worths).toBeNull();
    });

    test("W6 W7 words once a glass and never tested, scores by tasters' means", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      await evening(shelf, [0, 1, 2], [swapped, swapped]);
      await evening(shelf, [0, 1], [{ word: "Marzipan, marzipan" }]);
      const at = { household: shelf.household, whiskey: shelf.whiskeyIds[0] ?? "" };
      const page = await house.client("getWhiskeyFinding", { at });
      expect(page.words).toMatchObject({ glasses: 3, words: [{ word: "marzipan", here: 3, elsewhere: 0 }] });
      expect(page.words?.said).toContain("not tested");
      // Of a glass that says "water" alone something was written, and no word of the vocabulary.
      expect(page.words).toMatchObject({ otherGlasses: 5 });
      // All scored 70: no interval is made of that, and it says why.
      expect(page.scores).toMatchObject({ mean: 70, low: null, high: null, tasters: 2, scores: 3 });
      expect(page.scores?.sentence).toContain("no certainty");
      const taster = { household: shelf.household, taster: shelf.tasterIds[0] ?? "" };
      const one = await house.client("getTasterFinding", { at: taster });
      expect(one.guesses.map(({ guessed, right, byLuck }) => [guessed, right, byLuck])).toEqual([[3, 1, 1]]);
      expect(one.cannotTell).toEqual([
        "Has not shown to name glasses better than luck: 1 of 3 right (p = 1, allowing for all 2 tasters looked at).",
      ]);
    });

    test("W10 blind spots and own words of the same glasses: too few, then shown, with every kind paid for", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 4 });
      const [first = "", second = ""] = shelf.tasterIds;
      const of = (taster: string) =>
        house.client("getTasterFinding", { at: { household: shelf.household, taster } });
      // The oranges are one kind, by whichever word; smoke that is not there is none.
      const words = ["No smoke. Leather", "Oranges", "orange peel, smoky", "Lemon"];
      const once = () =>
        evening(
          shelf,
          [0, 1, 2],
          words.map((word) => ({ word })),
        );
      await once();
      const { wordGaps: one } = await of(first);
      expect(one).toMatchObject({ flights: 1, glasses: 3, otherGlasses: 9, others: 3, looked: 0 });
      expect(one?.missed.map(({ kind, own, others, othersWho }) => [kind, own, others, othersWho])).toEqual([
        ["fruit.citrus", 0, 3, 3],
        ["smoke.smoke", 0, 1, 1],
      ]);
      expect(one?.missed[0]?.sentence).toBe(
        "Citrus: Taster 1 in 0 of 3 glasses, the others in 3 of 9: too few to tell (the widest gap that these sheets could show has p = 0.5).",
      );
      expect(one?.alone).toMatchObject([
        { kind: "earth.leather-and-leaf", own: 1, others: 0, pTogether: null },
      ]);
      expect(one?.missedSaid).toMatch(/^Too few sheets to tell/);
      for (let n = 1; n < 5; n += 1) await once();
      const { wordGaps: five, cannotTell } = await of(first);
      // Of 4 sheets a table one is without citrus: (1/4)^5, twice, and three kinds are paid for.
      const p = 2 / 4 ** 5;
      expect(five?.looked).toBe(3);
      expect(five?.missed[0]).toMatchObject({
        kind: "fruit.citrus",
        words: ["lemon", "orange", "orange peel"],
        own: 0,
        others: 15,
        p: expect.closeTo(p, 12),
        pTogether: expect.closeTo(3 * p, 12),
      });
      expect(five?.missedSaid).toBe(
        "Citrus is left out by Taster 1, more than luck would have it (p = 0.0059, allowing for all 3 kinds looked at)",
      );
      expect(five?.aloneSaid).toMatch(/^Leather and leaf is Taster 1's own/);
      expect(cannotTell).toContainEqual(expect.stringMatching(/^Leaves out citrus/));
      // Another taster leaves out nothing that is clear of luck.
      expect((await of(second)).wordGaps?.missed.map(({ pTogether }) => (pTogether ?? 1) < 0.05)).toEqual([
        false,
        false,
      ]);
    });

    test("W2 W9 two pours of one blend are said together too, and have one name on the map and among the mix-ups", async () => {
      await using house = await temporaryHouse(database);
      const { id: household } = await house.client("loadDemo", {});
      const { items } = await house.client("listFindings", { at: { household } });
      const flight = items.find(({ name }) => name === "Beside the Lamp")?.flightId ?? "";
      const weighed = await house.client("getWeighedFlight", { at: { household, flight } });
      const pours = weighed.worths?.items.filter(({ label }) => label.endsWith(" pour)")) ?? [];
      expect(pours).toHaveLength(2);
      const [together] = weighed.poursTogether;
      expect(together?.sentence).toMatch(
        /^Both pours of (.*) taken as one: .* is .* better liked than \1 \(probability 0\.\d\d, Bayesian worths from rankings, 4 sheets\)\.$/,
      );
      const names = weighed.mixUps?.names.map(({ key }) => key) ?? [];
      const onMap = weighed.map?.items.map(({ name }) => name) ?? [];
      expect(new Set(onMap).size).toBe(onMap.length - 1);
      for (const name of onMap) expect(names).toContain(name);
      // A recipe's page speaks of that recipe, and of the sheets on which both stood.
      const recipes = await house.client("listRecipes", { at: { household } });
      const recipe = recipes.items.find(({ name }) => name === "Wick and Rye")?.id ?? "";
      const page = await house.client("getRecipeFinding", { at: { household, recipe } });
      expect(page.headline).toMatch(/^Wick and Rye is .* liked less than /);
      expect(page.worths?.pairs.map(({ sentence }) => sentence).join()).toMatch(/12 sheets, both in 4\)/);
    });

    test("F9 W11 confidence: scored over the glasses it was said of, carried by the file, refused without a name", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const at = { household: shelf.household };
      const [taster = "", other = ""] = shelf.tasterIds;
      // Two of three swapped, of which one was thought very sure; of the third, which is right, 90.
      const flight = await evening(
        shelf,
        [0, 1, 2],
        [{ ...swapped, sure: { 0: 90, 1: 30, 2: 90 } }, swapped],
      );
      const one = (await house.client("getTasterFinding", { at: { ...at, taster } })).confidence;
      // (0.9² + 0.3² + 0.1²)/3; nobody who knows nothing does better than 1/3 · 2/3.
      expect(one).toMatchObject({ sheets: 1, guesses: 3, right: 1, low: null });
      expect(one?.score).toBeCloseTo((0.81 + 0.09 + 0.01) / 3, 12);
      expect(one?.byLuck).toBeCloseTo(2 / 9, 12);
      expect(one?.groups.map(({ sure, right, of }) => [sure, right, of])).toEqual([
        [30, 0, 1],
        [90, 1, 2],
      ]);
      expect(one?.fitSaid).toContain("whether that fits cannot be told from so few (p = ");
      expect(one?.surerSaid).toMatch(
        /^Whether they are surer where they are right so few glasses cannot show/,
      );
      expect(
        (await house.client("getTasterFinding", { at: { ...at, taster: other } })).confidence,
      ).toBeNull();
      const { sheets } = await house.client("getFinding", { at: { ...at, flight } });
      expect(sheets[0]?.glasses.map(({ sure }) => sure).toSorted()).toEqual([30, 90, 90]);
      const { id } = await house.client("restoreHousehold", {
        body: await house.client("exportHousehold", { at }),
      });
      const again = (await house.client("listTasters", { at: { household: id } })).items;
      const found = await Promise.all(
        again.map((row) => house.client("getTasterFinding", { at: { household: id, taster: row.id } })),
      );
      expect(found.map(({ confidence }) => confidence?.score)).toContainEqual(one?.score);
      // Over four flights, sure and wrong every time: (1 − 0.9)^8 of being as rarely right.
      for (let n = 0; n < 4; n += 1)
        await evening(shelf, [0, 1], [{ guesses: { 0: 1, 1: 0 }, sure: { 0: 90, 1: 90 } }]);
      const five = (await house.client("getTasterFinding", { at: { ...at, taster } })).confidence;
      expect(five?.fitSaid).toMatch(
        /^Taster 1 was surer than right: .*, which is very hard to put down to luck/,
      );
      expect(five?.high).toBeGreaterThan(five?.score ?? 1);
      const made = await setFlight(shelf, [0, 1]);
      const open = { ...at, flight: made.flight.id };
      await house.client("markPoured", { at: open, token: made.pourerToken ?? "" });
      const [taken] = await takeSheets(shelf, made.flight.id);
      const code = taken?.sheet.glasses[0]?.code ?? "";
      const refused = house.client("editSheet", {
        at: { ...open, sheet: taken?.sheet.id ?? "" },
        token: taken?.token ?? "",
        body: { version: taken?.sheet.version ?? 1, guesses: [{ code, nameId: null, sure: 50 }] },
      });
      expect(await refusalOf(refused)).toMatchObject({ status: 422, codes: ["sure_without_guess"] });
    });
  });
});
