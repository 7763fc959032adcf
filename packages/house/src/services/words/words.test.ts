import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { MOST_SHEET_WORDS, MOST_WORDS } from "../../protocol/index.ts";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const TEXT = "grandad's van, and peach";
const key = (n: number): string => `0123456789abcdefgh${String(n).padStart(4, "0")}`;

async function atTable(house: TemporaryHouse) {
  const evening = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
  const at = { household: evening.household };
  const { flight, pourerToken } = await setFlight(evening, [0, 1]);
  const sheets = await takeSheets(evening, flight.id);
  await house.client("markPoured", { at: { ...at, flight: flight.id }, token: pourerToken ?? "" });
  const [one, two] = sheets.map(({ sheet, token }) => ({
    at: { ...at, flight: flight.id, sheet: sheet.id },
    token,
  }));
  if (one === undefined || two === undefined) throw new Error("two sheets required");
  const reveal = async (): Promise<void> => {
    for (const taken of sheets) await lock(evening, taken);
    await house.client("revealFlight", { at: { ...at, flight: flight.id }, body: {} });
  };
  return { evening, at, flight, one, two, reveal };
}

const attributes = async (house: TemporaryHouse, at: { readonly household: string }, text = TEXT) =>
  (await house.client("readNoteHere", { at, body: { text } })).observations.map(({ attribute }) => attribute);

