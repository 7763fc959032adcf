import { findRecipe } from "../../door/index.ts";
import { issueAt, needed, one, onlyOne, readText, readWhole, refuse, yes } from "../../flags/index.ts";
import { printRecipe } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";

export const recipeRule = householdCommand({
  name: "recipe rule",
  says: "What any other whiskey in a line must keep, and why it stands there; a new version of the recipe.",
  args: { recipe: "id or name" },
  flags: {
    line: needed(readWhole("line", 1, 12), "<1 to 12>", "which line, from 1"),
    rule: one(readText("rule"), "<rule>", "docs/slots.md"),
    "no-rule": yes("only the whiskey itself"),
    reason: one(readText("reason"), "<text>", "why it stands there"),
    open: yes("name no whiskey: anything that keeps the rule"),
  },
  places: { slots: "line" },
  example: 'recipe rule "Two to one" --line 1 --rule "50 % or stronger, only American oak" --reason weight',
  run: async ({ args, flags }, here) => {
    if (flags.rule !== undefined && flags["no-rule"]) onlyOne({ rule: flags.rule, "no-rule": "given" });
    const { id, version, latest } = await findRecipe(here, args.recipe, ["recipe"]);
    const slot = latest.slots[flags.line - 1];
    if (slot === undefined)
      return refuse(issueAt(["line"], "line_unknown", `a line of 1 to ${latest.slots.length}`, flags.line));
    const { rule: before, ...bare } = slot;
    const rule = flags["no-rule"] ? undefined : (flags.rule ?? before);
    const changed = {
      ...bare,
      ...(rule === undefined ? {} : { rule }),
      ...(flags.reason === undefined ? {} : { reason: flags.reason }),
      ...(flags.open ? { of: { kind: "open" as const, named: null } } : {}),
    };
    const { number: _, createdAt: __, ...body } = latest;
    const recipe = await here.client("addRecipeVersion", {
      at: { household: here.household.id, recipe: id },
      body: { version, ...body, slots: latest.slots.with(flags.line - 1, changed) },
    });
    const labels = await slotLabels(here);
    return { json: recipe, text: () => printRecipe(recipe, labels) };
  },
});
