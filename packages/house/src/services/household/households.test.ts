import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`households (${database})`, () => {
    test("are begun, read, renamed and listed", async () => {
      await using house = await temporaryHouse(database);
      const made = await house.client("addHousehold", { body: { name: "  Harbour Street " } });
      expect(made).toMatchObject({ name: "Harbour Street", currency: "USD", demo: false, version: 1 });
      const at = { household: made.id };
      expect(await house.client("getHousehold", { at })).toEqual(made);
      const renamed = await house.client("editHousehold", { at, body: { version: 1, currency: "GBP" } });
      expect(renamed).toMatchObject({ name: "Harbour Street", currency: "GBP", version: 2 });
      await house.client("addHousehold", { body: { name: "Quay" } });
      const first = await house.client("listHouseholds", { query: { limit: 1 } });
      const second = await house.client("listHouseholds", { query: { limit: 1, cursor: first.next ?? "" } });
      expect([...first.items, ...second.items].map(({ name }) => name).toSorted()).toEqual([
        "Harbour Street",
        "Quay",
      ]);
      expect(second.next).toBeNull();
    });

    test("I4 prices are of one currency: it cannot change while any is kept, of a whiskey or a bottle", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const pantry = await openPantry(client);
      const at = { household: pantry.household };
      const { currency, version } = await client("getHousehold", { at });
      const change = (to: string) => client("editHousehold", { at, body: { version, currency: to } });
      const priced = await pantry.whiskey("Harbour Rye", 50, { priceMinor: 4000 });
      expect(await refusalOf(change("CHF"))).toMatchObject({ status: 409, codes: ["currency_in_use"] });
      // The one it has already is no change.
      expect((await change(currency)).currency).toBe(currency);
      const now = (await client("getHousehold", { at })).version;
      const edit = { ...at, whiskey: priced.id };
      await client("editWhiskey", { at: edit, body: { version: 1, priceMinor: null } });
      const free = await client("editHousehold", { at, body: { version: now, currency: "CHF" } });
      expect(free.currency).toBe("CHF");
    });

    test("S8 a stale rename is refused", async () => {
      await using house = await temporaryHouse(database);
      const { id } = await house.client("addHousehold", { body: { name: "Harbour Street" } });
      const edit = () =>
        house.client("editHousehold", { at: { household: id }, body: { version: 1, name: "Quay" } });
      await edit();
      expect(await refusalOf(edit())).toMatchObject({ status: 409, codes: ["stale_edit"] });
    });

    test("removing one needs its name, and takes all of its rows and no other's", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const other = await openPantry(house.client, "Quay");
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const bottle = await pantry.bottle(rye);
      const recipe = await pantry.recipe("Lamplighter", [[1, rye]]);
      await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "First",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [{ from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 100 } }],
        },
      });
      await other.bottle(await other.whiskey("Quay Malt", 46));
      const wrong = house.client("removeHousehold", { at: pantry.at, query: { confirm: "Quay" } });
      expect(await refusalOf(wrong)).toMatchObject({
        status: 422,
        issues: [{ code: "confirm_wrong", path: ["confirm"], received: "Quay" }],
      });
      await house.client("removeHousehold", { at: pantry.at, query: { confirm: "Harbour Street" } });
      expect(await refusalOf(house.client("getHousehold", { at: pantry.at }))).toMatchObject({ status: 404 });
      expect((await house.client("listVessels", { at: other.at })).items).toHaveLength(1);
    });
  });
});