eachDatabase((database) => {
  describe(`the household's own words on ${database}`, () => {
    test("V1 a phrase is taught, changed and forgotten, and its history says who and when", async () => {
      const house = await temporaryHouse(database);
      const { at, evening } = await atTable(house);
      const tasterId = evening.tasterIds[0] ?? "";
      expect(await attributes(house, at)).toEqual(["fruit.stone"]);
      await house.client("teachWord", {
        at,
        body: { phrase: " Grandad’s VAN", means: "wood.old", tasterId },
      });
      await house.client("teachWord", { at, body: { phrase: "peach", means: "nothing" } });
      expect(await attributes(house, at)).toEqual(["wood.old"]);
      house.clock.advance({ hours: 1 });
      const taught = await refusalOf(
        house.client("teachWord", { at, body: { phrase: "grandad's van", means: "earth.earth" } }),
      );
      expect([taught.status, taught.issues[0]?.code]).toEqual([409, "word_taught"]);
      const changed = { phrase: "grandad's van", means: "earth.earth", instead: "wood.old" } as const;
      await house.client("teachWord", { at, body: changed });
      expect(await attributes(house, at)).toEqual(["earth.earth"]);
      const stale = await refusalOf(
        house.client("teachWord", { at, body: { ...changed, means: "nut.nut" } }),
      );
      expect(stale.issues[0]?.code).toBe("word_taught");
      const forgotten = await house.client("forgetWord", { at, body: { phrase: "grandad's van" } });
      expect(forgotten.history.map(({ means, taster }) => [means, taster])).toEqual([
        [null, null],
        ["earth.earth", null],
        ["wood.old", "Taster 1"],
      ]);
      expect(await attributes(house, at)).toEqual([]);
      const again = await refusalOf(house.client("forgetWord", { at, body: { phrase: "grandad's van" } }));
      expect([again.status, again.issues[0]?.code]).toEqual([404, "unknown_word"]);
    });

    test("V1, V5 what cannot be taught is said where it is wrong", async () => {
      const house = await temporaryHouse(database);
      const { at } = await atTable(house);
      const refusedAt = async (body: { readonly phrase: string; readonly means: string }) =>
        (await refusalOf(house.client("teachWord", { at, body: body as never }))).issues[0];
      expect((await refusedAt({ phrase: " , ", means: "wood.old" }))?.path).toEqual(["phrase"]);
      expect((await refusedAt({ phrase: "a".repeat(61), means: "wood.old" }))?.path).toEqual(["phrase"]);
      expect((await refusedAt({ phrase: "a b c d e f g h i j", means: "wood.old" }))?.path).toEqual([
        "phrase",
      ]);
      expect((await refusedAt({ phrase: "market square", means: "wood.dusty" }))?.path).toEqual(["means"]);
      expect((await refusedAt({ phrase: "On the nose", means: "wood.old" }))?.code).toBe("word_says_how");
      const stranger = house.client("teachWord", {
        at,
        body: { phrase: "market square", means: "wood.old", tasterId: at.household },
      });
      expect((await refusalOf(stranger)).issues[0]?.path).toEqual(["tasterId"]);
    });

    test("V6 a word taught on a sheet is nobody else's before the reveal, and the household's after", async () => {
      const house = await temporaryHouse(database);
      const { at, one, two, reveal } = await atTable(house);
      const body = { key: key(1), phrase: "grandad's van", means: "wood.old" } as const;
      const learned = [{ phrase: "grandad's van", attribute: "wood.old" }];
      expect((await house.client("teachAtSheet", { ...one, body })).items).toEqual(learned);
      // Sent again it is taught once.
      expect((await house.client("teachAtSheet", { ...one, body })).items).toEqual(learned);
      const other = await refusalOf(
        house.client("teachAtSheet", { ...one, body: { ...body, means: "nothing" } }),
      );
      expect(other.issues[0]?.code).toBe("key_reused");
      expect((await house.client("getSheetWords", one)).items).toEqual(learned);
      expect((await house.client("getSheetWords", two)).items).toEqual([]);
      const spying = await refusalOf(house.client("getSheetWords", { at: one.at, token: two.token }));
      expect(spying.status).toBe(403);
      expect((await house.client("listWords", { at })).items).toEqual([]);
      expect(await attributes(house, at)).toEqual(["fruit.stone"]);
      const file = JSON.stringify(await house.client("exportHousehold", { at }));
      expect(file).not.toContain("grandad's van");
      await reveal();
      const [word] = (await house.client("listWords", { at })).items;
      expect(word).toMatchObject({ phrase: "grandad's van", means: "wood.old", state: "in use" });
      expect(word?.history).toHaveLength(1);
      expect(await attributes(house, at)).toEqual(["wood.old", "fruit.stone"]);
      expect((await house.client("getSheetWords", { at: two.at })).items).toEqual(learned);
      const late = await refusalOf(house.client("teachAtSheet", { ...one, body: { ...body, key: key(2) } }));
      expect(late.issues[0]?.code).toBe("sheet_locked");
    });

    test("V3 taught two ways it is in use for nobody, until the household says", async () => {
      const house = await temporaryHouse(database);
      const { at, one, two, reveal } = await atTable(house);
      await house.client("teachAtSheet", {
        ...one,
        body: { key: key(1), phrase: "market square", means: "wood.old" },
      });
      await house.client("teachAtSheet", {
        ...two,
        body: { key: key(1), phrase: "market square", means: "earth.earth" },
      });
      await house.client("teachAtSheet", {
        ...two,
        body: { key: key(2), phrase: "shed", means: "wood.fresh" },
      });
      await house.client("teachAtSheet", { ...two, body: { key: key(3), phrase: "shed", means: null } });
      await reveal();
      const states = async () =>
        (await house.client("listWords", { at })).items.map(({ phrase, means, state, otherwise }) => [
          phrase,
          means,
          state,
          otherwise,
        ]);
      expect(await states()).toEqual([
        ["market square", null, "two ways", ["earth.earth", "wood.old"]],
        ["shed", null, "forgotten", []],
      ]);
      expect(await attributes(house, at, "market square")).toEqual([]);
      house.clock.advance({ hours: 1 });
      await house.client("teachWord", { at, body: { phrase: "market square", means: "wood.old" } });
      expect((await states())[0]).toEqual(["market square", "wood.old", "in use", []]);
      expect(await attributes(house, at, "market square")).toEqual(["wood.old"]);
    });

    test("V1, V6 there is an end to what can be taught", async () => {
      const house = await temporaryHouse(database);
      const { at, one, two } = await atTable(house);
      for (let n = 0; n < MOST_SHEET_WORDS; n++)
        await house.client("teachAtSheet", {
          ...one,
          body: { key: key(n), phrase: `market ${n}`, means: "wood.old" },
        });
      const full = await refusalOf(
        house.client("teachAtSheet", { ...one, body: { key: key(999), phrase: "shed", means: "wood.old" } }),
      );
      expect(full.issues[0]).toMatchObject({ code: "too_many_words", received: MOST_SHEET_WORDS + 1 });
      // What another sheet holds tells nobody anything.
      await house.client("teachAtSheet", {
        ...two,
        body: { key: key(1), phrase: "shed", means: "wood.old" },
      });
      await house.store.transaction(async (records) => {
        for (let n = 0; n < MOST_WORDS; n++)
          await records.insert("taughtWord", {
            id: `0${String(n).padStart(25, "0")}`,
            householdId: at.household,
            version: 1,
            createdAt: house.clock.now().toISOString(),
            updatedAt: house.clock.now().toISOString(),
            number: 1000 + n,
            phrase: `loft ${n}`,
            means: "wood.old",
            tasterId: null,
            flightId: null,
            sheetId: null,
            key: null,
          });
      });
      const many = await refusalOf(
        house.client("teachWord", { at, body: { phrase: "shed", means: "wood.old" } }),
      );
      expect(many.issues[0]).toMatchObject({ code: "too_many_words", received: MOST_WORDS + 1 });
    });
  });

  describe(`words in the household's file on ${database}`, () => {
    test("H1, H2 they come back with their history; those of a flight not revealed only under the seal", async () => {
      const house = await temporaryHouse(database);
      const { at, one, evening } = await atTable(house);
      await house.client("teachWord", {
        at,
        body: { phrase: "market square", means: "wood.old", tasterId: evening.tasterIds[1] ?? "" },
      });
      await house.client("teachWord", {
        at,
        body: { phrase: "market square", means: "nothing", instead: "wood.old" },
      });
      house.clock.advance({ hours: 1 });
      await house.client("teachAtSheet", {
        ...one,
        body: { key: key(1), phrase: "shed", means: "wood.fresh" },
      });
      const archive = await house.client("exportHousehold", { at });
      expect(archive.tables["taughtWord"]).toHaveLength(2);
      const copy = await house.client("restoreHousehold", { body: JSON.parse(JSON.stringify(archive)) });
      const words = async (household: string) =>
        (await house.client("listWords", { at: { household } })).items.map(({ history, ...word }) => ({
          ...word,
          history: history.map(({ id: _, ...row }) => row),
        }));
      expect(await words(copy.id)).toEqual(await words(at.household));
      const rows = await house.store.transaction((records) => records.list("taughtWord", copy.id));
      expect(rows.toSorted((a, b) => a.number - b.number).map(({ phrase }) => phrase)).toEqual([
        "market square",
        "market square",
        "shed",
      ]);
    });
  });
});
