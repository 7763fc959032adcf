import { findBatch } from "../../door/index.ts";
import { issueAt, one, readAnyText, readText, readWhole, refuse, yes } from "../../flags/index.ts";
import { printBatch } from "../../print/batch.ts";
import { householdCommand } from "../command.ts";

export const batchEdit = householdCommand({
  name: "batch edit",
  says: "Its name, rest or note, or that it is finished.",
  args: { batch: "id or name" },
  flags: {
    name: one(readText("name"), "<name>", "a new name"),
    rest: one(readWhole("rest", 0, 3650, "days"), "<days>", "counted from the day it was made"),
    finished: yes("it is drunk or given away"),
    note: one(readAnyText, "<text>", "in place of the old one"),
  },
  example: 'batch edit "First try" --rest 28',
  places: { restDays: "rest" },
  run: async ({ args, flags }, here) => {
    const { name, rest, finished, note } = flags;
    if (name === undefined && rest === undefined && !finished && note === undefined) {
      refuse(issueAt([], "flag_missing", "one of --name, --rest, --finished and --note", null));
    }
    const { id, version } = await findBatch(here, args.batch, ["batch"]);
    const batch = await here.client("editBatch", {
      at: { household: here.household.id, batch: id },
      body: {
        version,
        ...(name === undefined ? {} : { name }),
        ...(rest === undefined ? {} : { restDays: rest }),
        ...(finished ? { finished: true } : {}),
        ...(note === undefined ? {} : { note }),
      },
    });
    return { json: batch, text: () => printBatch(batch, here.household.currency) };
  },
});
