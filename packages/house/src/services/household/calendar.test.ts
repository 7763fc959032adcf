import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`the calendar (${database})`, () => {
    test("a resting batch stands on the day its rest ends, by the clock of the zone asked for", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November, first",
          recipeId: recipe.id,
          restDays: 14,
          vessel: { kind: "new", label: "Flask", capacityMl: 700 },
          pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 300 } }],
        },
      });
      const days = await Promise.all(
        ["UTC", "Pacific/Kiritimati"].map(async (zone) => {
          const { text, events } = await house.client("getCalendar", { at: pantry.at, query: { zone } });
          expect(events).toBe(1);
          const [event] = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
          const read = new ICAL.Event(event);
          expect(read.summary).toBe("November, first has rested its 14 days");
          expect(read.startDate.isDate).toBe(true);
          return read.startDate.toString();
        }),
      );
      const due = Date.parse(batch.restDueAt ?? "");
      // Kiritimati's clock is 14 hours ahead all year.
      expect(days).toEqual(
        [0, 14].map((hours) => new Date(due + hours * 3_600_000).toISOString().slice(0, 10)),
      );
      await house.client("editBatch", {
        at: { ...pantry.at, batch: batch.id },
        body: { version: batch.version, finished: true },
      });
      expect((await house.client("getCalendar", { at: pantry.at, query: {} })).events).toBe(0);
    });

    test("a zone nobody knows is refused", async () => {
      await using house = await temporaryHouse(database);
      const { at } = await openPantry(house.client);
      const refused = await refusalOf(
        house.client("getCalendar", { at, query: { zone: "Europe/Saltreach" } }),
      );
      expect(refused.issues[0]?.path).toEqual(["zone"]);
    });
  });
});
