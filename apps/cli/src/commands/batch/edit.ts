import type { BodyOf } from "@partsproof/house/protocol";
import { findBatch } from "../../door/index.ts";
import {
  issueAt,
  one,
  readAnyText,
  readStrength,
  readText,
  readWhole,
  refuse,
  yes,
} from "../../flags/index.ts";
import { printBatch } from "../../print/batch.ts";
import { householdCommand } from "../command.ts";

type Reduction = NonNullable<NonNullable<BodyOf<"editBatch">>["reduction"]>;

/** Steps and days without a strength to fall to say nothing. */
function reductionOf(
  waterTo: Reduction["waterTo"] | undefined,
  steps: number | undefined,
  everyDays: number | undefined,
): Reduction | undefined {
  if (waterTo !== undefined) return { waterTo, steps: steps ?? 3, everyDays: everyDays ?? 2 };
  if (steps !== undefined || everyDays !== undefined)
    refuse(issueAt(["reduce-to"], "flag_missing", "--reduce-to <strength>", null));
  return undefined;
}

export const batchEdit = householdCommand({
  name: "batch edit",
  says: "Its name, rest or note, or that it is finished.",
  args: { batch: "id or name" },
  flags: {
    name: one(readText("name"), "<name>", "a new name"),
    rest: one(readWhole("rest", 0, 3650, "days"), "<days>", "counted from the day it was made"),
    finished: yes("it is drunk or given away"),
    note: one(readAnyText, "<text>", "in place of the old one"),
    "reduce-to": one(readStrength, "<strength>", "water in steps over days, down to this; begun now"),
    "reduce-steps": one(readWhole("steps", 1, 20), "<1 to 20>", "in so many steps, 3 where left out"),
    "reduce-every": one(readWhole("days", 1, 60, "days"), "<days>", "between two steps, 2 where left out"),
    "no-reduction": yes("no more water in steps"),
  },
  example: 'batch edit "First try" --rest 28',
  places: { restDays: "rest", reduction: "reduce-to" },
  run: async ({ args, flags }, here) => {
    const { name, rest, finished, note } = flags;
    const reduction = reductionOf(flags["reduce-to"], flags["reduce-steps"], flags["reduce-every"]);
    const none = flags["no-reduction"];
    if (none && reduction !== undefined)
      refuse(issueAt(["no-reduction"], "flags_exclude", "no --reduce-to beside it", "--reduce-to"));
    if (
      name === undefined &&
      rest === undefined &&
      !finished &&
      note === undefined &&
      !none &&
      reduction === undefined
    ) {
      const asked = "one of --name, --rest, --finished, --note, --reduce-to and --no-reduction";
      refuse(issueAt([], "flag_missing", asked, null));
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
        ...(none ? { reduction: null } : reduction === undefined ? {} : { reduction }),
      },
    });
    return { json: batch, text: () => printBatch(batch, here.household.currency) };
  },
});
