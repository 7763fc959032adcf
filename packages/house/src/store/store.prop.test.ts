import { eachDatabase, temporaryHouse, type TemporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Tables } from "../services/index.ts";
import { id, oneOfEach } from "./fixtures/rows.ts";

eachDatabase((database) => {
  describe(`values on ${database}`, () => {
    let house: TemporaryHouse;
    let number = 1;

    beforeAll(async () => {
      house = await temporaryHouse(database);
      await house.store.transaction((records) => records.insert("household", oneOfEach(1).household));
    });
    afterAll(() => house.close());

    const throughTheStore = async (change: Partial<Tables["whiskey"]>): Promise<Tables["whiskey"] | null> => {
      const row = { ...oneOfEach(1).whiskey, id: id("whiskey", ++number), ...change };
      await house.store.transaction((records) => records.insert("whiskey", row));
      return house.store.transaction((records) => records.find("whiskey", row.householdId, row.id));
    };

    it("every finite double comes back exactly, from its own column and from JSON", () =>
      fc.assert(
        fc.asyncProperty(
          fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
          async (value) => {
            const kept = await throughTheStore({ bottleMl: value, strength: { basis: "abv20", value } });
            expect(kept?.bottleMl).toBe(value);
            expect(kept?.strength.value).toBe(value);
          },
        ),
      ));

    it("all well-formed text but U+0000 comes back exactly, from its own column and from JSON", () =>
      fc.assert(
        fc.asyncProperty(fc.string({ unit: "binary", maxLength: 60 }), async (text) => {
          fc.pre(!text.includes("\0"));
          const kept = await throughTheStore({ note: text, casks: [{ species: "other wood", held: text }] });
          expect(kept?.note).toBe(text);
          expect(kept?.casks[0]?.held).toBe(text);
        }),
      ));

    it("what a database would change in silence is refused, and nothing kept", async () => {
      for (const change of [
        { ageYears: Number.NaN },
        { bottleMl: Number.POSITIVE_INFINITY },
        { priceMinor: 1.5 },
        { note: "half a pair \ud800" },
        { note: "a zero \0" },
        { strength: { basis: "abv20" as const, value: Number.NaN } },
      ]) {
        await expect(throughTheStore(change), JSON.stringify(change)).rejects.toThrow(/requires/);
        expect(
          await house.store.transaction((records) =>
            records.find("whiskey", id("household", 1), id("whiskey", number)),
          ),
        ).toBeNull();
      }
    });
  });
});
