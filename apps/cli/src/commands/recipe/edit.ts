import { findRecipe, findWhiskey } from "../../door/index.ts";
import { issueAt, one, readText, refuse, yes } from "../../flags/index.ts";
import { printRecipe } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";

export const recipeEdit = householdCommand({
  name: "recipe edit",
  says: "Its name, or what it is to come close to. Other parts are a new version: recipe revise.",
  args: { recipe: "id or name" },
  flags: {
    name: one(readText("name"), "<name>", "what it is called from now on"),
    target: one(readText("target"), "<whiskey>", "id or name of what it is to come close to"),
    "no-target": yes("it is to come close to nothing"),
  },
  example: 'recipe edit "Two to one" --name "Three to one"',
  places: { targetWhiskeyId: "target" },
  run: async ({ args, flags }, here) => {
    const { name, target } = flags;
    const none = flags["no-target"];
    if (name === undefined && target === undefined && !none)
      refuse(issueAt([], "flag_missing", "one of --name, --target and --no-target", null));
    if (target !== undefined && none)
      refuse(issueAt(["no-target"], "flags_exclude", "one of --target and --no-target", "both"));
    const { id, version } = await findRecipe(here, args.recipe, ["recipe"]);
    const targetWhiskeyId = none
      ? null
      : target === undefined
        ? undefined
        : (await findWhiskey(here, target, ["target"])).id;
    const recipe = await here.client("editRecipe", {
      at: { household: here.household.id, recipe: id },
      body: {
        version,
        ...(name === undefined ? {} : { name }),
        ...(targetWhiskeyId === undefined ? {} : { targetWhiskeyId }),
      },
    });
    const labels = await slotLabels(here);
    return { json: recipe, text: () => printRecipe(recipe, labels) };
  },
});
