import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight } from "../fixtures/evening.ts";
import { openPantry } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`whiskeys (${database})`, () => {
    test("a strength is given back on its own basis and reckoned on the other", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const forty = await pantry.whiskey("Quay Malt", 40);
      // US Gauging Manual and OIML R 22: 40 % vol at 20 °C is 39.931 % at 60 °F, 79.86 proof.
      expect(forty).toMatchObject({ strength: { basis: "abv20", value: 40 } });
      expect(forty.abv20).toBeCloseTo(40, 9);
      expect(forty.proof60F).toBeCloseTo(79.86, 2);
    });

    test.each([
      [100.1, "strength_too_large", "at most 100 % vol"],
      [-0.1, "strength_too_small", "at least 0"],
      [0, "strength_zero", "more than 0"],
    ])("a strength of %d %% vol is refused: %s", async (value, code, limit) => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const no = await refusalOf(pantry.whiskey("Breaker", value));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code, path: ["strength", "value"], limit, received: value }],
      });
      expect((await house.client("listWhiskeys", { at: pantry.at })).items).toEqual([]);
    });

    test("a proof above 200 is refused with its own limit", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const no = await refusalOf(
        pantry.whiskey("Breaker", 1, { strength: { basis: "proof60F", value: 201 } }),
      );
      expect(no.issues).toMatchObject([
        {
          code: "strength_too_large",
          path: ["strength", "value"],
          limit: "at most 200 proof",
          received: 201,
        },
      ]);
    });

    test("grain shares add up to 100 within a rounding", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const grains = (...percents: number[]) =>
        percents.map((percent, i) => ({ grain: `grain ${i}`, percent }));
      const no = await refusalOf(pantry.whiskey("Breaker", 50, { grains: grains(60, 39) }));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "grains_not_100", path: ["grains"], received: 99 }],
      });
      const thirds = await pantry.whiskey("Thirds", 50, { grains: grains(33.3, 33.3, 33.3) });
      const { contents } = await pantry.bottle(thirds);
      expect(contents.unknownGrainShare).toBeCloseTo(0, 12);
      expect(contents.grainShares.map(({ share }) => share)).toEqual([
        expect.closeTo(1 / 3, 9),
        expect.closeTo(1 / 3, 9),
        expect.closeTo(1 / 3, 9),
      ]);
      const edit = house.client("editWhiskey", {
        at: { household: pantry.household, whiskey: thirds.id },
        body: { version: 1, grains: grains(50) },
      });
      expect(await refusalOf(edit)).toMatchObject({ codes: ["grains_not_100"] });
    });

    test("an edit changes what it names and no more", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50, { ageYears: 6, priceMinor: 4000 });
      const edited = await house.client("editWhiskey", {
        at: { household: pantry.household, whiskey: rye.id },
        body: { version: 1, ageYears: null, availability: "gone" },
      });
      const { updatedAt: _, ...rest } = rye;
      expect(edited).toMatchObject({ ...rest, version: 2, ageYears: null, availability: "gone" });
    });

    test("a search finds words of maker, name and release without case, page by page", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      await pantry.whiskey("Harbour Rye", 50, { release: "Batch 7" });
      await pantry.whiskey("Harbour Malt", 46, { release: "Batch 8" });
      await pantry.whiskey("Quay Rye", 46, { maker: "Fennick" });
      const found = async (q: string) =>
        (await house.client("listWhiskeys", { at: pantry.at, query: { q } })).items.map(({ name }) => name);
      expect(await found("RYE")).toEqual(expect.arrayContaining(["Harbour Rye", "Quay Rye"]));
      expect(await found("salt batch")).toHaveLength(2);
      expect(await found("fennick rye")).toEqual(["Quay Rye"]);
      expect(await found("nothing like it")).toEqual([]);
      const one = await house.client("listWhiskeys", { at: pantry.at, query: { q: "harbour", limit: 1 } });
      const two = await house.client("listWhiskeys", {
        at: pantry.at,
        query: { q: "harbour", limit: 1, cursor: one.next ?? "" },
      });
      expect([...one.items, ...two.items].map(({ name }) => name).toSorted()).toEqual([
        "Harbour Malt",
        "Harbour Rye",
      ]);
      expect(two.next).toBeNull();
    });

    test("S7 a whiskey that a bottle, a recipe, an old version, a target or a flight uses is not removed", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const names = ["Bottled", "Slotted", "Once slotted", "Aimed at", "Free"];
      const [bottled, slotted, once, aimed, free] = await Promise.all(
        names.map((n) => pantry.whiskey(n, 50)),
      );
      if (!bottled || !slotted || !once || !aimed || !free) throw new Error("five whiskeys required");
      await pantry.bottle(bottled);
      const recipe = await pantry.recipe("Lamplighter", [[1, once]], { targetWhiskeyId: aimed.id });
      await house.client("addRecipeVersion", {
        at: { household: pantry.household, recipe: recipe.id },
        body: { version: 1, slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: slotted.id } }] },
      });
      const remove = (whiskey: string) =>
        house.client("removeWhiskey", {
          at: { household: pantry.household, whiskey },
          query: { version: 1 },
        });
      for (const [used, by] of [
        [bottled, "bottle Saltreach Bottled"],
        [slotted, "recipe Lamplighter"],
        [once, "recipe Lamplighter"],
        [aimed, "recipe Lamplighter"],
      ] as const) {
        expect(await refusalOf(remove(used.id))).toMatchObject({
          status: 409,
          issues: [{ code: "whiskey_in_use", received: [by] }],
        });
      }
      await remove(free.id);
      expect((await house.client("listWhiskeys", { at: pantry.at })).items).toHaveLength(4);
    });

    test("S7 a whiskey on offer in a flight is not removed", async () => {
      await using house = await temporaryHouse(database);
      const evening = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
      await setFlight(evening, [0, 1], { name: "Tuesday" });
      const at = { household: evening.household, whiskey: evening.whiskeyIds[0] ?? "" };
      const no = await refusalOf(house.client("removeWhiskey", { at, query: { version: 1 } }));
      expect(no.issues[0]?.received).toContain("flight Tuesday");
    });

    test("S8 a removal of another version than the present one is refused", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const at = { household: pantry.household, whiskey: rye.id };
      await house.client("editWhiskey", { at, body: { version: 1, note: "Dry." } });
      expect(await refusalOf(house.client("removeWhiskey", { at, query: { version: 1 } }))).toMatchObject({
        status: 409,
        codes: ["stale_edit"],
      });
    });
  });
});
