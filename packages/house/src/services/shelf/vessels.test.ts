import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`bottles and vessels (${database})`, () => {
    test("S2 a bottle is a vessel and one transfer from the shop, full unless said", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50, { bottleMl: 750, priceMinor: 4500 });
      const bottle = await pantry.bottle(rye);
      expect(bottle).toMatchObject({ kind: "bottle", label: "Saltreach Harbour Rye", capacityMl: 750 });
      expect(bottle.contents.volumeMl).toBeCloseTo(750, 9);
      expect(bottle.contents.abv20).toBeCloseTo(50, 9);
      expect(bottle.contents.cost).toMatchObject({ knownMinor: 4500, unpricedShareOfMass: 0 });
      const { items } = await house.client("listTransfers", {
        at: pantry.at,
        query: { vesselId: bottle.id },
      });
      expect(items).toMatchObject([
        { from: { kind: "outside", name: "shop" }, whiskeyId: rye.id, amount: { kind: "volume", ml: 750 } },
      ]);
    });

    test("S2 a bottle filled beyond its capacity is refused and nothing of it is kept", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const no = await refusalOf(pantry.bottle(rye, { capacityMl: 500, levelMl: 700 }));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "vessel_overflow", path: ["levelMl"], limit: expect.stringContaining("500 mL") }],
      });
      expect(no.issues[0]?.received).toBeCloseTo(700, 6);
      expect((await house.client("listVessels", { at: pantry.at })).items).toEqual([]);
      expect((await house.client("listTransfers", { at: pantry.at })).items).toEqual([]);
    });

    test("S2 the cost is the price of that bottle by its level; a gift has no price, which is not free", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50, { bottleMl: 700, priceMinor: 7000 });
      const half = await pantry.bottle(rye, { levelMl: 350 });
      const bargain = await pantry.bottle(rye, { priceMinor: 4200, levelMl: 350 });
      const gift = await pantry.bottle(rye, { priceMinor: null });
      const small = await pantry.bottle(rye, { capacityMl: 350 });
      expect(half.contents.cost.knownMinor).toBeCloseTo(3500, 9);
      expect(bargain.contents.cost.knownMinor).toBeCloseTo(2100, 9);
      expect(gift.contents.cost).toMatchObject({
        knownMinor: 0,
        unpricedShareOfMass: 1,
        perLitreMinor: null,
      });
      expect(small.priceMinor).toBe(3500);
    });

    test("S2 a proof on the label is one at 60 °F", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 1, { strength: { basis: "proof60F", value: 100 } });
      const { contents } = await pantry.bottle(rye);
      expect(contents.proof60F).toBeCloseTo(100, 9);
      // 27 CFR 30 and OIML R 22: 100 proof is 50 % at 60 °F and a little more at 20 °C.
      expect(contents.abv20).toBeGreaterThan(50.02);
      expect(contents.abv20).toBeLessThan(50.12);
    });

    test("S3 the first pour opens a bottle, and nothing seals it again", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const bottle = await pantry.bottle(await pantry.whiskey("Harbour Rye", 50));
      expect(bottle).toMatchObject({ sealed: true, openedAt: null });
      house.clock.advance({ days: 1 });
      const pour = await pantry.pour(bottle, "glass", 20);
      const openedAt = house.clock.now().toISOString();
      expect(await pantry.held(bottle)).toMatchObject({ sealed: false, openedAt });
      house.clock.advance({ days: 1 });
      await pantry.pour(bottle, "glass", 20);
      expect(await pantry.held(bottle)).toMatchObject({ openedAt });
      await house.client("undoTransfer", { at: { household: pantry.household, transfer: pour } });
      expect(await pantry.held(bottle)).toMatchObject({ sealed: false, openedAt });
    });

    test("S3 a bottle can come opened, or be opened by hand; a jug cannot", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      expect(await pantry.bottle(rye, { sealed: false, levelMl: 120 })).toMatchObject({ sealed: false });
      const shut = await pantry.bottle(rye);
      const at = { household: pantry.household, vessel: shut.id };
      const opened = await house.client("editVessel", { at, body: { version: shut.version, opened: true } });
      expect(opened).toMatchObject({ sealed: false, version: 2 });
      const jug = await pantry.vessel("Jug", 1000);
      expect(jug).toMatchObject({ sealed: false, openedAt: null });
      const no = await refusalOf(
        house.client("editVessel", { at: { ...at, vessel: jug.id }, body: { version: 1, opened: true } }),
      );
      expect(no).toMatchObject({ status: 422, codes: ["not_a_bottle"] });
    });

    test("S8 a stale edit is refused with the version there is, and changes nothing", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const jug = await pantry.vessel("Jug", 1000);
      const at = { household: pantry.household, vessel: jug.id };
      await house.client("editVessel", { at, body: { version: 1, label: "Big jug" } });
      const no = await refusalOf(
        house.client("editVessel", { at, body: { version: 1, label: "Small jug" } }),
      );
      expect(no).toMatchObject({
        status: 409,
        issues: [{ code: "stale_edit", path: ["version"], limit: "version 2", received: 1 }],
      });
      expect(await pantry.held(jug)).toMatchObject({ label: "Big jug", version: 2 });
    });

    test("S7 a vessel that a transfer touches is not removed; undone transfers go with it", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const at = { household: pantry.household, vessel: bottle.id };
      const remove = () => house.client("removeVessel", { at, query: { version: 1 } });
      expect(await refusalOf(remove())).toMatchObject({ status: 409, codes: ["vessel_in_use"] });
      const { items } = await house.client("listTransfers", { at: pantry.at });
      await house.client("undoTransfer", { at: { ...at, transfer: items[0]?.id ?? "" } });
      await remove();
      expect((await house.client("listVessels", { at: pantry.at })).items).toEqual([]);
      expect((await house.client("listTransfers", { at: pantry.at })).items).toEqual([]);
      await house.client("removeWhiskey", { at: { ...at, whiskey: rye.id }, query: { version: 1 } });
    });

    test("lists page by page, each row once, filtered by kind and whiskey", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const malt = await pantry.whiskey("Quay Malt", 46);
      const made = [];
      for (let i = 0; i < 5; i += 1) made.push((await pantry.bottle(i % 2 ? malt : rye)).id);
      made.push((await pantry.vessel("Jug", 1000)).id);
      const seen: string[] = [];
      let cursor: string | undefined;
      do {
        const page = await house.client("listVessels", { at: pantry.at, query: { limit: 2, cursor } });
        seen.push(...page.items.map(({ id }) => id));
        cursor = page.next ?? undefined;
      } while (cursor !== undefined);
      expect(seen).toHaveLength(6);
      expect(new Set(seen)).toEqual(new Set(made));
      const malts = await house.client("listVessels", { at: pantry.at, query: { whiskeyId: malt.id } });
      expect(malts.items).toHaveLength(2);
      const jugs = await house.client("listVessels", { at: pantry.at, query: { kind: "blending bottle" } });
      expect(jugs.items.map(({ label }) => label)).toEqual(["Jug"]);
    });
  });
});
