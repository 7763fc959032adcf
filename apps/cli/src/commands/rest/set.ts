import { issueAt, refuse } from "../../flags/index.ts";
import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, findRest, noteFlag } from "./of-batch.ts";
import { ruled, ruleFlags, rulePlaces } from "./rule-flags.ts";

export const restSet = householdCommand({
  name: "rest set",
  says: "Change the rule of a rest, its temperature, its planned flight or its note.",
  args: batchArg,
  flags: { ...ruleFlags, note: noteFlag },
  example: 'rest set "First try" --pull wood.toasted=5 --celsius 18',
  places: rulePlaces,
  run: async ({ args, flags }, here) => {
    const said = { ...ruled(flags), ...(flags.note === undefined ? {} : { note: flags.note }) };
    if (Object.keys(said).length === 0)
      refuse(
        issueAt(
          [],
          "flag_missing",
          "one of --pull, --leads, --falling, --celsius, --flight and --note",
          null,
        ),
      );
    const rest = await findRest(here, args.batch);
    const at = { household: here.household.id, rest: rest.id };
    const json = await here.client("editRest", { at, body: { version: rest.version, ...said } });
    return { json, text: () => printRested(json, null) };
  },
});
