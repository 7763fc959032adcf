import { findRecipe } from "../../door/index.ts";
import { one, readVolume } from "../../flags/index.ts";
import { printPreview } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { bodyFlags, typedBody } from "./typed-body.ts";

export const recipePreview = householdCommand({
  name: "recipe preview",
  says: "What a recipe, or parts that are not written down yet, would give. Nothing is kept.",
  maybe: { recipe: "id or name; else --slot tells the parts" },
  flags: {
    ...bodyFlags,
    volume: one(readVolume, "<volume>", "poured before contraction and water; else 100 ml"),
  },
  example: 'recipe preview "Two to one" --volume 750ml',
  places: {
    slots: "slot",
    waterTo: "water-to",
    restDays: "rest",
    targetWhiskeyId: "target",
    pouredMl: "volume",
  },
  run: async ({ args, flags }, here) => {
    const recipe = args.recipe === undefined ? null : await findRecipe(here, args.recipe, ["recipe"]);
    const body = await typedBody(here, flags, recipe?.latest ?? null);
    const preview = await here.client("previewRecipe", {
      at: { household: here.household.id },
      body: { ...body, ...(flags.volume === undefined ? {} : { pouredMl: flags.volume }) },
    });
    return { json: preview, text: () => printPreview(preview, here.household.currency) };
  },
});
