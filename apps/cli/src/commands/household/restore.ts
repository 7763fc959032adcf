import { needed, readText } from "../../flags/index.ts";
import { readJsonFile } from "../../files/index.ts";
import { printHousehold } from "../../print/household.ts";
import { houseCommand } from "../command.ts";

export const householdRestore = houseCommand({
  name: "household restore",
  says: "A new household from such a file, all of it or nothing. A flight not revealed yet comes back as called off.",
  flags: { from: needed(readText("from"), "<file>", "what `household export` wrote") },
  example: "household restore --from kitchen-table.json",
  run: async ({ flags }, { client }) => {
    const body = await readJsonFile(flags.from, ["from"]);
    // Not read by us: the house says what is wrong with it, row by row.
    const household = await client("restoreHousehold", { body: body as never });
    return { json: household, text: () => printHousehold(household) };
  },
});
