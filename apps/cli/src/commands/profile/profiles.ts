import { findFlight, findRecipe, findWhiskey } from "../../door/index.ts";
import { printMixing } from "../../print/mixing.ts";
import { printLearned, printPalate } from "../../print/palate.ts";
import { printBoard } from "../../print/profile.ts";
import { householdCommand } from "../command.ts";

export const profileRecipe = householdCommand({
  name: "profile recipe",
  says: "What a recipe's parts predict, and what its batches were observed to be.",
  args: { recipe: "id or name" },
  flags: {},
  example: 'profile recipe "Two to one"',
  run: async ({ args }, here) => {
    const { id } = await findRecipe(here, args.recipe, ["recipe"]);
    const board = await here.client("getRecipeProfile", { at: { household: here.household.id, recipe: id } });
    return { json: board, text: () => printBoard(board) };
  },
});

export const profileWhiskey = householdCommand({
  name: "profile whiskey",
  says: "What a whiskey tastes of: as the shelf has it, and as it was observed.",
  args: { whiskey: "id or name" },
  flags: {},
  example: 'profile whiskey "Gull Stair"',
  run: async ({ args }, here) => {
    const { id } = await findWhiskey(here, args.whiskey, ["whiskey"]);
    const at = { household: here.household.id, whiskey: id };
    const board = await here.client("getWhiskeyProfile", { at });
    return { json: board, text: () => printBoard(board) };
  },
});

export const profileFlight = householdCommand({
  name: "profile flight",
  says: "What each name in a revealed flight was observed to be, against what was predicted.",
  args: { flight: "id or name" },
  flags: {},
  example: 'profile flight "Sunday, blind"',
  run: async ({ args }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const board = await here.client("getFlightProfiles", {
      at: { household: here.household.id, flight: id },
    });
    return { json: board, text: () => printBoard(board) };
  },
});

export const profileMixing = householdCommand({
  name: "profile mixing",
  says: "What mixing does, attribute by attribute: the mean of the parts, a power law, or the strongest part.",
  args: {},
  flags: {},
  example: "profile mixing",
  run: async (_, here) => {
    const board = await here.client("getMixing", { at: { household: here.household.id } });
    return { json: board, text: () => printMixing(board) };
  },
});

export const profileLearned = householdCommand({
  name: "profile learned",
  says: "What a whiskey tastes of to you: learned from its label, notes of it, and notes of mixes that held it.",
  args: { whiskey: "id or name" },
  flags: {},
  example: 'profile learned "Barn Door"',
  run: async ({ args }, here) => {
    const { id } = await findWhiskey(here, args.whiskey, ["whiskey"]);
    const profile = await here.client("getLearnedProfile", {
      at: { household: here.household.id, whiskey: id },
    });
    return { json: profile, text: () => printLearned(profile) };
  },
});

export const profileNext = householdCommand({
  name: "profile next",
  says: "What to taste next, so that most is learned of what is on the shelf; how each taster uses the scale.",
  args: {},
  flags: {},
  example: "profile next",
  run: async (_, here) => {
    const board = await here.client("getPalate", { at: { household: here.household.id } });
    return { json: board, text: () => printPalate(board) };
  },
});
