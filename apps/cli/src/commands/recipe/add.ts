import { findRecipe, findWhiskey } from "../../door/index.ts";
import { needed, one, readText } from "../../flags/index.ts";
import { printRecipe } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";
import { bodyFlags, typedBody } from "./typed-body.ts";

export const recipeAdd = householdCommand({
  name: "recipe add",
  says: "Write a recipe in parts.",
  flags: {
    name: needed(readText("name"), "<name>", "what it is called"),
    ...bodyFlags,
    target: one(readText("target"), "<whiskey>", "the whiskey it tries to come close to: id or name"),
  },
  example:
    'recipe add --name "Two to one" --slot 2@"Dunnage Row Barn Door" --slot 1@"Ninepenny Mill Sweet Sack" --rest 21',
  places: { slots: "slot", waterTo: "water-to", restDays: "rest", targetWhiskeyId: "target" },
  run: async ({ flags }, here) => {
    const body = await typedBody(here, flags, null);
    const target = flags.target === undefined ? null : await findWhiskey(here, flags.target, ["target"]);
    const recipe = await here.client("addRecipe", {
      at: { household: here.household.id },
      body: { name: flags.name, targetWhiskeyId: target?.id ?? null, ...body },
    });
    const labels = await slotLabels(here);
    return { json: recipe, text: () => printRecipe(recipe, labels) };
  },
});

export const recipeRevise = householdCommand({
  name: "recipe revise",
  says: "A new version of its parts. What is not given stays as it is; the old versions stay too.",
  args: { recipe: "id or name" },
  flags: bodyFlags,
  example: 'recipe revise "Two to one" --slot 3@"Dunnage Row Barn Door" --slot 1@"Ninepenny Mill Sweet Sack"',
  places: { slots: "slot", waterTo: "water-to", restDays: "rest", targetWhiskeyId: "target" },
  run: async ({ args, flags }, here) => {
    const { id, version, latest } = await findRecipe(here, args.recipe, ["recipe"]);
    const { slots, waterTo, restDays, oak, note } = latest;
    const body = await typedBody(here, flags, { slots, waterTo, restDays, oak, note });
    const recipe = await here.client("addRecipeVersion", {
      at: { household: here.household.id, recipe: id },
      body: { version, ...body, ...(latest.lineage === undefined ? {} : { lineage: latest.lineage }) },
    });
    const labels = await slotLabels(here);
    return { json: recipe, text: () => printRecipe(recipe, labels) };
  },
});
