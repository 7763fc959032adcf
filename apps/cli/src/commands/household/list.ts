import { everyItem } from "../../door/index.ts";
import { printHouseholds } from "../../print/household.ts";
import { houseCommand } from "../command.ts";

export const householdList = houseCommand({
  name: "household list",
  says: "The households of the house, and where it keeps them.",
  flags: {},
  example: "household list",
  run: async (_given, { client, says }) => {
    const items = await everyItem(client, "listHouseholds");
    return { json: { items, next: null }, text: () => printHouseholds(items, says) };
  },
});
