import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`recipe files (${database})`, () => {
    test("a recipe of the house goes out as a file that the house reads, with rules and without notes", async () => {
      await using house = await temporaryHouse(database);
      const household = await house.client("addHousehold", { body: { name: "Invented", currency: "EUR" } });
      const at = { household: household.id };
      const add = (name: string, value: number, honey: number) =>
        house.client("addWhiskey", {
          at,
          body: {
            maker: "Saltreach",
            name,
            strength: { basis: "abv20", value },
            ageYears: 9,
            note: "mine alone",
            profile: { tastedAt: null, intensities: { "sweet.honey": honey, "smoke.smoke": null } },
          },
        });
      const [one, two] = [await add("Stair", 54, 6), await add("Loft", 60, 3)];
      const slots = [one, two].map(({ id }, n) => ({
        parts: 2 - n,
        of: { kind: "whiskey" as const, whiskeyId: id },
      }));
      const recipe = await house.client("addRecipe", {
        at,
        body: { name: "Two to one", slots, note: "for a friend", restDays: 21 },
      });
      const file = await house.client("exportRecipe", {
        at: { ...at, recipe: recipe.id },
        body: { rules: ["54% OR stronger", null], reasons: [null, "weight"] },
      });
      expect(file.slots).toEqual([
        {
          parts: 2,
          whiskey: { maker: "Saltreach", name: "Stair", abv: 54, ageYears: 9, profile: { "sweet.honey": 6 } },
          rule: "54 % or stronger",
        },
        {
          parts: 1,
          whiskey: { maker: "Saltreach", name: "Loft", abv: 60, ageYears: 9, profile: { "sweet.honey": 3 } },
          reason: "weight",
        },
      ]);
      expect(file).toMatchObject({ name: "Two to one", restDays: 21, original: { ageYears: 9 } });
      expect(file.original?.profile?.["sweet.honey"]).toBeCloseTo(5, 12);
      expect(JSON.stringify(file)).not.toMatch(/mine alone|for a friend/u);
      const checked = await house.client("checkRecipe", { body: file });
      expect(JSON.parse(checked.canonical)).toEqual(file);
      const wrong = await refusalOf(
        house.client("exportRecipe", { at: { ...at, recipe: recipe.id }, body: { rules: ["wheat"] } }),
      );
      expect(wrong.issues[0]?.path).toEqual(["rules", 0]);
    });
  });
});
