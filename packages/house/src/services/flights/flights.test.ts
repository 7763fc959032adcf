import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`flights (${database})`, () => {
    test("F1 names on offer are a multiset sorted by label, distractors among the others", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 1 });
      const { flight } = await setFlight(shelf, [3, 1, 3], { distractors: [2, 0, 1] });
      expect(flight.namesOnOffer.map(({ label, count }) => [label, count])).toEqual([
        ["Saltreach Tide No. A", 1],
        ["Saltreach Tide No. B", 2],
        ["Saltreach Tide No. C", 1],
        ["Saltreach Tide No. D", 2],
      ]);
      expect(flight.glassCount).toBe(3);
    });

    test("F1, F5 two bottles of one whiskey are one name, and both keep the whole back", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const { client, household } = shelf;
      const at = { household };
      const second = await client("addBottle", {
        at,
        body: { whiskeyId: shelf.whiskeyIds[0] ?? "", label: "B", levelMl: 100 },
      });
      const { flight } = await client("addFlight", {
        at,
        body: {
          name: "Two bottles",
          pouring: "someone else",
          pourer: "Pat",
          glasses: [{ vesselId: shelf.vesselIds[0] ?? "" }, { vesselId: second.id }],
          pourMl: 30,
          tasterIds: [...shelf.tasterIds],
        },
      });
      expect(flight.namesOnOffer).toMatchObject([{ nameId: shelf.nameIds[0], count: 2 }]);
      const kept = async (vessel: string) =>
        (await client("getVessel", { at: { household, vessel } })).keptMl;
      expect(await kept(shelf.vesselIds[0] ?? "")).toBeCloseTo(120, 9);
      expect(await kept(second.id), "it has no more than that").toBeCloseTo(100, 6);
      expect(await kept(shelf.vesselIds[1] ?? ""), "not on offer").toBe(0);
    });

    test("F1 the target may be any name on offer, and no other", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 1 });
      const [, , offered, other] = shelf.nameIds;
      const made = await setFlight(shelf, [0, 1], { distractors: [2], targetNameId: offered ?? "" });
      expect(made.flight.targetNameId).toBe(offered);
      const no = await refusalOf(setFlight(shelf, [0, 1], { distractors: [2], targetNameId: other ?? "" }));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "target_not_offered", path: ["targetNameId"] }],
      });
    });

    test("F2 each taster has codes of their own, none twice in the flight", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 5, tasters: 6 });
      const { flight, pourerToken } = await setFlight(shelf, [0, 1, 2, 3, 4, 4]);
      const list = await house.client("getPourList", {
        at: { household: shelf.household, flight: flight.id },
        token: pourerToken ?? "",
      });
      const codes = list.tasters.flatMap(({ glasses }) => glasses.map(({ code }) => code));
      expect(codes).toHaveLength(36);
      expect(new Set(codes).size).toBe(36);
      for (const code of codes) expect(code).toMatch(/^[1-9][0-9]{2}$/);
      // Six tasters on six glasses: a whole Williams square, so each glass number stands once at each place.
      for (let place = 0; place < 6; place += 1) {
        const poured = list.tasters.map(({ glasses }) => glasses[place]?.vesselId);
        for (const [i, id] of shelf.vesselIds.entries()) {
          expect(poured.filter((other) => other === id)).toHaveLength(i === 4 ? 2 : 1);
        }
      }
    });

    test("F3 a pourer is named and does not taste", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const nobody = await refusalOf(setFlight(shelf, [0, 1], { pourer: null }));
      expect(nobody).toMatchObject({ status: 422, issues: [{ code: "pourer_needed", path: ["pourer"] }] });
      const taster = await refusalOf(setFlight(shelf, [0, 1], { pourer: " TASTER 2 " }));
      expect(taster).toMatchObject({ issues: [{ code: "pourer_tastes", received: "TASTER 2" }] });
    });

    test("F4 alone needs exactly one taster and no pourer", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const no = await refusalOf(setFlight(shelf, [0, 1], { pouring: "alone" }));
      expect(no.codes).toEqual(["alone_needs_one", "alone_has_no_pourer"]);
      expect(no.issues[0]).toMatchObject({ path: ["tasterIds"], received: 2 });
    });

    test("F5 what the shelf cannot pour is refused at its glass or distractor, and nothing is drawn", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 2 });
      const { client, household } = shelf;
      const at = { household };
      const from = { kind: "vessel" as const, vesselId: shelf.vesselIds[1] ?? "" };
      const to = { kind: "outside" as const, name: "drain" as const };
      await client("addTransfer", { at, body: { from, to, amount: { kind: "volume", ml: 4950 } } });

      const twice = await refusalOf(setFlight(shelf, [0, 1, 2, 1], { pourMl: 20 }));
      expect(twice).toMatchObject({
        status: 422,
        issues: [
          { code: "vessel_short", path: ["glasses", 3, "vesselId"], limit: "50 mL free", received: 80 },
        ],
      });
      const distractor = await refusalOf(setFlight(shelf, [0, 2], { distractors: [3, 1], pourMl: 26 }));
      expect(distractor).toMatchObject({
        status: 422,
        issues: [{ code: "vessel_short", path: ["distractors", 1], received: 52 }],
      });
      expect((await client("listFlights", { at })).items).toEqual([]);

      const { id: bottleless } = await client("addWhiskey", {
        at,
        body: { maker: "Saltreach", name: "Gone", strength: { basis: "abv20", value: 40 } },
      });
      const body = {
        name: "Tuesday",
        pouring: "someone else" as const,
        pourer: "Pat",
        pourMl: 10,
        tasterIds: [...shelf.tasterIds],
        glasses: shelf.vesselIds.slice(0, 2).map((vesselId) => ({ vesselId })),
        distractors: [`whiskey:${bottleless}`],
      };
      const none = await refusalOf(client("addFlight", { at, body }));
      expect(none, "a name that no bottle could have poured would tell that it is not poured").toMatchObject({
        issues: [{ code: "vessel_short", path: ["distractors", 0], limit: "0 mL free" }],
      });
    });

    test("F5 a name on offer keeps the same back whether it is poured or not", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 3 });
      await setFlight(shelf, [0, 1], { distractors: [2], pourMl: 12 });
      const { items } = await shelf.client("listVessels", { at: { household: shelf.household } });
      expect(items.map(({ keptMl }) => keptMl)).toEqual([36, 36, 36]);
      expect(items.map(({ contents }) => Math.round(contents.volumeMl))).toEqual([5000, 5000, 5000]);
    });

    test("F12 alcohol before the reveal is that of the strongest glasses the offer allows", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1], { distractors: [2], pourMl: 20 });
      // 40, 43 and 46 %: two glasses of 20 mL at 43 and 46 %, ethanol 0.78924 g/mL at 20 °C (OIML R 22).
      expect(flight.alcoholAtMost.grams).toBeCloseTo(20 * (0.43 + 0.46) * 0.78924, 3);
      expect(flight.alcoholAtMost.usStandardDrinks).toBeCloseTo(flight.alcoholAtMost.grams / 14, 12);
      expect(flight.alcoholAtMost.ukUnits).toBeCloseTo(flight.alcoholAtMost.grams / 8, 12);
    });

    test("S1 unknown ids in a draft are told together, each at its path", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const unknown = "0".repeat(26);
      const no = await refusalOf(
        house.client("addFlight", {
          at: { household: shelf.household },
          body: {
            name: "Tuesday",
            pouring: "someone else",
            pourer: "Pat",
            pourMl: 10,
            tasterIds: [shelf.tasterIds[0] ?? "", unknown],
            glasses: [{ vesselId: shelf.vesselIds[0] ?? "" }, { vesselId: unknown }],
            distractors: [`whiskey:${unknown}`],
          },
        }),
      );
      expect(no).toMatchObject({
        status: 404,
        issues: [
          { code: "unknown_vessel", path: ["glasses", 1, "vesselId"], received: unknown },
          { code: "unknown_name", path: ["distractors", 0] },
          { code: "unknown_taster", path: ["tasterIds", 1] },
        ],
      });
      const other = await eveningShelf(house.client, { whiskeys: 1, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1]);
      const strange = { household: other.household, flight: flight.id };
      expect(await refusalOf(house.client("getFlight", { at: strange }))).toMatchObject({
        status: 404,
        codes: ["unknown_flight"],
      });
    });

    test("a taster named twice is refused", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const [id = ""] = shelf.tasterIds;
      const no = await refusalOf(setFlight(shelf, [0, 1], { tasterIds: [id, id] }));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "taster_repeated", path: ["tasterIds", 1] }],
      });
    });

    test("lists flights newest first, page by page, sheets in the order of the tasters named", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 4 });
      const tasterIds = shelf.tasterIds.toReversed();
      for (const name of ["one", "two", "three"]) {
        await setFlight(shelf, [0, 1], { name, tasterIds });
        house.clock.advance({ ms: 1 });
      }
      const at = { household: shelf.household };
      const first = await house.client("listFlights", { at, query: { limit: 2 } });
      expect(first.items.map(({ name }) => name)).toEqual(["three", "two"]);
      expect(first.items[0]?.sheets.map(({ tasterId }) => tasterId)).toEqual(tasterIds);
      const rest = await house.client("listFlights", { at, query: { limit: 2, cursor: first.next ?? "" } });
      expect(rest).toMatchObject({ items: [{ name: "one" }], next: null });
    });
  });
});
