import { findRecipe } from "../../door/index.ts";
import { printLineage } from "../../print/lineage.ts";
import { householdCommand } from "../command.ts";

export const recipeTree = householdCommand({
  name: "recipe tree",
  says: "Which version and batch came from which, what changed, and what it did in flights.",
  maybe: { recipe: "id or name: only it, what it comes from and what it goes into" },
  flags: {},
  example: 'recipe tree "Two to one"',
  run: async ({ args }, here) => {
    const at = { household: here.household.id };
    const only = args.recipe === undefined ? null : await findRecipe(here, args.recipe, ["recipe"]);
    const json = await here.client("getLineage", { at, query: only === null ? {} : { recipe: only.id } });
    return { json, text: () => printLineage(json) };
  },
});
