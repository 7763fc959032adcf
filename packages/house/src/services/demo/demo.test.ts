import { trialBalance } from "@partsproof/core/ledger";
import { openHouse } from "@partsproof/house";
import { type Client, createClient, type Finding, type Household } from "../../protocol/index.ts";
import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";
import type { House } from "../ports.ts";
import type { TableName } from "../rows.ts";
import { shelfState } from "../shelf/index.ts";

/** Whether the demo has rows of it: nobody comes in as a guest there. */
const everyTable: { readonly [N in TableName]: boolean } = {
  household: true,
  taster: true,
  whiskey: true,
  vessel: true,
  transfer: true,
  recipe: true,
  recipeVersion: true,
  batch: true,
  trialSet: false,
  rest: true,
  oakPiece: true,
  checkTasting: true,
  flight: true,
  flightKey: true,
  sheet: true,
  entry: true,
  passedFile: false,
  taughtWord: true,
  calendarLink: false,
  joining: false,
  guest: false,
  liveCount: true,
  liveEvent: true,
};
const tables = Object.keys(everyTable) as TableName[];

const rowsLeft = (house: House, household: string) =>
  house.store.transaction(async (records) => {
    const counts: Record<string, number> = {};
    for (const table of tables) counts[table] = (await records.list(table, household)).length;
    return counts;
  });

const all = { query: { limit: 200 } };

/** What the demo tells, without anything that is drawn or dated: ids, codes, orders, moments. */
async function factsOf(client: Client, { id }: Household) {
  const at = { household: id };
  const vessels = (await client("listVessels", { at, ...all })).items;
  const transfers = (await client("listTransfers", { at, ...all })).items;
  const batches = (await client("listBatches", { at, ...all })).items;
  const findings: Finding[] = [];
  for (const { flightId } of (await client("listFindings", { at, ...all })).items) {
    findings.push(await client("getFinding", { at: { ...at, flight: flightId } }));
  }
  return {
    next: (await client("next", { at })).items.map(({ kind, text }) => `${kind}: ${text}`),
    vessels: vessels.map(({ label, sealed, contents, keptMl }) => [label, sealed, contents.volumeMl, keptMl]),
    transfers: transfers.map(({ seq, amount, note, undoneAt }) => [seq, amount, note, undoneAt === null]),
    batches: batches.map(({ name, state, made, note }) => [name, state, made.abv20, note]),
    findings: findings.map(({ headline, sheets, pooledGuesses }) => ({
      headline,
      pooledGuesses,
      sheets: sheets.map(({ taster, right, glasses }) => [taster, right, said(glasses)]),
    })),
  };
}

const said = (glasses: Finding["sheets"][number]["glasses"]) =>
  glasses
    .map(({ label, guessLabel, rank, notes }) =>
      JSON.stringify([label, guessLabel, rank, notes?.first, notes?.second, notes?.score]),
    )
    .toSorted();

/** The earliest moment of a day: the diary's yesterday is nearest then. */
const MIDNIGHT = "2026-03-01T00:00:00.000Z";

