import { everyItem } from "../../door/index.ts";
import { printRecipes } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";

export const recipeList = householdCommand({
  name: "recipe list",
  says: "Recipes with their latest version.",
  flags: {},
  example: "recipe list",
  run: async (_given, here) => {
    const items = await everyItem(here.client, "listRecipes", { household: here.household.id });
    const labels = await slotLabels(here);
    return { json: { items, next: null }, text: () => printRecipes(items, labels) };
  },
});
