import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { BodyOf } from "../../protocol/index.ts";
import { eveningShelf } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`lineage (${database})`, () => {
    test("T1, T2, T4 versions, what they changed, what was made of them and what that went into", async () => {
      await using house = await temporaryHouse(database);
      const { household, whiskeyIds, vesselIds } = await eveningShelf(house.client, {
        whiskeys: 3,
        tasters: 1,
      });
      const at = { household };
      const slot = (parts: number, i: number) => ({
        parts,
        of: { kind: "whiskey" as const, whiskeyId: whiskeyIds[i] ?? "" },
      });
      const recipe = await house.client("addRecipe", {
        at,
        body: { name: "Two to one", slots: [slot(2, 0), slot(1, 1)] },
      });
      const versions = (version: number, body: Omit<NonNullable<BodyOf<"addRecipeVersion">>, "version">) =>
        house.client("addRecipeVersion", {
          at: { ...at, recipe: recipe.id },
          body: { version, ...body },
        });
      // The same shares in other parts, then other shares, water and a rest.
      await versions(1, { slots: [slot(4, 0), slot(2, 1)] });
      await versions(2, {
        slots: [slot(1, 0), slot(1, 2)],
        waterTo: { basis: "abv20", value: 40 },
        restDays: 14,
      });
      const batch = await house.client("addBatch", {
        at,
        body: {
          name: "First try",
          recipeId: recipe.id,
          recipeNumber: 3,
          vessel: { kind: "new", label: "Flask", capacityMl: 200 },
          pours: [
            { from: { kind: "vessel", vesselId: vesselIds[0] ?? "" }, amount: { kind: "volume", ml: 100 } },
          ],
        },
      });
      house.clock.advance({ hours: 1 });
      const other = await house.client("addRecipe", {
        at,
        body: {
          name: "Blend of a blend",
          slots: [{ parts: 1, of: { kind: "batch", batchId: batch.id } }, slot(1, 1)],
        },
      });
      house.clock.advance({ hours: 1 });
      await house.client("addRecipe", { at, body: { name: "Alone", slots: [slot(1, 1)] } });

      const { recipes } = await house.client("getLineage", { at });
      expect(recipes.map(({ name }) => name)).toEqual(["Two to one", "Blend of a blend", "Alone"]);
      const [first, second, third] = recipes[0]?.versions ?? [];
      expect([first?.changes, second?.changes]).toEqual([[], []]);
      expect(third?.changes).toEqual([
        expect.objectContaining({
          what: "slot",
          partsBefore: 4,
          partsNow: 1,
          shareBefore: 2 / 3,
          shareNow: 0.5,
        }),
        expect.objectContaining({ what: "slot", partsBefore: null, partsNow: 1, shareNow: 0.5 }),
        expect.objectContaining({ what: "slot", partsBefore: 2, partsNow: null, shareNow: 0 }),
        { what: "water", before: null, now: { basis: "abv20", value: 40 } },
        { what: "rest", before: null, now: 14 },
      ]);
      expect(third?.batches).toEqual([
        {
          batchId: batch.id,
          name: "First try",
          madeAt: batch.madeAt,
          state: "resting",
          ml: expect.closeTo(100, 9),
          abv20: expect.closeTo(40, 9),
          leftMl: expect.closeTo(100, 9),
          usedIn: [{ recipeId: other.id, name: "Blend of a blend", number: 1 }],
          flights: [],
        },
      ]);
      for (const kin of [recipe.id, other.id]) {
        const only = await house.client("getLineage", { at, query: { recipe: kin } });
        expect(only.recipes.map(({ name }) => name)).toEqual(["Two to one", "Blend of a blend"]);
      }
      const unknown = house.client("getLineage", { at, query: { recipe: batch.id } });
      expect((await refusalOf(unknown)).codes).toEqual(["unknown_recipe"]);
    });
  });
});
