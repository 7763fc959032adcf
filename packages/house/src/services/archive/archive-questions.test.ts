import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { Archive } from "../../protocol/index.ts";
import { eveningShelf, type EveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

/** To be changed: as a file from before there were checksums. */
function unchecked(archive: Archive): Archive {
  const { checksums: _, household, ...rest } = JSON.parse(JSON.stringify(archive)) as Archive;
  const { name, currency, demo } = household;
  return { ...rest, household: { name, currency, demo } };
}

type More = NonNullable<Parameters<typeof setFlight>[2]>;

/** A flight whose first taster has written: set 1 picked or put in order, or everything ranked. */
async function begun(house: TemporaryHouse, shelf: EveningShelf, glasses: readonly number[], more: More) {
  const made = await setFlight(shelf, glasses, more);
  const at = { household: shelf.household, flight: made.flight.id };
  await house.client("markPoured", { at, token: made.pourerToken ?? "" });
  const taken = await takeSheets(shelf, at.flight);
  for (const { sheet, token } of taken) {
    const codes = sheet.glasses.map(({ code }) => code);
    const answers = sheet.sets.map(({ set, glasses: own }) =>
      sheet.asks.answers === "picked"
        ? { set, picked: [own[0]?.code ?? ""] }
        : { set, ranking: own.map(({ code }) => [code]) },
    );
    const written = sheet.asks.ranking === null ? { answers } : { ranking: codes.map((code) => [code]) };
    const smoke = { code: codes[0] ?? "", pass: "first", section: "nose", attribute: "smoke.smoke" } as const;
    const said = { strengths: [{ ...smoke, strength: 6.5 }], typedBy: "Nell" };
    const body = { version: sheet.version, ...written, ...said };
    await house.client("editSheet", { at: { ...at, sheet: sheet.id }, token, body });
  }
  return { at, made, taken };
}

async function ended(house: TemporaryHouse, shelf: EveningShelf, glasses: readonly number[], more: More) {
  const { at, taken } = await begun(house, shelf, glasses, more);
  for (const sheet of taken) await lock(shelf, sheet);
  await house.client("revealFlight", { at, body: {} });
  house.clock.advance({ hours: 1 });
}

async function household(house: TemporaryHouse) {
  const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 2 });
  const [target = "", , , control = ""] = shelf.nameIds;
  const [first = ""] = shelf.vesselIds;
  await ended(house, shelf, [0, 1], { name: "Duo", question: "changed", method: "duo_trio", sets: 2 });
  await ended(house, shelf, [0, 1], {
    name: "Pair",
    question: "tell_apart",
    method: "paired",
    asked: "drier",
    expectedVesselId: first,
  });
  await ended(house, shelf, [0, 1, 2], {
    name: "Close",
    question: "how_close",
    targetNameId: target,
    reference: true,
    late: true,
  });
  await ended(house, shelf, [0, 1, 2], { name: "Again", question: "agree_with_myself" });
  const withControl = { controlVesselId: shelf.vesselIds[3] ?? "", repeats: 1 };
  await ended(house, shelf, [0, 1, 2], { name: "Liked", question: "like_best", ...withControl });
  const underWay = await begun(house, shelf, [0, 1], {
    name: "Tonight",
    question: "tell_apart",
    method: "triangle",
  });
  return { shelf, underWay, control };
}

/** Every finding of a household, with its ids replaced by the order in which they are met. */
async function findings(house: TemporaryHouse, id: string): Promise<unknown[]> {
  const { items } = await house.client("listFlights", { at: { household: id } });
  const all = [];
  for (const { id: flight, state } of items) {
    if (state !== "revealed") continue;
    const { flight: shown, ...finding } = await house.client("getFinding", { at: { household: id, flight } });
    // P5: a copy carries no promise.
    all.push({ ...finding, flight: { ...shown, commitment: null, closing: null } });
  }
  const met = new Map<string, number>();
  const text = JSON.stringify(all).replace(/[0-9a-hjkmnp-tv-z]{26}/g, (one) => {
    if (!met.has(one)) met.set(one, met.size);
    return `#${met.get(one)}`;
  });
  return JSON.parse(text) as unknown[];
}

