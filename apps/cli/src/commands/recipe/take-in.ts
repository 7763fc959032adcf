import type { BodyOf, RecipeTakeInPreview } from "@partsproof/house/protocol";
import { readJsonFile } from "../../files/index.ts";
import { yes } from "../../flags/index.ts";
import { printRecipe } from "../../print/recipe.ts";
import { householdCommand } from "../command.ts";
import { slotLabels } from "./labels.ts";

export const recipeTakeIn = householdCommand({
  name: "recipe take-in",
  says: "What a recipe file would add; with --yes it is added. No whiskey and no bottle is.",
  args: { file: "a recipe file: docs/recipe-file.md" },
  flags: {
    yes: yes("take it in; else it is only looked at"),
    again: yes("also where this very file is here already"),
  },
  places: { recipe: "file" },
  example: "recipe take-in saltreach-recipe.json",
  run: async ({ args, flags }, here) => {
    const at = { household: here.household.id };
    const recipe = (await readJsonFile(args.file, ["file"])) as NonNullable<
      BodyOf<"previewTakeIn">
    >["recipe"];
    const seen = await here.client("previewTakeIn", { at, body: { recipe } });
    if (!flags.yes) return { json: seen, text: () => printSeen(seen) };
    const body = { recipe, sha256: seen.sha256, again: flags.again };
    const taken = await here.client("takeInRecipe", { at, body });
    const labels = await slotLabels(here);
    return { json: taken, text: () => printRecipe(taken, labels) };
  },
});

const printSeen = (seen: RecipeTakeInPreview): string =>
  [
    `${seen.name}: one recipe would be added, nothing else`,
    ...seen.slots.map(({ slot, parts, named, rule, here }) => {
      const what = named ?? "anything that keeps the rule";
      const where = here === null ? (named === null ? "open" : "not here: open") : `here as ${here.label}`;
      return `  ${slot}  ${parts} of ${what} (${where})${rule === null ? "" : `; ${named === null ? "" : "or: "}${rule}`}`;
    }),
    ...(seen.lineage.length > 0 ? [`From ${seen.lineage.map(({ name }) => name).join(", ")}`] : []),
    ...(seen.credits.length > 0 ? [`Thanks to ${seen.credits.join(", ")}`] : []),
    ...(seen.unknownFields.length > 0
      ? [`Kept, though not known here: ${seen.unknownFields.join(", ")}`]
      : []),
    ...(seen.already === null ? [] : [`It is here already, as ${seen.already.name}`]),
    `SHA-256  ${seen.sha256}`,
    "Nothing is kept yet: --yes takes it in.",
  ].join("\n");
