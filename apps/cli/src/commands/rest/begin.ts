import { findBatch } from "../../door/index.ts";
import { issueAt, one, readText, readVolume, refuse, yes } from "../../flags/index.ts";
import { printRested } from "../../print/rested.ts";
import { householdCommand } from "../command.ts";
import { batchArg, dayFlag, momentOn, noteFlag } from "./of-batch.ts";
import { ruled, ruleFlags, rulePlaces } from "./rule-flags.ts";

export const restBegin = householdCommand({
  name: "rest begin",
  says: "Begin a batch's rest, on oak or on glass, by the rule that ends it; a sample may be kept from before.",
  args: batchArg,
  flags: {
    oak: yes("wood will go in: rest oak"),
    glass: yes("no wood"),
    ...ruleFlags,
    sample: one(readVolume, "<volume>", "kept from before in a vial of its own, to be the blind before"),
    vial: one(
      readText("vial"),
      "<label>",
      "what that vial is called; else the batch with \u201cbefore\u201d",
    ),
    on: dayFlag,
    note: noteFlag,
  },
  example: 'rest begin "First try" --oak --pull wood.toasted=6 --sample 30ml --flight 2026-12-24',
  places: { ...rulePlaces, at: "on", "sample.ml": "sample" },
  run: async ({ args, flags }, here) => {
    if (flags.oak === flags.glass) {
      const limit = "either --oak or --glass";
      refuse(
        issueAt(["oak"], flags.oak ? "flags_exclude" : "flag_missing", limit, flags.oak ? "both" : null),
      );
    }
    const batch = await findBatch(here, args.batch, ["batch"]);
    const { sample, vial } = flags;
    const json = await here.client("beginRest", {
      at: { household: here.household.id, batch: batch.id },
      body: {
        kind: flags.oak ? "oak" : "glass",
        ...ruled(flags),
        ...momentOn(flags.on),
        ...(flags.note === undefined ? {} : { note: flags.note }),
        ...(sample === undefined
          ? {}
          : {
              sample: {
                label: vial ?? `${batch.name}, before`.slice(0, 120),
                capacityMl: sample,
                ml: sample,
              },
            }),
      },
    });
    return { json, text: () => printRested(json, null) };
  },
});