eachDatabase((database) => {
  describe(`demo (${database})`, () => {
    let house: TemporaryHouse;
    let demo: Household;
    beforeAll(async () => {
      house = await temporaryHouse(database, { now: MIDNIGHT });
      demo = await house.client("loadDemo");
    }, 60_000);
    afterAll(async () => {
      await house.close();
    });

    test("H3 it is said to be invented, and holds what it is for", async () => {
      const { client } = house;
      expect(demo).toMatchObject({ demo: true, name: expect.stringContaining("invented") });
      expect((await client("listHouseholds")).items).toEqual([demo]);
      const at = { household: demo.id };

      const whiskeys = (await client("listWhiskeys", { at, ...all })).items;
      expect(whiskeys.length).toBeGreaterThanOrEqual(24);
      for (const { note } of whiskeys) expect(note).toContain("Invented for the demo.");
      expect(new Set(whiskeys.map(({ kind }) => kind))).toEqual(
        new Set(["malt", "pot still", "rye", "wheat", "corn", "bourbon", "grain", "blend", "other"]),
      );
      const ages = whiskeys.map(({ ageYears }) => ageYears);
      expect(ages).toContain(null);
      expect(Math.max(...ages.map((age) => age ?? 0))).toBe(21);
      const casks = whiskeys.flatMap((w) => w.casks.map(({ species, held }) => `${species}, ${held}`));
      expect(new Set(casks.filter((cask) => !cask.includes("not known"))).size).toBeGreaterThanOrEqual(7);
      const gone = whiskeys.filter(({ availability }) => availability === "gone");
      expect(gone.map(({ name }) => name).toSorted()).toEqual(["Gull Stair", "Lamplighter's Rest"]);
      const strengths = whiskeys.map(({ abv20 }) => abv20);
      expect([Math.min(...strengths), Math.max(...strengths)]).toEqual([40, expect.closeTo(63.6, 0)]);
      expect(new Set(whiskeys.map(({ strength }) => strength.basis))).toEqual(new Set(["abv20", "proof60F"]));
      for (const { name, grains } of whiskeys) {
        if (grains === null) continue;
        expect(
          grains.reduce((sum, { percent }) => sum + percent, 0),
          name,
        ).toBe(100);
      }
      const groups = Map.groupBy(whiskeys, ({ distilledAt }) => distilledAt);
      expect(new Set(groups.get("Longacre group")?.map(({ maker }) => maker)).size).toBe(3);

      const vessels = (await client("listVessels", { at, ...all })).items;
      const lamp = vessels.find(({ whiskeyId }) => whiskeyId === gone[0]?.id);
      expect(lamp?.contents.volumeMl).toBeCloseTo(97, 6);
      expect(vessels.some(({ sealed }) => sealed)).toBe(true);
      const bottled = Map.groupBy(vessels, ({ whiskeyId }) => whiskeyId);
      expect([...bottled].filter(([id, bottles]) => id !== null && bottles.length === 2)).toHaveLength(1);
      expect(vessels.filter(({ kind }) => kind === "vial").length).toBeGreaterThanOrEqual(3);
      const oddEnds = vessels.find(({ label }) => label === "The odd-ends bottle");
      expect(oddEnds?.contents.composition.length).toBeGreaterThanOrEqual(8);

      const transfers = (await client("listTransfers", { at, ...all })).items;
      expect(transfers.filter(({ undoneAt }) => undoneAt !== null)).toHaveLength(1);
      const taken = (await client("listTasters", { at })).items;
      expect(taken).toHaveLength(4);

      const recipes = (await client("listRecipes", { at })).items;
      expect(recipes).toHaveLength(5);
      for (const { id, name } of recipes) {
        const versions = (await client("listRecipeVersions", { at: { ...at, recipe: id } })).items;
        expect(versions.length, name).toBeGreaterThanOrEqual(2);
        expect(versions.length, name).toBeLessThanOrEqual(4);
        for (const { note } of versions) expect(note, name).not.toBe("");
      }

      const batches = (await client("listBatches", { at })).items;
      expect(batches.map(({ state }) => state).toSorted()).toEqual([
        "finished",
        "finished",
        "rested",
        "resting",
      ]);
      const blended = batches.filter((batch) =>
        batch.poured.some(({ label }) => batches.some(({ vesselLabel }) => vesselLabel === label)),
      );
      expect(blended.map(({ name }) => name)).toEqual(["Second Watch"]);
    });

    test("three finished flights of four full sheets, one alone, one half done", async () => {
      const { client } = house;
      const at = { household: demo.id };
      const flights = (await client("listFlights", { at })).items;
      expect(flights.map(({ state, pouring, sheets }) => [state, pouring, sheets.length])).toEqual([
        ["tasting", "someone else", 4],
        ["revealed", "someone else", 4],
        ["revealed", "alone", 1],
        ["revealed", "someone else", 4],
        ["revealed", "someone else", 4],
      ]);
      expect(flights[0]?.sheets.map(({ state }) => state).toSorted()).toEqual([
        "free",
        "locked",
        "locked",
        "open",
      ]);

      for (const { id, name, glassCount } of flights.slice(1)) {
        const finding = await client("getFinding", { at: { ...at, flight: id } });
        for (const sheet of finding.sheets) {
          expect(sheet).toMatchObject({ state: "locked", guessed: glassCount });
          for (const { notes, rank } of sheet.glasses) {
            const words = [...Object.values(notes?.first ?? {}), ...Object.values(notes?.second ?? {})];
            expect(words.filter((word) => word !== "").length, `${name}, ${sheet.taster}`).toBe(6);
            expect(notes?.score).toBeTypeOf("number");
            expect(rank).toBeTypeOf("number");
          }
        }
        const right = finding.pooledGuesses?.right ?? 0;
        expect(right, "some right, some wrong").toBeGreaterThan(0);
        expect(right).toBeLessThan(finding.pooledGuesses?.guessed ?? 0);
      }

      const beside = await client("getFinding", { at: { ...at, flight: flights[3]?.id ?? "" } });
      expect(beside.glasses.filter(({ target }) => target)).toHaveLength(1);
      expect(beside.glasses.filter(({ pour }) => pour === "second pour")).toHaveLength(1);
      const poured = new Set(beside.glasses.map(({ nameId }) => nameId));
      expect(beside.namesOnOffer.filter(({ nameId }) => !poured.has(nameId))).toHaveLength(1);
      const ranks = beside.sheets.flatMap(({ ranking }) => ranking ?? []);
      expect(ranks.filter((tie) => tie.length > 1)).toHaveLength(2);
    });

    test("V1 a word taught at a table is the household's after the reveal, and reads notes there", async () => {
      const { client } = house;
      const at = { household: demo.id };
      const { items } = await client("listWords", { at });
      expect(items).toMatchObject([
        { phrase: "coats", means: "savoury.stale", state: "in use", otherwise: [] },
      ]);
      expect(items[0]?.history).toMatchObject([{ taster: "Jorren", flight: "Beside the Lamp" }]);
      const read = await client("readNoteHere", { at, body: { text: "coats and marmalade" } });
      expect(read.observations.map(({ attribute }) => attribute)).toEqual(["savoury.stale", "fruit.citrus"]);
    });

    test("what is next and what was found read sensibly", async () => {
      const at = { household: demo.id };
      const { items } = await house.client("next", { at });
      expect(items.map(({ text }) => text)).toEqual([
        "Keeper's Round, without the stair has rested its 30 days",
        "Is the Round done?: not locked yet by Jorren, Pell",
        "Second Watch is likely ready from here on (80 %)",
        "Second Watch rests its 42 days",
        "Taste Second Watch: day 45 on oak",
        "Saltreach Lamplighter's Rest last release: 97 mL left",
        "Saltreach Gull Stair second release: 97 mL left",
      ]);
      const findings = (await house.client("listFindings", { at })).items;
      expect(findings.map(({ headline }) => headline)).toEqual([
        "Keeper's Round, without the stair ranked first in 2 of 4 sheets; that the sheets agree on an order at all does not rule luck out; whether anybody could tell the names is not shown: 4 of 16 guesses right, which could well be luck",
        "Quernmouth Harbour Wall 10 years ranked first in the one ranking there is; whether anybody could tell the names is not shown: 2 of 4 guesses right, which could well be luck",
        "Saltreach Lamplighter's Rest last release ranked first in 3 of 4 sheets; that the sheets agree on an order at all is hard to put down to luck; whether anybody could tell the names is not shown: 8 of 20 guesses right, which does not rule luck out",
        "Wick and Rye, first make ranked first in 2 of 4 sheets; that the sheets agree on an order at all could well be luck; 9 of 16 guesses right, which is hard to put down to luck",
      ]);
    });

    test("S4 its ledger balances, and all of it happened before now", async () => {
      await house.store.transaction(async (records) => {
        const shelf = await shelfState(records, demo.id);
        const { lines, largestRelative } = trialBalance(shelf.state);
        expect(lines.length).toBeGreaterThan(60);
        expect(largestRelative).toBeLessThan(1e-9);
        for (const table of tables) {
          for (const { createdAt, updatedAt } of await records.list(table, demo.id)) {
            expect(createdAt <= updatedAt, table).toBe(true);
            expect(updatedAt <= MIDNIGHT, table).toBe(true);
          }
        }
      });
    });

    test("H2 its file restores, the half-done flight called off", async () => {
      const { client } = house;
      const file = await client("exportHousehold", { at: { household: demo.id } });
      const copy = await client("restoreHousehold", { body: file });
      const [flight] = (await client("listFlights", { at: { household: copy.id } })).items;
      expect(flight?.state).toBe("called off");
      const { findings } = await factsOf(client, demo);
      expect((await factsOf(client, copy)).findings).toEqual(findings);
    });

    test("whoever loads it can take the free sheet, lock it, and reveal without the lost tokens", async () => {
      const { client } = house;
      const household = demo.id;
      const flight = (await client("listFlights", { at: { household } })).items[0];
      const at = { household, flight: flight?.id ?? "" };
      expect(await refusalOf(client("getFinding", { at }))).toMatchObject({ codes: ["not_revealed"] });
      const free = flight?.sheets.find(({ state }) => state === "free");
      const own = { ...at, sheet: free?.sheetId ?? "" };
      const { sheet, token } = await client("takeSheet", { at: own, body: { ofLegalAge: true } });
      const ranking = sheet.glasses.map(({ code }) => [code]);
      const edited = await client("editSheet", { at: own, token, body: { version: sheet.version, ranking } });
      await client("lockSheet", { at: own, token, body: { version: edited.version } });
      const finding = await client("revealFlight", { at, body: { closeOpenSheets: true } });
      expect(finding.ranks?.sheetsCounted).toBe(3);
      expect(finding.leftOut.join(" ")).toContain("Jorren's sheet was not locked");
    });

    test("H3 two loads at once make one demo, removed by its name to the last row, and loaded again the same", async () => {
      await using house = await temporaryHouse(database, { seed: 7, now: "2027-01-05T12:00:00.000Z" });
      const { client } = house;
      const both = await Promise.allSettled([client("loadDemo"), client("loadDemo")]);
      const [loaded] = both.flatMap((load) => (load.status === "fulfilled" ? [load.value] : []));
      const [no] = both.flatMap((load) => (load.status === "rejected" ? [load.reason as unknown] : []));
      expect(await refusalOf(Promise.reject(no))).toMatchObject({ status: 409, codes: ["demo_loaded"] });
      expect(await refusalOf(client("loadDemo"))).toMatchObject({ status: 409, codes: ["demo_loaded"] });
      expect((await client("listHouseholds")).items).toEqual([loaded]);
      if (!loaded) return;

      const { id, name } = loaded;
      const told = await factsOf(client, loaded);
      const before = await rowsLeft(house.house, id);
      for (const table of tables) expect((before[table] ?? 0) > 0, table).toBe(everyTable[table]);
      await client("removeHousehold", { at: { household: id }, query: { confirm: name } });
      expect(Object.values(await rowsLeft(house.house, id))).toEqual(tables.map(() => 0));
      expect((await client("listHouseholds")).items).toEqual([]);

      // Still before eight in the evening, when a day less is left of the rest that goes on.
      house.clock.advance({ days: 55, hours: 5 });
      const again = await client("loadDemo");
      expect(again.id).not.toBe(id);
      expect(await factsOf(client, again)).toEqual(told);
    });

    test("a load that breaks half-way keeps nothing", async () => {
      await using house = await temporaryHouse(database);
      let left = 12_000;
      const bytes = (count: number) => {
        left -= count;
        if (left < 0) throw new Error("the source of random bytes requires to be there, got none");
        return house.random.bytes(count);
      };
      const broken = openHouse({ ...house.house, random: { bytes } });
      const client = createClient(broken.fetch, "http://house.test");
      expect(await refusalOf(client("loadDemo"))).toMatchObject({ status: 500 });
      expect(left).toBeLessThan(0);
      expect((await house.client("listHouseholds")).items).toEqual([]);
      expect(await house.client("loadDemo")).toMatchObject({ demo: true });
    });
  });
});
