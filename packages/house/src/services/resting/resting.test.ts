import { CASK } from "@partsproof/core/oak";
import { MOST_PIECES, openRest, REFERENCE } from "@partsproof/core/rest";
import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { BodyOf, Rest } from "../../protocol/index.ts";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const NOW = "2026-11-01T20:00:00.000Z";
const RULE = { attribute: "wood.toasted", level: 6 } as const;
/** 1 × 1 × 16 cm: 66 cm² by geometry, which in 750 mL is 88 cm² a litre. */
const STICK: NonNullable<BodyOf<"putOakIn">> = { piece: { shape: "stick", cm: [1, 1, 16] } };

/** A batch of 750 mL at 50 % vol, ready to rest. */
async function batchAt(house: TemporaryHouse) {
  const pantry = await openPantry(house.client);
  const rye = await pantry.whiskey("Harbour Rye", 50);
  const bottle = await pantry.bottle(rye, { capacityMl: 1000, levelMl: 1000 });
  const recipe = await pantry.recipe("Lamplighter", [[1, rye]], { restDays: 14 });
  const batch = await house.client("addBatch", {
    at: pantry.at,
    body: {
      name: "November",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Flask", capacityMl: 800 },
      pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 750 } }],
    },
  });
  const at = pantry.at;
  return {
    at,
    batch,
    bottle,
    begin: (body: Partial<NonNullable<BodyOf<"beginRest">>> = {}) =>
      house.client("beginRest", {
        at: { ...at, batch: batch.id },
        body: { kind: "oak", pull: { ...RULE }, ...body },
      }),
    put: (rest: Rest, body: NonNullable<BodyOf<"putOakIn">> = STICK) =>
      house.client("putOakIn", { at: { ...at, rest: rest.id }, body }),
    out: (rest: Rest, nth: number, body: Partial<NonNullable<BodyOf<"takeOakOut">>> = {}) =>
      house.client("takeOakOut", {
        at: { ...at, rest: rest.id, piece: rest.oak[nth]?.id ?? "" },
        body: { version: rest.oak[nth]?.version ?? 0, ...body },
      }),
    taste: (rest: Rest, level: number, more: Partial<NonNullable<BodyOf<"addCheck">>> = {}) =>
      house.client("addCheck", {
        at: { ...at, rest: rest.id },
        body: { strengths: [{ section: "whole", attribute: "wood.toasted", strength: level }], ...more },
      }),
    advise: (rest: Rest) => house.client("adviseRest", { at: { ...at, rest: rest.id } }),
  };
}

