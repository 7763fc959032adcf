import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight } from "../fixtures/evening.ts";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`the ledger (${database})`, () => {
    test("S4 what a vessel holds follows from the pours; mixing shrinks", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const strong = await pantry.bottle(await pantry.whiskey("Breaker", 100, { bottleMl: 1000 }));
      const jug = await pantry.vessel("Jug", 1000);
      await pantry.pour(strong, jug, 50);
      await house.client("addTransfer", {
        at: pantry.at,
        body: {
          from: { kind: "outside", name: "tap" },
          to: { kind: "vessel", vesselId: jug.id },
          amount: { kind: "volume", ml: 50 },
        },
      });
      const { contents } = await pantry.held(jug);
      // OIML R 22 (1975), general formula: 50 mL of ethanol and 50 mL of water at 20 °C come to 96.463 mL.
      expect(contents.volumeMl).toBeCloseTo(96.463, 3);
      expect(contents.composition.map(({ label }) => label)).toEqual(["Saltreach Breaker", "water"]);
    });

    test("S5 pouring more than the bottle holds is refused in mL at 20 °C, and nothing moves", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const bottle = await pantry.bottle(await pantry.whiskey("Harbour Rye", 50), { levelMl: 200 });
      const no = await refusalOf(pantry.pour(bottle, "glass", 201));
      expect(no).toMatchObject({
        status: 422,
        issues: [
          { code: "vessel_short", path: ["amount"], limit: "200 mL in Saltreach Harbour Rye", received: 201 },
        ],
      });
      const by = (g: number) =>
        house.client("addTransfer", {
          at: pantry.at,
          body: {
            from: { kind: "vessel", vesselId: bottle.id },
            to: { kind: "outside", name: "glass" },
            amount: { kind: "mass", g },
          },
        });
      const { massG } = bottle.contents;
      const heavy = await refusalOf(by(massG * 2));
      expect(heavy.issues[0]?.received, "grams told in mL").toBeCloseTo(400, 6);
      expect(await pantry.held(bottle)).toMatchObject({
        version: 1,
        contents: { volumeMl: bottle.contents.volumeMl },
      });
      await by(massG);
      expect((await pantry.held(bottle)).contents.volumeMl).toBe(0);
      const empty = await refusalOf(pantry.pour(bottle, "glass", 1));
      expect(empty).toMatchObject({
        codes: ["vessel_short"],
        issues: [{ limit: expect.stringContaining("0 mL") }],
      });
    });

    test("S5 filling above the capacity is refused", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const bottle = await pantry.bottle(await pantry.whiskey("Harbour Rye", 50));
      const vial = await pantry.vessel("Vial", 30);
      const no = await refusalOf(pantry.pour(bottle, vial, 31));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "vessel_overflow", path: ["amount"], limit: "30 mL, all that Vial holds" }],
      });
      expect((await pantry.held(vial)).contents.volumeMl).toBe(0);
      expect(await pantry.held(bottle)).toMatchObject({ sealed: true });
    });

    test("S5 amounts that are none, and accounts that cannot be two sides, are each told", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const vessel = { kind: "vessel", vesselId: bottle.id } as const;
      const outside = (name: "shop" | "tap" | "glass" | "drain" | "air") =>
        ({ kind: "outside", name }) as const;
      const ml = (x: number) => ({ kind: "volume", ml: x }) as const;
      const codes = async (body: Parameters<typeof send>[0]) => (await refusalOf(send(body))).codes;
      const send = (
        body: NonNullable<NonNullable<Parameters<typeof house.client<"addTransfer">>[1]>["body"]>,
      ) => house.client("addTransfer", { at: pantry.at, body });
      expect(await codes({ from: vessel, to: outside("glass"), amount: ml(0) })).toEqual([
        "amount_not_positive",
      ]);
      expect(await codes({ from: vessel, to: outside("glass"), amount: ml(-5) })).toEqual([
        "amount_not_positive",
      ]);
      expect(await codes({ from: outside("tap"), to: vessel, amount: ml(-5) })).toEqual([
        "amount_not_positive",
      ]);
      expect(await codes({ from: outside("tap"), to: vessel, amount: { kind: "all" } })).toEqual([
        "amount_kind",
      ]);
      expect(await codes({ from: vessel, to: vessel, amount: ml(5) })).toEqual(["account_same"]);
      expect(await codes({ from: vessel, to: outside("shop"), amount: ml(5) })).toEqual([
        "account_direction",
      ]);
      expect(await codes({ from: outside("drain"), to: vessel, amount: ml(5) })).toEqual([
        "account_direction",
      ]);
      expect(await codes({ from: outside("shop"), to: vessel, amount: ml(5) })).toEqual(["whiskey_needed"]);
      expect(await codes({ from: outside("tap"), to: vessel, amount: ml(5), whiskeyId: rye.id })).toEqual([
        "only_from_shop",
      ]);
      expect((await house.client("listTransfers", { at: pantry.at })).items).toHaveLength(1);
    });

    test("S6 an undo that breaks what followed names the first that would break", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const bottle = await pantry.bottle(await pantry.whiskey("Harbour Rye", 50));
      const jug = await pantry.vessel("Jug", 1000);
      const first = await pantry.pour(bottle, jug, 100);
      const second = await pantry.pour(jug, "glass", 80);
      const undo = (transfer: string) =>
        house.client("undoTransfer", { at: { household: pantry.household, transfer } });
      const no = await refusalOf(undo(first));
      expect(no).toMatchObject({ status: 409, issues: [{ code: "undo_breaks_later", received: second }] });
      const undone = await undo(second);
      expect(undone.undoneAt).toBe(house.clock.now().toISOString());
      await undo(first);
      expect((await pantry.held(bottle)).contents.volumeMl).toBeCloseTo(700, 9);
      expect(await refusalOf(undo(first))).toMatchObject({ status: 409, codes: ["transfer_undone"] });
      expect((await house.client("listTransfers", { at: pantry.at })).items).toHaveLength(3);
    });

    test("S7 a strength changed later does not change what was poured in", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const old = await pantry.bottle(rye);
      await house.client("editWhiskey", {
        at: { household: pantry.household, whiskey: rye.id },
        body: { version: 1, strength: { basis: "abv20", value: 60 } },
      });
      expect((await pantry.held(old)).contents.abv20).toBeCloseTo(50, 9);
      expect((await pantry.bottle(rye)).contents.abv20).toBeCloseTo(60, 9);
    });

    test("S9 liquid kept for a sealed flight is neither poured out, nor poured onto, nor undone away", async () => {
      await using house = await temporaryHouse(database);
      const evening = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
      const { household, vesselIds } = evening;
      await setFlight(evening, [0, 1], { pourMl: 20 });
      const [kept = "", alsoKept = "", free = ""] = vesselIds;
      const move = (from: string, to: string | null, ml: number) =>
        house.client("addTransfer", {
          at: { household },
          body: {
            from: { kind: "vessel", vesselId: from },
            to: to === null ? { kind: "outside", name: "drain" } : { kind: "vessel", vesselId: to },
            amount: { kind: "volume", ml },
          },
        });
      const no = await refusalOf(move(kept, null, 4970));
      expect(no).toMatchObject({
        status: 422,
        issues: [
          {
            code: "vessel_short",
            limit: "4960 mL free (40 mL kept for sealed flights)",
          },
        ],
      });
      expect(no.issues[0]?.received).toBeCloseTo(4970, 6);
      await move(kept, null, 100);
      expect(await refusalOf(move(free, kept, 50))).toMatchObject({ status: 409, codes: ["vessel_kept"] });
      const { items } = await house.client("listTransfers", {
        at: { household },
        query: { vesselId: alsoKept },
      });
      const away = house.client("undoTransfer", { at: { household, transfer: items[0]?.id ?? "" } });
      expect(await refusalOf(away)).toMatchObject({ codes: ["vessel_short"] });
      await move(kept, null, 4860);
    });

    test("S6 what a flight poured is not undone", async () => {
      await using house = await temporaryHouse(database);
      const evening = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { household } = evening;
      const { flight, hostToken, pourerToken } = await setFlight(evening, [0, 1]);
      const at = { household, flight: flight.id };
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      await house.client("revealFlight", { at, token: hostToken, body: { closeOpenSheets: true } });
      const { items } = await house.client("listTransfers", { at: { household } });
      expect(items[0]?.flightId).toBe(flight.id);
      const undo = house.client("undoTransfer", { at: { household, transfer: items[0]?.id ?? "" } });
      expect(await refusalOf(undo)).toMatchObject({ status: 409, codes: ["undo_of_flight"] });
    });

    test("the ledger lists newest first, page by page, by vessel", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const bottle = await pantry.bottle(await pantry.whiskey("Harbour Rye", 50));
      for (let i = 1; i <= 5; i += 1) await pantry.pour(bottle, "glass", i);
      const page = await house.client("listTransfers", { at: pantry.at, query: { limit: 4 } });
      expect(page.items.map(({ amount }) => amount)).toMatchObject([
        { ml: 5 },
        { ml: 4 },
        { ml: 3 },
        { ml: 2 },
      ]);
      const rest = await house.client("listTransfers", {
        at: pantry.at,
        query: { limit: 4, cursor: page.next ?? "" },
      });
      expect(rest.items.map(({ amount }) => amount)).toMatchObject([{ ml: 1 }, { ml: 700 }]);
      expect(rest.next).toBeNull();
      const bad = house.client("listTransfers", { at: pantry.at, query: { cursor: "x" } });
      expect(await refusalOf(bad)).toMatchObject({ status: 422, codes: ["cursor_unreadable"] });
    });
  });
});
