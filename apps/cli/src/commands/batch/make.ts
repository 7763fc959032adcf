import { findRecipe } from "../../door/index.ts";
import { needed, one, readVolume, readWhole } from "../../flags/index.ts";
import { printMake } from "../../print/batch-make.ts";
import { householdCommand } from "../command.ts";
import { planFlags } from "./plan.ts";

export const batchMake = householdCommand({
  name: "batch make",
  says: "The largest batch that the shelf and the vessels allow, what it leaves, what it costs. Nothing is moved.",
  flags: {
    ...planFlags,
    vessel: needed(readVolume, "<volume>", "what a vessel holds to the brim"),
    head: one(readVolume, "<volume>", "that stays empty in each, none where left out"),
    vessels: one(readWhole("vessels", 1, 100), "<number>", "how many, 1 where left out"),
    "pour-size": one(readVolume, "<volume>", "of which a pour's cost is told, 30 mL where left out"),
  },
  example: 'batch make --recipe "Two to one" --vessel 750ml --head 10ml',
  places: {
    recipeId: "recipe",
    recipeNumber: "number",
    vesselMl: "vessel",
    headMl: "head",
    pourMl: "pour-size",
  },
  run: async ({ flags }, here) => {
    const { id } = await findRecipe(here, flags.recipe, ["recipe"]);
    const { number, vessel, head, vessels, "pour-size": pour } = flags;
    const made = await here.client("makeBatch", {
      at: { household: here.household.id },
      body: {
        recipeId: id,
        vesselMl: vessel,
        ...(number === undefined ? {} : { recipeNumber: number }),
        ...(head === undefined ? {} : { headMl: head }),
        ...(vessels === undefined ? {} : { vessels }),
        ...(pour === undefined ? {} : { pourMl: pour }),
      },
    });
    return { json: made, text: () => printMake(made, here.household.currency) };
  },
});