eachDatabase((database) => {
  describe(`export and restore of flights by question (${database})`, () => {
    test("H1, H2, Q1 questions, layouts, answers and what was found of them come back", async () => {
      await using house = await temporaryHouse(database);
      const { shelf } = await household(house);
      const archive = await house.client("exportHousehold", { at: { household: shelf.household } });
      const file = unchecked(archive);
      const { id } = await house.client("restoreHousehold", { body: file });
      const shown = await findings(house, id);
      expect(shown).toHaveLength(5);
      expect(shown).toEqual(await findings(house, shelf.household));
    });

    test("H1, F15 before the reveal no set, answer or code is in the file; the copy is called off", async () => {
      await using house = await temporaryHouse(database);
      const { shelf, underWay } = await household(house);
      const archive = await house.client("exportHousehold", { at: { household: shelf.household } });
      const text = JSON.stringify({ ...archive, tables: { ...archive.tables, sealedSheets: [] } });
      for (const { sheet } of underWay.taken) {
        for (const { code } of sheet.glasses) expect(text).not.toContain(`"${code}","glass"`);
        expect(text).not.toContain(sheet.id);
      }
      const { id } = await house.client("restoreHousehold", { body: archive });
      const { items } = await house.client("listFlights", { at: { household: id } });
      const copy = items.find(({ name }) => name.startsWith("Tonight"));
      expect(copy).toMatchObject({
        state: "called off",
        question: "tell_apart",
        design: { method: "triangle" },
      });
      const [mine] = underWay.taken;
      const at = { household: id, flight: copy?.id ?? "", sheet: copy?.sheets[0]?.sheetId ?? "" };
      const kept = await house.client("getSheet", { at, token: mine?.token ?? "" });
      expect(kept.sets[0]?.picked, "what was written is not lost").toEqual([mine?.sheet.glasses[0]?.code]);
      expect(kept).toMatchObject({ typedBy: "Nell", strengths: [{ strength: 6.5 }] });
    });

    test("H2 a file from before there were questions is read, and its flights are what they were", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      await ended(house, shelf, [0, 1, 2], { name: "Old" });
      const archive = await house.client("exportHousehold", { at: { household: shelf.household } });
      const old = unchecked(archive);
      for (const row of old.tables["flight"] ?? []) {
        delete row["question"];
        delete row["design"];
      }
      for (const row of old.tables["sheet"] ?? [])
        for (const later of ["answers", "strengths", "typedBy"]) delete row[later];
      for (const row of old.tables["flightKey"] ?? [])
        delete (row["opened"] as Record<string, unknown>)["said"];
      const { id } = await house.client("restoreHousehold", { body: old });
      const [flight] = (await house.client("listFlights", { at: { household: id } })).items;
      expect(flight).toMatchObject({
        question: "which_is_which",
        glassCount: 3,
        design: { method: null, setsEach: 0, glassesEach: 3, reference: false, repeats: 0, said: [] },
      });
      const [now] = (await findings(house, shelf.household)) as {
        headline: string;
        alcoholPerTaster: object;
      }[];
      const [then] = (await findings(house, id)) as {
        headline: string;
        alcoholPerTaster: { grams: number };
      }[];
      expect(then?.headline).toBe(now?.headline);
      expect(then?.alcoholPerTaster.grams).toBeCloseTo(15 * 0.78924 * (0.4 + 0.43 + 0.46), 3);
    });

    test("H2 a key and sheets whose sets do not belong together refuse the file", async () => {
      await using house = await temporaryHouse(database);
      const { shelf } = await household(house);
      const archive = await house.client("exportHousehold", { at: { household: shelf.household } });
      const file = unchecked(archive);
      const [key] = file.tables["flightKey"] ?? [];
      const opened = key?.["opened"] as { codes: { code: string }[] };
      opened.codes = opened.codes.filter(({ code }) => code === "R");
      const no = await refusalOf(house.client("restoreHousehold", { body: file }));
      expect(no).toMatchObject({ status: 422, codes: ["archive_wrong"] });
    });
  });
});
