import { one, readVolume } from "../../flags/index.ts";
import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, dayFlag, findRest, momentOn, noteFlag } from "./of-batch.ts";

export const restPull = householdCommand({
  name: "rest pull",
  says: "Take all wood out that is in and end the rest; what filtering lost leaves the vessel.",
  args: batchArg,
  flags: {
    loss: one(readVolume, "<volume>", "lost in filtering, none where left out"),
    on: dayFlag,
    note: noteFlag,
  },
  example: 'rest pull "First try" --loss 8ml',
  places: { lossMl: "loss", at: "on" },
  run: async ({ args, flags }, here) => {
    const rest = await findRest(here, args.batch);
    const json = await here.client("pullRest", {
      at: { household: here.household.id, rest: rest.id },
      body: {
        version: rest.version,
        ...(flags.loss === undefined ? {} : { lossMl: flags.loss }),
        ...(flags.note === undefined ? {} : { note: flags.note }),
        ...momentOn(flags.on),
      },
    });
    return { json, text: () => printRested(json, null) };
  },
});

export const restRemove = householdCommand({
  name: "rest remove",
  says: "Remove a rest that was begun by mistake, with its wood and tastings. A kept sample stays in its vial.",
  args: batchArg,
  flags: {},
  example: 'rest remove "First try"',
  run: async ({ args }, here) => {
    const rest = await findRest(here, args.batch);
    const at = { household: here.household.id, rest: rest.id };
    await here.client("removeRest", { at, query: { version: rest.version } });
    return { json: { removed: rest.id }, text: () => `The rest of ${rest.batchName} is removed.` };
  },
});
