import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { openPantry, slotOf } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`recipes (${database})`, () => {
    test("R1 parts stay as written", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const malt = await pantry.whiskey("Quay Malt", 46);
      const recipe = await pantry.recipe("Lamplighter", [
        [4, rye],
        [2, malt],
      ]);
      expect(recipe).toMatchObject({ version: 1, latest: { number: 1, restDays: null, waterTo: null } });
      expect(recipe.latest.slots.map(({ parts }) => parts)).toEqual([4, 2]);
      const at = { household: pantry.household, recipe: recipe.id };
      expect(await house.client("getRecipe", { at })).toEqual(recipe);
    });

    test("R1 parts that are all zero are refused, and nothing is kept", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const no = await refusalOf(pantry.recipe("Nothing", [[0, rye]]));
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "parts_all_zero", path: ["slots"], received: 0 }],
      });
      expect((await house.client("listRecipes", { at: pantry.at })).items).toEqual([]);
    });

    test("R1 the same whiskey in two slots is refused at the second", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const no = await refusalOf(
        pantry.recipe("Twice", [
          [1, rye],
          [2, rye],
        ]),
      );
      expect(no.issues).toMatchObject([
        { code: "slot_repeated", path: ["slots", 1, "of", "whiskeyId"], received: rye.id },
      ]);
    });

    test("R1 parts are whole, and water to nothing is refused", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      expect((await refusalOf(pantry.recipe("Half", [[0.5, rye]]))).issues[0]?.path).toEqual([
        "slots",
        0,
        "parts",
      ]);
      const dry = pantry.recipe("Dry", [[1, rye]], { waterTo: { basis: "abv20", value: 0 } });
      expect(await refusalOf(dry)).toMatchObject({
        issues: [{ code: "water_to_zero", path: ["waterTo", "value"] }],
      });
      const raised = pantry.recipe("High", [[1, rye]], { waterTo: { basis: "abv20", value: 101 } });
      expect((await refusalOf(raised)).issues[0]).toMatchObject({
        path: ["waterTo", "value"],
        received: 101,
      });
    });

    test("R2 a change of parts is a new version; the old ones never change", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const malt = await pantry.whiskey("Quay Malt", 46);
      const { id } = await pantry.recipe("Lamplighter", [[1, rye]]);
      const at = { household: pantry.household, recipe: id };
      const second = await house.client("addRecipeVersion", {
        at,
        body: {
          version: 1,
          slots: [slotOf([2, rye]), slotOf([1, malt])],
          restDays: 21,
          oak: "One stave, light.",
        },
      });
      expect(second).toMatchObject({
        version: 2,
        latest: { number: 2, restDays: 21, oak: "One stave, light." },
      });
      const renamed = await house.client("editRecipe", {
        at,
        body: { version: 2, name: "Lamp", targetWhiskeyId: malt.id },
      });
      expect(renamed).toMatchObject({
        version: 3,
        name: "Lamp",
        targetWhiskeyId: malt.id,
        latest: { number: 2 },
      });
      const { items } = await house.client("listRecipeVersions", { at });
      expect(items.map(({ number, slots }) => [number, slots.length])).toEqual([
        [2, 2],
        [1, 1],
      ]);
      const paged = await house.client("listRecipeVersions", { at, query: { limit: 1 } });
      const rest = await house.client("listRecipeVersions", {
        at,
        query: { limit: 1, cursor: paged.next ?? "" },
      });
      expect([...paged.items, ...rest.items].map(({ number }) => number)).toEqual([2, 1]);
      const list = await house.client("listRecipes", { at: pantry.at });
      expect(list.items).toEqual([renamed]);
    });

    test("S8 a new version of a recipe that has changed since is refused", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      const { id } = await pantry.recipe("Lamplighter", [[1, rye]]);
      const at = { household: pantry.household, recipe: id };
      const add = () =>
        house.client("addRecipeVersion", { at, body: { version: 1, slots: [slotOf([3, rye])] } });
      await add();
      expect(await refusalOf(add())).toMatchObject({ status: 409, codes: ["stale_edit"] });
      expect((await house.client("listRecipeVersions", { at })).items).toHaveLength(2);
    });

    test("the preview is what a vessel so poured would hold", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const grains = [{ grain: "rye", percent: 100 }];
      const rye = await pantry.whiskey("Harbour Rye", 60, { ageYears: 6, grains, priceMinor: 7000 });
      const malt = await pantry.whiskey("Quay Malt", 46, { ageYears: 10, priceMinor: 3500 });
      const slots = [slotOf([2, rye]), slotOf([1, malt])];
      const preview = await house.client("previewRecipe", { at: pantry.at, body: { slots, pouredMl: 300 } });
      const jug = await pantry.vessel("Jug", 1000);
      await pantry.pour(await pantry.bottle(rye), jug, 200);
      await pantry.pour(await pantry.bottle(malt), jug, 100);
      const { contents } = await pantry.held(jug);
      expect(preview.result.volumeMl).toBeCloseTo(contents.volumeMl, 9);
      expect(preview.result.abv20).toBeCloseTo(contents.abv20 ?? 0, 9);
      expect(preview.result.cost.knownMinor).toBeCloseTo(contents.cost.knownMinor, 6);
      expect(preview.result.cost.knownMinor).toBeCloseTo(2500, 6);
      expect(preview.result.youngestAge).toEqual({ years: 6, why: "stated by Saltreach Harbour Rye" });
      expect(preview.result.grainShares).toEqual([{ grain: "rye", share: expect.closeTo(0.7228, 3) }]);
      expect(preview.contractionMl).toBeCloseTo(300 - contents.volumeMl, 9);
      expect(preview).toMatchObject({ water: null, waterRefused: null });
    });

    test("the preview waters to a strength, and says why where water cannot", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 60);
      const ask = (value: number, basis: "abv20" | "proof60F" = "abv20") =>
        house.client("previewRecipe", {
          at: pantry.at,
          body: { slots: [slotOf([1, rye])], pouredMl: 700, waterTo: { basis, value } },
        });
      const watered = await ask(43);
      // OIML R 22: 700 mL of 60 % vol need 285.25 mL of water for 43 % vol, and come to 976.74 mL.
      expect(watered.water?.ml).toBeCloseTo(285.25, 1);
      expect(watered.result.volumeMl).toBeCloseTo(976.74, 1);
      expect(watered.result.abv20).toBeCloseTo(43, 9);
      expect((await ask(90, "proof60F")).result.proof60F).toBeCloseTo(90, 9);
      const same = await ask(60);
      expect(same.waterRefused).toBeNull();
      expect(same.water?.ml ?? 0).toBeCloseTo(0, 6);
      const raised = await ask(61);
      expect(raised.water).toBeNull();
      expect(raised.waterRefused).toBe(
        "water to a strength requires at most the mix's 60.00 % vol, got 61.00 % vol: water cannot raise it",
      );
    });

    test("a slot may be a batch: its vessel's contents as they are", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 60);
      const malt = await pantry.whiskey("Quay Malt", 40);
      const bottle = await pantry.bottle(rye);
      const recipe = await pantry.recipe("Base", [[1, rye]]);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "Base one",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [
            { from: { kind: "vessel", vesselId: bottle.id }, amount: { kind: "volume", ml: 200 } },
            { from: { kind: "water" }, amount: { kind: "volume", ml: 20 } },
          ],
        },
      });
      const slots = [slotOf([1, batch]), slotOf([1, malt])];
      const preview = await house.client("previewRecipe", { at: pantry.at, body: { slots } });
      expect(preview.result.composition.map(({ label }) => label)).toEqual([
        "Saltreach Harbour Rye",
        "Saltreach Quay Malt",
        "water",
      ]);
      const [of] = preview.result.composition;
      const halfRye = (batch.now.abv20 ?? 0) / ((batch.now.abv20 ?? 0) + 40);
      expect(of?.shareOfAlcohol).toBeCloseTo(halfRye, 9);
    });
  });
});
