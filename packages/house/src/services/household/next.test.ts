import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { openPantry } from "../fixtures/pantry.ts";

eachDatabase((database) => {
  describe(`what is next (${database})`, () => {
    test("a new household is led from the shelf to a recipe to a batch", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const kinds = async () => (await house.client("next", { at: pantry.at })).items.map(({ kind }) => kind);
      expect((await house.client("next", { at: pantry.at })).items).toEqual([
        {
          kind: "empty shelf",
          text: "Put a bottle on the shelf",
          at: null,
          subject: { kind: "shelf", id: null },
        },
      ]);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      expect(await kinds()).toEqual(["no recipe"]);
      const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
      expect(await kinds()).toEqual(["no batch"]);
      await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 700 },
          pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 590 } }],
        },
      });
      expect(await kinds()).toEqual(["batch rested"]);
      await pantry.pour(bottle, "glass", 10);
      expect((await house.client("next", { at: pantry.at })).items.at(-1)).toEqual({
        kind: "bottle low",
        text: "Saltreach Harbour Rye: 100 mL left",
        at: null,
        subject: { kind: "vessel", id: bottle.id },
      });
    });

    test("R5 batches that have rested come before those that rest, each with its day", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
      const make = (name: string, restDays: number) =>
        house.client("addBatch", {
          at: pantry.at,
          body: {
            name,
            recipeId: recipe.id,
            restDays,
            vessel: { kind: "new", label: name, capacityMl: 100 },
            pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 50 } }],
          },
        });
      await make("Long", 30);
      const short = await make("Short", 7);
      await make("Middle", 10);
      house.clock.advance({ days: 8 });
      expect((await house.client("next", { at: pantry.at })).items).toMatchObject([
        { kind: "batch rested", text: "Short has rested its 7 days", at: "2026-11-08T20:00:00.000Z" },
        { kind: "batch resting", text: "Middle rests its 10 days", at: "2026-11-11T20:00:00.000Z" },
        { kind: "batch resting", text: "Long rests its 30 days" },
      ]);
      const at = { ...pantry.at, batch: short.id };
      await house.client("editBatch", { at, body: { version: 1, finished: true } });
      expect((await house.client("next", { at: pantry.at })).items).toHaveLength(2);
    });

    test("a flight asks to be poured, its sheets to be locked, and itself to be revealed", async () => {
      await using house = await temporaryHouse(database);
      const evening = await eveningShelf(house.client, { whiskeys: 2, tasters: 2 });
      const { household } = evening;
      const flights = async () =>
        (await house.client("next", { at: { household } })).items.filter(
          ({ subject }) => subject.kind === "flight",
        );
      const { flight, pourerToken } = await setFlight(evening, [0, 1]);
      const at = { household, flight: flight.id };
      expect(await flights()).toMatchObject([{ kind: "flight to pour", text: "Pour Tuesday" }]);
      const [first, second] = await takeSheets(evening, flight.id);
      await house.client("markPoured", { at, token: pourerToken ?? "" });
      if (!first || !second) throw new Error("two sheets required");
      await lock(evening, first);
      expect(await flights()).toMatchObject([
        { kind: "sheet not locked", text: "Tuesday: not locked yet by Taster 2" },
      ]);
      await lock(evening, second);
      expect(await flights()).toMatchObject([{ kind: "flight not revealed", subject: { id: flight.id } }]);
      await house.client("revealFlight", { at, body: {} });
      expect(await flights()).toEqual([]);
    });

    test("F4 a flight tasted alone asks for the undersides after the lock", async () => {
      await using house = await temporaryHouse(database);
      const evening = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { household } = evening;
      const { flight } = await setFlight(evening, [0, 1], { pouring: "alone", pourer: null });
      const at = { household, flight: flight.id };
      const [taken] = await takeSheets(evening, flight.id);
      if (!taken) throw new Error("one sheet required");
      await house.client("markPoured", { at, token: taken.token });
      await lock(evening, taken);
      const kinds = async () =>
        (await house.client("next", { at: { household } })).items
          .filter(({ subject }) => subject.kind === "flight")
          .map(({ kind }) => kind);
      expect(await kinds()).toEqual(["undersides to enter"]);
      const marks = flight.marks.map(({ mark }, i) => ({ place: i + 1, mark }));
      await house.client("enterUndersides", { at, token: taken.token, body: { marks } });
      expect(await kinds()).toEqual(["flight not revealed"]);
    });
  });
});
