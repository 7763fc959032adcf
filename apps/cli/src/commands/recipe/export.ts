import { findRecipe } from "../../door/index.ts";
import { writeWhole } from "../../files/index.ts";
import { many, needed, readText, yes } from "../../flags/index.ts";
import { printJson } from "../../print/json.ts";
import { householdCommand } from "../command.ts";

export const recipeExport = householdCommand({
  name: "recipe export",
  says: "A recipe as a file that others can fill from their own shelf. No notes and no names unless asked for.",
  args: { recipe: "id or name" },
  flags: {
    to: needed(readText("to"), "<file>", "a file that is not there yet; - for standard output"),
    rule: many(
      readText("rule"),
      "<rule>",
      "what may stand in a slot, slot by slot: docs/slots.md; - for none",
    ),
    credit: many(readText("credit"), "<name>", "who is to be named"),
    "with-note": yes("the recipe's own note too"),
    "with-findings": yes("counts of its blind flights, here and of kitchens that sent a result"),
  },
  places: { rules: "rule", credits: "credit" },
  example: 'recipe export "Two to one" --to two-to-one.json --rule "50 % or stronger"',
  run: async ({ args, flags }, here) => {
    const { id, name } = await findRecipe(here, args.recipe, ["recipe"]);
    const at = { household: here.household.id, recipe: id };
    const { rule, credit, "with-note": withNote, "with-findings": withFindings } = flags;
    const body = {
      ...(rule.length === 0 ? {} : { rules: rule.map((text) => (text === "-" ? null : text)) }),
      ...(credit.length === 0 ? {} : { credits: [...credit] }),
      withNote,
      withFindings,
    };
    const file = await here.client("exportRecipe", { at, body });
    if (flags.to === "-") return { json: file, text: () => printJson(file) };
    const bytes = await writeWhole(flags.to, `${printJson(file)}\n`, ["to"]);
    return {
      json: { file: flags.to, bytes, recipe: name },
      text: () => `${name}: a recipe file, ${flags.to}`,
    };
  },
});