eachDatabase((database) => {
  describe(`rests (${database})`, () => {
    test("O1 one rest at a time, of a batch that is there; the recipe's shortest rest stands with it", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin } = await batchAt(house);
      const rest = await begin({ celsius: 18, note: "on the shelf" });
      expect(rest).toMatchObject({
        batchName: "November",
        kind: "oak",
        beganAt: NOW,
        oakInAt: null,
        minimumDays: 14,
        minimumEndsAt: "2026-11-15T20:00:00.000Z",
        dose: null,
        endedAt: null,
      });
      expect(rest.abv20).toBeCloseTo(50, 6);
      expect(rest.cautions.join(" ")).toMatch(/lead crystal/);
      expect((await refusalOf(begin())).codes).toEqual(["rest_goes_on"]);
      await house.client("editBatch", {
        at: { ...at, batch: batch.id },
        body: { version: batch.version, finished: true },
      });
      await house.client("removeRest", { at: { ...at, rest: rest.id }, query: { version: rest.version } });
      expect((await refusalOf(begin())).codes).toEqual(["batch_gone"]);
    });

    test("O1 rules and moments that cannot be are refused by their field", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { begin, put } = await batchAt(house);
      const refused = async (call: Promise<unknown>) =>
        (await refusalOf(call)).issues.map(({ code, path }) => [code, path.join(".")]);
      expect(await refused(begin({ kind: "glass" }))).toEqual([["nothing_to_pull", "pull"]]);
      expect(await refused(begin({ leadsAt: 5 }))).toEqual([["leads_below_pull", "leadsAt"]]);
      expect(await refused(begin({ pull: null, leadsAt: 5 }))).toEqual([["leads_below_pull", "leadsAt"]]);
      expect(await refused(begin({ at: "2026-11-01T20:00:00.001Z" }))).toEqual([["moment_outside", "at"]]);
      const rest = await begin({ at: "2026-10-20T12:00:00.000Z" });
      expect(await refused(put(rest, { ...STICK, at: "2026-10-19T12:00:00.000Z" }))).toEqual([
        ["moment_outside", "at"],
      ]);
      expect(await refused(put(rest, { areaCm2: 9000 }))).toEqual([["oak_dose_outside", "areaCm2"]]);
      expect(await refused(put(rest, { ...STICK, areaCm2: 66 }))).toEqual([["area_or_piece", "areaCm2"]]);
    });

    test("O2 a sample is kept in a vial of its own, by the ledger, or nothing is begun", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin } = await batchAt(house);
      const sample = { label: "November, before", capacityMl: 30, ml: 30 };
      const tooMuch = await refusalOf(begin({ sample: { ...sample, ml: 31 } }));
      expect(tooMuch.issues[0]?.path.slice(0, 1)).toEqual(["sample"]);
      expect((await house.client("listRests", { at: { ...at, batch: batch.id } })).items).toEqual([]);
      const rest = await begin({ sample, flightOn: "2026-12-24" });
      expect(rest.sample).toMatchObject({ label: "November, before" });
      expect(rest.sample?.ml).toBeCloseTo(30, 9);
      expect((await house.client("getBatch", { at: { ...at, batch: batch.id } })).now.volumeMl).toBeCloseTo(
        720,
        6,
      );
      const vial = await house.client("getVessel", { at: { ...at, vessel: rest.sample?.vesselId ?? "" } });
      expect([vial.kind, vial.contents.abv20?.toFixed(6)]).toEqual(["vial", "50.000000"]);
      // A batch that rests cannot be undone under its rest, nor its vial be removed.
      const { items } = await house.client("listTransfers", { at, query: { batchId: batch.id } });
      const undone = await refusalOf(
        house.client("undoTransfer", { at: { ...at, transfer: items[0]?.id ?? "" } }),
      );
      expect(undone.status).toBe(409);
    });

    test("O3 wood goes in by geometry, its dose by what the vessel holds; pulling takes it out with the loss", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin, put } = await batchAt(house);
      const rest = await put(await begin(), {
        ...STICK,
        grams: 10.9,
        species: "American oak",
        toast: "medium",
      });
      expect(rest.dose?.areaCm2).toBeCloseTo(66, 9);
      expect(rest.dose?.areaPerLitre).toBeCloseTo(88, 4);
      expect(rest.dose?.caskRatio).toBeCloseTo(88 / CASK.likely, 4);
      expect(rest.dose?.gramsPerLitre).toBeCloseTo(10.9 / 0.75, 4);
      expect(rest.oak).toMatchObject([
        { species: "American oak", toast: "medium", use: 1, grams: 10.9, outAt: null },
      ]);
      house.clock.advance({ days: 12 });
      const pulled = await house.client("pullRest", {
        at: { ...at, rest: rest.id },
        body: { version: rest.version, lossMl: 8 },
      });
      expect(pulled).toMatchObject({ endedAt: "2026-11-13T20:00:00.000Z", lossMl: 8 });
      expect(pulled.oak[0]?.outAt).toBe("2026-11-13T20:00:00.000Z");
      expect((await house.client("getBatch", { at: { ...at, batch: batch.id } })).now.volumeMl).toBeCloseTo(
        742,
        6,
      );
      const { items } = await house.client("listTransfers", { at });
      expect(items[0]).toMatchObject({
        to: { kind: "outside", name: "drain" },
        note: "lost in filtering November",
      });
      expect((await refusalOf(put(pulled))).codes).toEqual(["rest_ended"]);
      // More than there is: nothing is pulled.
      const again = await begin({ kind: "glass", pull: null });
      const short = house.client("pullRest", {
        at: { ...at, rest: again.id },
        body: { version: again.version, lossMl: 900 },
      });
      expect((await refusalOf(short)).issues[0]?.path).toEqual(["lossMl"]);
      const [newest] = (await house.client("listRests", { at: { ...at, batch: batch.id } })).items;
      expect([newest?.kind, newest?.endedAt]).toEqual(["glass", null]);
    });

    test("O4 a check tasting is read as any sheet is, by the household's own words; what is set by hand counts", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, begin, put, taste } = await batchAt(house);
      const rest = await put(await begin());
      const said = await house.client("addCheck", {
        at: { ...at, rest: rest.id },
        body: { notes: { nose: "Strong vanilla, no smoke. Grandad's shed." } },
      });
      const read = await house.client("readNoteHere", {
        at,
        body: { text: "Strong vanilla, no smoke. Grandad's shed.", where: "nose" },
      });
      expect(said.checks[0]?.levels["sweet.vanilla"]).toBe(read.profile["sweet.vanilla"]?.mean);
      expect(said.checks[0]?.levels).not.toHaveProperty("wood.old");
      await house.client("teachWord", { at, body: { phrase: "Grandad's shed", means: "wood.old" } });
      const [later] = (await house.client("listRests", { at: { ...at, batch: rest.batchId } })).items;
      expect(later?.checks[0]?.levels).toHaveProperty("wood.old");
      const hand = await taste(rest, 4, {
        notes: { palate: "strong vanilla" },
        strengths: [
          { section: "whole", attribute: "wood.toasted", strength: 4 },
          { section: "palate", attribute: "wood.toasted", strength: 7 },
          { section: "palate", attribute: "sweet.vanilla", strength: null },
        ],
      });
      expect(hand.checks.at(-1)?.levels).toEqual({ "wood.toasted": 4 });
      expect((await refusalOf(taste(rest, 4, { strengths: [] }))).codes).toEqual(["check_says_nothing"]);
      const [first] = hand.checks;
      const fewer = await house.client("removeCheck", {
        at: { ...at, rest: rest.id, check: first?.id ?? "" },
        query: { version: 1 },
      });
      expect(fewer.checks.map(({ id }) => id)).toEqual([hand.checks.at(-1)?.id]);
    });

    test("O5 the advice is core's model over the stored tastings, with days of the calendar; a planned day comes due", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { begin, put, taste, advise } = await batchAt(house);
      const bare = await begin({ celsius: 18 });
      expect((await advise(bare)).why).toBe("No wood has gone in yet.");
      const rest = await put(bare);
      house.clock.advance({ days: 4 });
      await taste(rest, 3);
      house.clock.advance({ days: 5 });
      const told = await taste(rest, 4.5);
      expect(told.checks.map(({ day }) => day)).toEqual([4, 9]);
      const advice = await advise(rest);
      const believed = openRest({
        conditions: {
          ...REFERENCE,
          caskRatio: (told.dose?.areaPerLitre ?? 0) / CASK.likely,
          thicknessCm: 1,
          abv20: told.abv20 ?? 0,
          celsius: 18,
          use: 1,
        },
        course: "rises",
        form: "two-stage",
        pullAt: 6,
        leadsAt: 7.5,
      })(
        [
          { day: 4, level: 3 },
          { day: 9, level: 4.5 },
        ],
        9,
      );
      expect(advice.answer?.ready.low).toBe(believed.ready.low);
      expect(advice.answer?.ready.high).toBe(believed.ready.high);
      expect(advice.answer?.leadsFrom).toBe(believed.leadsFrom);
      const next = believed.nextTastings()[0];
      expect(advice.nextTastings[0]).toMatchObject({ day: next?.day, tells: next?.tells });
      const due = new Date(Date.parse(NOW) + (next?.day ?? 0) * 86_400_000).toISOString();
      expect(advice.nextTastings[0]?.at).toBe(due);
      expect(advice.answer?.pull.attribute).toBe("toasted wood");
      expect([advice.tasteNow, advice.answer?.sentences[0]]).toEqual([
        false,
        `Taste again on day ${next?.day}.`,
      ]);
      house.clock.set(due);
      const then = await advise(rest);
      expect(then.nextTastings[0]?.day).toBe(next?.day);
      expect(then.tasteNow).toBe(true);
      expect(then.answer?.sentences[0]).toMatch(/^Taste now: day \d+ was planned/);
    });

    test("O5 on glass and without a rule there is nothing to reckon, and it says why", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, begin, put, advise } = await batchAt(house);
      const glass = await begin({ kind: "glass", pull: null });
      const advice = await advise(glass);
      expect([advice.answer, advice.remarks.join(" ")]).toEqual([null, expect.stringMatching(/no source/)]);
      expect((await refusalOf(put(glass))).codes).toEqual(["rest_on_glass"]);
      await house.client("removeRest", { at: { ...at, rest: glass.id }, query: { version: 1 } });
      const rest = await put(await begin({ pull: null }));
      expect((await advise(rest)).why).toBe("No rule says yet when to pull.");
      const ruled = await house.client("editRest", {
        at: { ...at, rest: rest.id },
        body: { version: rest.version, pull: { ...RULE } },
      });
      expect((await advise(ruled)).answer).not.toBeNull();
    });

    test("O6 a rest goes into the file with its wood and tastings, and comes back; links do not", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, begin, put, taste } = await batchAt(house);
      const rest = await taste(
        await put(
          await begin({ sample: { label: "before", capacityMl: 30, ml: 25 }, flightOn: "2026-12-24" }),
        ),
        2,
      );
      await house.client("addCalendarLink", { at, body: { label: "phone" } });
      const file = await house.client("exportHousehold", { at });
      expect(Object.keys(file.tables)).not.toContain("calendarLink");
      const copy = await house.client("restoreHousehold", { body: file });
      const there = { household: copy.id };
      const [batch] = (await house.client("listBatches", { at: there })).items;
      const [back] = (await house.client("listRests", { at: { ...there, batch: batch?.id ?? "" } })).items;
      const bare = ({ oak, checks, sample, dose, pull, flightOn, abv20 }: Rest) => ({
        oak: oak.map(({ id: _, ...piece }) => piece),
        checks: checks.map(({ id: _, ...check }) => check),
        sample: sample && { label: sample.label, ml: sample.ml },
        dose,
        pull,
        flightOn,
        abv20,
      });
      expect(back && bare(back)).toEqual(bare(rest));
    });

    test("O7 one piece comes out, or some of several; the others stay in, and what went with it leaves the vessel", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin, put, out } = await batchAt(house);
      const started = await put(await begin(), { ...STICK, count: 3, grams: 30, toast: "medium" });
      house.clock.advance({ days: 2 });
      const both = await put(started, {
        piece: { shape: "cube", cm: [2, 2, 2] },
        toast: "heavy",
        species: "European oak",
      });
      expect(both.dose?.areaCm2).toBeCloseTo(3 * 66 + 24, 9);
      house.clock.advance({ days: 3 });
      const fewer = await out(both, 0, { count: 1, lossMl: 3 });
      expect(fewer.oak.map(({ count, outAt }) => [count, outAt])).toEqual(
        expect.arrayContaining([
          [2, null],
          [1, "2026-11-06T20:00:00.000Z"],
        ]),
      );
      const gone = fewer.oak.find(({ outAt }) => outAt !== null);
      expect(gone).toMatchObject({ inAt: NOW, toast: "medium", count: 1 });
      expect([gone?.areaCm2, gone?.grams]).toEqual([expect.closeTo(66, 9), expect.closeTo(10, 9)]);
      expect(fewer.dose?.areaCm2).toBeCloseTo(2 * 66 + 24, 9);
      expect([fewer.endedAt, fewer.oakInAt, fewer.lossMl]).toEqual([null, NOW, null]);
      expect((await house.client("getBatch", { at: { ...at, batch: batch.id } })).now.volumeMl).toBeCloseTo(
        747,
        6,
      );
      const [lost] = (await house.client("listTransfers", { at })).items;
      expect(lost).toMatchObject({ to: { name: "drain" }, note: "lost with wood taken out of November" });
      // All are out: the rest goes on, nothing is drawn, and the dose is none.
      const cube = fewer.oak.findIndex(({ piece }) => piece?.shape === "cube");
      const sticks = fewer.oak.findIndex(({ count }) => count === 2);
      const less = await out(fewer, cube, { at: "2026-11-05T20:00:00.000Z" });
      const none = await out(less, sticks);
      expect([none.endedAt, none.dose, none.oak.every(({ outAt }) => outAt !== null)]).toEqual([
        null,
        null,
        true,
      ]);
      // Pulling then ends the rest, and leaves each its own day.
      const before = house.client("pullRest", {
        at: { ...at, rest: none.id },
        body: { version: none.version, at: "2026-11-05T21:00:00.000Z" },
      });
      expect((await refusalOf(before)).codes).toEqual(["moment_outside"]);
      house.clock.advance({ days: 1 });
      const pulled = await house.client("pullRest", {
        at: { ...at, rest: none.id },
        body: { version: none.version },
      });
      expect(pulled.oak).toEqual(none.oak);
      expect((await refusalOf(out(pulled, 0))).codes).toEqual(["rest_ended"]);
    });

    test("O7 what cannot be is refused, a slip is taken back, and ending takes out what is in still", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin, put, out } = await batchAt(house);
      const rest = await put(await put(await begin()), { areaCm2: 40 });
      house.clock.advance({ days: 4 });
      const refused = async (call: Promise<unknown>) =>
        (await refusalOf(call)).issues.map(({ code, path }) => [code, path.join(".")]);
      expect(await refused(out(rest, 0, { at: "2026-10-31T20:00:00.000Z" }))).toEqual([
        ["moment_outside", "at"],
      ]);
      expect(await refused(out(rest, 0, { at: "2026-11-05T20:00:00.001Z" }))).toEqual([
        ["moment_outside", "at"],
      ]);
      expect(await refused(out(rest, 0, { count: 2 }))).toEqual([["count_too_large", "count"]]);
      expect(await refused(out(rest, 0, { at: null }))).toEqual([["piece_is_in", "piece"]]);
      expect(await refused(out(rest, 0, { at: null, lossMl: 2 }))).toEqual([["still_in_whole", "lossMl"]]);
      expect((await refusalOf(out(rest, 0, { version: 7 }))).status).toBe(409);
      // More is lost than there is: nothing comes out.
      expect(await refused(out(rest, 0, { lossMl: 900 }))).toEqual([["vessel_short", "lossMl"]]);
      const unknown = house.client("takeOakOut", {
        at: { ...at, rest: rest.id, piece: "0".repeat(26) },
        body: { version: 1 },
      });
      expect((await refusalOf(unknown)).codes).toEqual(["unknown_piece"]);
      const wrong = await out(rest, 1);
      expect(await refused(out(wrong, 1))).toEqual([["piece_is_out", "piece"]]);
      const right = await out(wrong, 1, { at: null });
      expect(right.oak.map(({ outAt }) => outAt)).toEqual([null, null]);
      expect(right.dose).toEqual(rest.dose);
      const one = await out(right, 0);
      house.clock.advance({ days: 2 });
      const pulled = await house.client("pullRest", {
        at: { ...at, rest: one.id },
        body: { version: one.version },
      });
      expect(pulled.oak.map(({ outAt }) => outAt)).toEqual([
        "2026-11-05T20:00:00.000Z",
        "2026-11-07T20:00:00.000Z",
      ]);
      expect(pulled.dose?.areaCm2).toBe(40);
      expect((await house.client("getBatch", { at: { ...at, batch: batch.id } })).now.volumeMl).toBeCloseTo(
        750,
        6,
      );
    });

    test("O7, O5 the advice is core's model of each piece with its own days; with none in there is none, nor a reminder", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin, put, taste, out, advise } = await batchAt(house);
      const two = await put(await put(await begin({ celsius: 18 })));
      const asOne = { ...(await advise(two)).answer, today: 0 };
      house.clock.advance({ days: 6 });
      const more = await put(two, { piece: { shape: "cube", cm: [0.5, 0.5, 0.5] }, count: 8, use: 2 });
      await taste(more, 3.5);
      house.clock.advance({ days: 3 });
      const less = await out(more, 0);
      house.clock.advance({ days: 3 });
      const advice = await advise(less);
      const ratio = (n: number): number =>
        (less.oak[n]?.areaCm2 ?? 0) / ((less.oak[n]?.volumeMl ?? 0) / 1000) / CASK.likely;
      const settings = {
        conditions: { ...REFERENCE, abv20: less.abv20 ?? 0, celsius: 18 },
        course: "rises",
        form: "two-stage",
        pullAt: 6,
        leadsAt: 7.5,
      } as const;
      const believed = openRest({
        ...settings,
        pieces: [
          { caskRatio: ratio(0), thicknessCm: 1, use: 1, inDay: 0, outDay: 9 },
          { caskRatio: ratio(1), thicknessCm: 1, use: 1, inDay: 0, outDay: null },
          { caskRatio: ratio(2), thicknessCm: 0.5, use: 2, inDay: 6, outDay: null },
        ],
      })([{ day: 6, level: 3.5 }], 12);
      expect(advice.answer?.ready).toEqual(believed.ready);
      expect(advice.answer?.leadsFrom).toBe(believed.leadsFrom);
      expect(advice.remarks.join(" ")).toMatch(/own contact, thickness, use and days in/);
      // Two put in at once are what one of twice the count is.
      const summed = openRest({
        ...settings,
        conditions: { ...settings.conditions, caskRatio: ratio(0) + ratio(1), thicknessCm: 1 },
      })([], 0);
      expect(asOne.ready).toEqual(summed.ready);
      const none = await out(await out(less, 1), 2);
      const told = await advise(none);
      expect([told.answer, told.tasteNow, told.nextTastings]).toEqual([null, false, []]);
      expect(told.why).toMatch(/^All of its wood is out/);
      const { items } = await house.client("next", { at });
      const kinds = items.filter(({ subject }) => subject.id === batch.id).map(({ kind }) => kind);
      expect(kinds).toEqual(["batch resting"]);
      // More wood goes in: what was tasted counts on.
      expect((await advise(await put(none))).answer?.attributes[0]?.tastings).toBe(1);
    });

    test("O7 more pieces with days of their own than the model takes are refused", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { begin, put, out, advise } = await batchAt(house);
      let rest = await put(await begin(), { ...STICK, count: 20 });
      for (let n = 1; n < MOST_PIECES; n += 1) {
        house.clock.advance({ days: 1 });
        rest = await out(
          rest,
          rest.oak.findIndex(({ outAt }) => outAt === null),
          { count: 1 },
        );
      }
      house.clock.advance({ days: 1 });
      const stays = rest.oak.findIndex(({ outAt }) => outAt === null);
      expect((await refusalOf(out(rest, stays, { count: 1 }))).codes).toEqual(["too_many_pieces"]);
      expect((await refusalOf(put(rest))).codes).toEqual(["too_many_pieces"]);
      expect((await advise(rest)).answer).not.toBeNull();
      expect((await out(rest, stays)).dose).toBeNull();
    });

    test("O7, O6 pieces with their days come back from the household's file", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, begin, put, out } = await batchAt(house);
      const rest = await put(await begin(), { ...STICK, count: 3 });
      house.clock.advance({ days: 5 });
      const less = await out(rest, 0, { count: 2 });
      const file = await house.client("exportHousehold", { at });
      const copy = { household: (await house.client("restoreHousehold", { body: file })).id };
      const [batch] = (await house.client("listBatches", { at: copy })).items;
      const [back] = (await house.client("listRests", { at: { ...copy, batch: batch?.id ?? "" } })).items;
      const bare = (told: Rest | undefined) => told?.oak.map(({ id: _, ...piece }) => piece);
      expect(bare(back)).toEqual(bare(less));
      expect(back?.dose).toEqual(less.dose);
    });

    test("what is due stands on the front page: the tasting, the window, the flight", async () => {
      await using house = await temporaryHouse(database, { now: NOW });
      const { at, batch, begin, put, taste } = await batchAt(house);
      const rest = await put(await begin({ flightOn: "2026-12-24" }));
      const kinds = async () =>
        (await house.client("next", { at })).items
          .filter(({ subject }) => subject.id === batch.id)
          .map(({ kind }) => kind)
          .toSorted();
      expect(await kinds()).toEqual(["batch resting", "check tasting planned", "flight planned"]);
      house.clock.advance({ days: 20 });
      expect(await kinds()).toContain("check tasting due");
      await taste(rest, 4);
      expect(await kinds()).toEqual(
        expect.arrayContaining(["check tasting planned", "pull window", "flight planned"]),
      );
    });
  });
});
