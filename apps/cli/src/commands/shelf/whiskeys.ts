import { everyItem, findWhiskey } from "../../door/index.ts";
import { one, readText } from "../../flags/index.ts";
import { printWhiskey, printWhiskeys } from "../../print/whiskey.ts";
import { householdCommand } from "../command.ts";

export const whiskeyList = householdCommand({
  name: "whiskey list",
  says: "The whiskeys known here, on the shelf or not.",
  flags: { find: one(readText("find"), "<text>", "only those with this in maker, name or release") },
  example: "whiskey list --find salt",
  run: async ({ flags }, { client, household }) => {
    const query = flags.find === undefined ? {} : { q: flags.find };
    const items = await everyItem(client, "listWhiskeys", { household: household.id }, query);
    return { json: { items, next: null }, text: () => printWhiskeys(items) };
  },
});

export const whiskeyShow = householdCommand({
  name: "whiskey show",
  says: "What is known of one whiskey.",
  args: { whiskey: "id or name" },
  flags: {},
  example: 'whiskey show "Lamplighter\'s Rest"',
  run: async ({ args }, here) => {
    const whiskey = await findWhiskey(here, args.whiskey, ["whiskey"]);
    return { json: whiskey, text: () => printWhiskey(whiskey, here.household.currency) };
  },
});
