import { writeWhole } from "../../files/index.ts";
import { needed, one, readText, readWord } from "../../flags/index.ts";
import { householdCommand } from "../command.ts";

export const shelfExport = householdCommand({
  name: "shelf export",
  says: "The shelf as a list: a row a bottle, safe for a spreadsheet, read in again as it was.",
  flags: {
    as: one(readWord("as", ["csv", "json"]), "<csv|json>", "csv where left out"),
    to: needed(readText("to"), "<file>", "a file that is not there yet; - for standard output"),
  },
  example: "shelf export --to shelf.csv",
  run: async ({ flags }, { client, household }) => {
    const query = { as: flags.as ?? ("csv" as const) };
    const list = await client("exportShelf", { at: { household: household.id }, query });
    if (flags.to === "-") return { json: list, text: () => list.text.trimEnd() };
    const bytes = await writeWhole(flags.to, list.text, ["to"]);
    return { json: { file: flags.to, bytes }, text: () => `The shelf of ${household.name}: ${flags.to}` };
  },
});
