import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const key = (n: number): string => `device-key-${String(n).padStart(16, "0")}`;

async function tasting(house: TemporaryHouse) {
  const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
  const { flight, hostToken, pourerToken } = await setFlight(shelf, [0, 1]);
  const at = { household: shelf.household, flight: flight.id };
  const [taken] = await takeSheets(shelf, flight.id);
  if (!taken) throw new Error("a sheet is needed");
  await house.client("markPoured", { at, token: pourerToken ?? "" });
  const sheetAt = { ...at, sheet: taken.sheet.id };
  const [code = "", other = ""] = taken.sheet.glasses.map((glass) => glass.code);
  const note = (nose: string) => ({
    code,
    first: { nose, palate: "", finish: "" },
    second: { nose: "", palate: "", finish: "" },
    score: null,
  });
  const { token } = taken;
  const write = (n: number, after: number, nose: string) =>
    house.client("addEntry", { at: sheetAt, token, body: { key: key(n), after, notes: [note(nose)] } });
  return { shelf, at, sheetAt, token, hostToken, code, other, write, note };
}

eachDatabase((database) => {
  describe(`entries on a sheet (${database})`, () => {
    test("E1 every write is an entry with its moment; a change before the lock is kept as history", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, code, other, write, shelf } = await tasting(house);
      await write(1, 0, "sea");
      house.clock.advance({ ms: 1000 });
      await write(2, 1, "sea and pear");
      const [nameId = ""] = shelf.nameIds;
      const { sheet } = await house.client("addEntry", {
        at: sheetAt,
        token,
        body: { key: key(3), after: 2, guesses: [{ code, nameId }], ranking: [[code, other]] },
      });
      expect(sheet.entries).toBe(3);
      expect(sheet.notes[0]?.first.nose).toBe("sea and pear");
      await house.client("lockSheet", { at: sheetAt, token, body: { after: 3, key: key(4) } });
      const { items } = await house.client("listEntries", { at: sheetAt, token });
      expect(items.map(({ number, kind, notes }) => [number, kind, notes?.[0]?.first.nose])).toEqual([
        [1, "written", "sea"],
        [2, "written", "sea and pear"],
        [3, "written", undefined],
        [4, "locked", undefined],
      ]);
      expect(items[2]).toMatchObject({ guesses: [{ code, nameId }], ranking: [[code, other]] });
      const [first, second] = items.map(({ at }) => Date.parse(at));
      expect((second ?? 0) - (first ?? 0)).toBe(1000);
    });

    test("E2 a write sent again is written once, also after the lock; its key is for nothing else", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, write } = await tasting(house);
      const [a, b, c] = [await write(1, 0, "sea"), await write(1, 0, "sea"), await write(1, 0, "sea")];
      expect([a.entry.number, b.entry.number, c.entry.number]).toEqual([1, 1, 1]);
      expect(c.sheet.version).toBe(a.sheet.version);
      expect(await refusalOf(write(1, 1, "pear"))).toMatchObject({ status: 409, codes: ["key_reused"] });
      const lock = () => house.client("lockSheet", { at: sheetAt, token, body: { after: 1, key: key(2) } });
      const [one, two] = [await lock(), await lock()];
      expect(two).toEqual(one);
      expect((await write(1, 0, "sea")).sheet.state).toBe("locked");
      expect((await refusalOf(write(3, 2, "late"))).codes).toEqual(["sheet_locked"]);
      expect((await house.client("listEntries", { at: sheetAt, token })).items).toHaveLength(2);
    });

    test("E2 twenty phones' worth of retries at once write one entry", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, write } = await tasting(house);
      const all = await Promise.all(Array.from({ length: 20 }, () => write(1, 0, "sea")));
      expect(all.every(({ entry }) => entry.number === 1)).toBe(true);
      expect((await house.client("listEntries", { at: sheetAt, token })).items).toHaveLength(1);
    });

    test("E4 two devices on one sheet: the second is told which entry came before it, and nothing is merged", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, write } = await tasting(house);
      await write(1, 0, "by the first");
      expect(await refusalOf(write(2, 0, "by the second"))).toMatchObject({
        status: 409,
        issues: [{ code: "entry_conflict", path: ["after"], limit: "entry 1", received: 0 }],
      });
      const { notes, entries } = await house.client("getSheet", { at: sheetAt, token });
      expect([notes[0]?.first.nose, entries]).toEqual(["by the first", 1]);
      await write(2, 1, "by the second");
      const race = await Promise.allSettled([write(3, 2, "one"), write(4, 2, "two"), write(5, 2, "three")]);
      expect(race.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    });

    test("E3 an edit of the whole sheet is an entry too, and what is refused is none", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, note, write } = await tasting(house);
      const { version } = await house.client("getSheet", { at: sheetAt, token });
      await house.client("editSheet", { at: sheetAt, token, body: { version, notes: [note("sea")] } });
      expect((await refusalOf(write(1, 0, "other"))).codes).toEqual(["entry_conflict"]);
      const wrong = house.client("addEntry", {
        at: sheetAt,
        token,
        body: { key: key(9), after: 1, guesses: [{ code: "999", nameId: null }] },
      });
      expect((await refusalOf(wrong)).codes).toEqual(["unknown_code"]);
      const { items } = await house.client("listEntries", { at: sheetAt, token });
      expect(items.map(({ number, kind }) => [number, kind])).toEqual([[1, "written"]]);
    });

    test("E6, E7 intensities by section and who typed from paper are fields of the entry and of the sheet", async () => {
      await using house = await temporaryHouse(database);
      const { sheetAt, token, code, other, note } = await tasting(house);
      const said = (attribute: "smoke.smoke" | "sweet.honey", section: "nose" | "whole", of = code) => ({
        code: of,
        pass: "first" as const,
        section,
        attribute,
      });
      const send = (n: number, after: number, body: object) =>
        house.client("addEntry", { at: sheetAt, token, body: { key: key(n), after, ...body } });
      await send(1, 0, { notes: [note("sea")] });
      const { entry, sheet } = await send(2, 1, {
        typedBy: "Nell",
        strengths: [
          { ...said("smoke.smoke", "whole"), strength: 0 },
          { ...said("sweet.honey", "nose", other), strength: 3.5 },
          { ...said("smoke.smoke", "nose"), strength: 10 },
        ],
      });
      expect(entry).toMatchObject({ typedBy: "Nell", strengths: [{ strength: 0 }, {}, {}] });
      const order = sheet.glasses.map((glass) => glass.code);
      const first = [
        { ...said("smoke.smoke", "nose"), strength: 10 },
        { ...said("smoke.smoke", "whole"), strength: 0 },
      ];
      const second = [{ ...said("sweet.honey", "nose", other), strength: 3.5 }];
      expect(sheet).toMatchObject({ typedBy: "Nell", notes: [{ first: { nose: "sea" } }] });
      expect(sheet.strengths).toEqual(order[0] === code ? [...first, ...second] : [...second, ...first]);
      const taken = await send(3, 2, {
        strengths: [
          { ...said("smoke.smoke", "nose"), strength: null },
          { ...said("sweet.honey", "nose", other), strength: 4 },
        ],
      });
      expect(taken.sheet.strengths.map(({ strength }) => strength).toSorted((a, b) => a - b)).toEqual([0, 4]);
      expect(taken.sheet.typedBy, "named by whatever was typed last").toBe("Nell");
      const { items } = await house.client("listEntries", { at: sheetAt, token });
      expect(items.map(({ typedBy }) => typedBy)).toEqual([undefined, "Nell", undefined]);

      const wrong = [
        { ...said("smoke.smoke", "nose"), strength: 5 },
        { ...said("smoke.smoke", "nose"), strength: 6 },
        { ...said("smoke.smoke", "nose", "1"), strength: 6 },
      ];
      const refusal = await refusalOf(send(4, 3, { strengths: wrong }));
      expect(refusal.issues.map((one) => [one.code, one.path.join(".")])).toEqual([
        ["strength_named_twice", "strengths.1"],
        ["unknown_code", "strengths.2.code"],
      ]);
      for (const strength of [-1, 10.01, "5"])
        expect(
          (await refusalOf(send(4, 3, { strengths: [{ ...said("smoke.smoke", "nose"), strength }] }))).status,
          String(strength),
        ).toBe(422);
      const unknown = { ...said("smoke.smoke", "nose"), attribute: "smoke.mirrors", strength: 5 };
      expect((await refusalOf(send(4, 3, { strengths: [unknown] }))).status).toBe(422);
      expect((await house.client("getSheet", { at: sheetAt, token })).entries).toBe(3);
    });

    test("E5 entries are their taster's own until the reveal", async () => {
      await using house = await temporaryHouse(database);
      const { at, sheetAt, hostToken, write } = await tasting(house);
      await write(1, 0, "sea");
      expect((await refusalOf(house.client("listEntries", { at: sheetAt }))).status).toBe(401);
      const asHost = house.client("listEntries", { at: sheetAt, token: hostToken });
      expect((await refusalOf(asHost)).status).toBe(403);
      const early = await refusalOf(house.client("revealFlight", { at, body: {} }));
      expect(early.issues[0]?.message).toMatch(/got 1 not locked: Taster 1$/);
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      expect((await house.client("listEntries", { at: sheetAt })).items).toHaveLength(1);
    });
  });
});
