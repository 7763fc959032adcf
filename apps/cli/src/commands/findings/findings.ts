import { type AtHousehold, findFlight, findRecipe, findTaster, findWhiskey } from "../../door/index.ts";
import {
  printLeague,
  printRecipeFinding,
  printTasterFinding,
  printWeighed,
  printWhiskeyFinding,
} from "../../print/evidence.ts";
import { householdCommand } from "../command.ts";

/** The demo is invented, and so is what its glasses said. */
const notesOf = ({ household }: AtHousehold): readonly string[] =>
  household.demo ? ["Invented: the demo household and all its sheets."] : [];

export const findingsFlight = householdCommand({
  name: "findings flight",
  says: "What the sheets of a revealed flight can carry: worths, mix-ups, what was known.",
  args: { flight: "id or name" },
  flags: {},
  example: 'findings flight "Sunday, blind"',
  run: async ({ args }, here) => {
    const { id } = await findFlight(here, args.flight, ["flight"]);
    const found = await here.client("getWeighedFlight", { at: { household: here.household.id, flight: id } });
    return { json: found, text: () => printWeighed(found), notes: notesOf(here) };
  },
});

export const findingsRecipe = householdCommand({
  name: "findings recipe",
  says: "Everything known of a recipe over all its revealed flights.",
  args: { recipe: "id or name" },
  flags: {},
  example: 'findings recipe "Two to one"',
  run: async ({ args }, here) => {
    const { id } = await findRecipe(here, args.recipe, ["recipe"]);
    const found = await here.client("getRecipeFinding", { at: { household: here.household.id, recipe: id } });
    return { json: found, text: () => printRecipeFinding(found), notes: notesOf(here) };
  },
});

export const findingsWhiskey = householdCommand({
  name: "findings whiskey",
  says: "What a whiskey was taken for, where it was ranked, and what was said of it.",
  args: { whiskey: "id or name" },
  flags: {},
  example: 'findings whiskey "Gull Stair"',
  run: async ({ args }, here) => {
    const { id } = await findWhiskey(here, args.whiskey, ["whiskey"]);
    const at = { household: here.household.id, whiskey: id };
    const found = await here.client("getWhiskeyFinding", { at });
    return { json: found, text: () => printWhiskeyFinding(found), notes: notesOf(here) };
  },
});

export const findingsTaster = householdCommand({
  name: "findings taster",
  says: "One taster over time: what they can tell, and what they have not shown.",
  args: { taster: "id or name" },
  flags: {},
  example: "findings taster Ilka",
  run: async ({ args }, here) => {
    const { id } = await findTaster(here, args.taster, ["taster"]);
    const found = await here.client("getTasterFinding", { at: { household: here.household.id, taster: id } });
    return { json: found, text: () => printTasterFinding(found), notes: notesOf(here) };
  },
});

export const findingsLeague = householdCommand({
  name: "findings league",
  says: "Own blends beside each other, by all revealed flights.",
  flags: {},
  example: "findings league",
  run: async (_given, here) => {
    const found = await here.client("getLeague", { at: { household: here.household.id } });
    return { json: found, text: () => printLeague(found), notes: notesOf(here) };
  },
});
