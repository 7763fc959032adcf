import { everyItem, findRecipe } from "../../door/index.ts";
import { printRecipe, printVersions } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";

export const recipeShow = householdCommand({
  name: "recipe show",
  says: "One recipe in its latest version.",
  args: { recipe: "id or name" },
  flags: {},
  example: 'recipe show "Two to one"',
  run: async ({ args }, here) => {
    const recipe = await findRecipe(here, args.recipe, ["recipe"]);
    const labels = await slotLabels(here);
    return { json: recipe, text: () => printRecipe(recipe, labels) };
  },
});

export const recipeHistory = householdCommand({
  name: "recipe history",
  says: "All versions of a recipe, newest first.",
  args: { recipe: "id or name" },
  flags: {},
  example: 'recipe history "Two to one"',
  run: async ({ args }, here) => {
    const { id } = await findRecipe(here, args.recipe, ["recipe"]);
    const at = { household: here.household.id, recipe: id };
    const items = await everyItem(here.client, "listRecipeVersions", at);
    const labels = await slotLabels(here);
    return { json: { items, next: null }, text: () => printVersions(items, labels) };
  },
});
