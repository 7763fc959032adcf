import type { BatchPlan } from "@partsproof/house/protocol";
import { type AtHousehold, findRecipe } from "../../door/index.ts";
import { needed, one, readText, readVolume, readWhole } from "../../flags/index.ts";
import { printPlan } from "../../print/batch.ts";
import { householdCommand } from "../command.ts";

export const planFlags = {
  recipe: needed(readText("recipe"), "<recipe>", "id or name"),
  number: one(readWhole("number", 1, 1_000_000), "<version>", "an older version of it; else the latest"),
};

export const batchPlan = householdCommand({
  name: "batch plan",
  says: "What to pour so that a volume results, contraction and water counted. Nothing is moved.",
  flags: { ...planFlags, final: needed(readVolume, "<volume>", "what is to come out, at 20 °C") },
  example: 'batch plan --recipe "Two to one" --final 500ml',
  places: { recipeId: "recipe", recipeNumber: "number", finalMl: "final" },
  run: async ({ flags }, here) => {
    const { id } = await findRecipe(here, flags.recipe, ["recipe"]);
    const plan = await planned(here, id, flags.number, flags.final);
    return { json: plan, text: () => printPlan(plan, here.household.currency) };
  },
});

export const planned = (
  { client, household }: AtHousehold,
  recipeId: string,
  recipeNumber: number | undefined,
  finalMl: number,
): Promise<BatchPlan> =>
  client("planBatch", {
    at: { household: household.id },
    body: { recipeId, finalMl, ...(recipeNumber === undefined ? {} : { recipeNumber }) },
  });
