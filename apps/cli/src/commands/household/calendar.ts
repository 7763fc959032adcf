import { writeWhole } from "../../files/index.ts";
import { needed, one, readText } from "../../flags/index.ts";
import { householdCommand } from "../command.ts";

export const calendar = householdCommand({
  name: "calendar",
  says: "The days on which batches have rested, as an iCalendar file for any calendar program.",
  flags: {
    zone: one(
      readText("zone"),
      "<zone>",
      "whose clock says which day it is, such as Europe/Paris; UTC where left out",
    ),
    to: needed(readText("to"), "<file>", "a file that is not there yet; - for standard output"),
  },
  example: "calendar --zone Europe/Paris --to saltreach.ics",
  run: async ({ flags }, { client, household }) => {
    const { zone } = flags;
    const told = await client("getCalendar", {
      at: { household: household.id },
      query: zone === undefined ? {} : { zone },
    });
    if (flags.to === "-") return { json: told, text: () => told.text.trimEnd() };
    const bytes = await writeWhole(flags.to, told.text, ["to"]);
    const json = { file: flags.to, bytes, events: told.events, zone: told.zone };
    const days = told.events === 1 ? "1 day is" : `${told.events} days are`;
    return { json, text: () => `${household.name}: ${days} in ${flags.to}` };
  },
});
