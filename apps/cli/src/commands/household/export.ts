import { needed, readText } from "../../flags/index.ts";
import { printJson } from "../../print/json.ts";
import { writeWhole } from "../../files/index.ts";
import { householdCommand } from "../command.ts";

export const householdExport = householdCommand({
  name: "household export",
  says: "Everything of a household in one file. What is sealed stays sealed in it.",
  flags: { to: needed(readText("to"), "<file>", "a file that is not there yet; - for standard output") },
  example: "household export --to kitchen-table.json",
  run: async ({ flags }, { client, household }) => {
    const archive = await client("exportHousehold", { at: { household: household.id } });
    if (flags.to === "-") return { json: archive, text: () => printJson(archive) };
    const bytes = await writeWhole(flags.to, `${printJson(archive)}\n`, ["to"]);
    const json = { file: flags.to, bytes, household: household.name };
    return { json, text: () => `${household.name}: all of it is in ${flags.to}` };
  },
});
