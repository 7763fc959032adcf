import { COUNTS_LIMITS } from "@partsproof/house/protocol";
import { needed, one, readWhole, yes } from "../../flags/index.ts";
import { printMatch } from "../../print/counts.ts";
import { reckoning } from "../command.ts";
import { given, levelFlag, readWholes } from "./counts-flags.ts";

/** What stands in the glasses of a sheet and which names are on offer. */
export const glassFlags = {
  glasses: needed(readWhole("glasses", 1, COUNTS_LIMITS.glasses), "<count>", "glasses on each sheet"),
  sheets: one(
    readWhole("sheets", 1, COUNTS_LIMITS.named),
    "<count>",
    "sheets filled by themselves, 1 where left out",
  ),
  pours: one(
    readWholes("pours", 1, COUNTS_LIMITS.glasses),
    "<2,1,1>",
    "how often each whiskey is poured, its name on offer as often; all different where left out",
  ),
  distractors: one(
    readWhole("distractors", 0, COUNTS_LIMITS.glasses),
    "<count>",
    "names on offer that stand in no glass",
  ),
};

/** The same as the API has it. */
export const glassBody = ({
  glasses,
  sheets,
  pours,
  distractors,
}: {
  readonly glasses: number;
  readonly sheets: number | undefined;
  readonly pours: readonly number[] | undefined;
  readonly distractors: number | undefined;
}) => ({ glasses, ...given({ sheets, distractors, pours: pours === undefined ? undefined : [...pours] }) });

export const match = reckoning({
  name: "match",
  says: "How well guessing would do at naming glasses, and how many were truly known.",
  flags: {
    ...glassFlags,
    right: needed(
      readWhole("right", 0, COUNTS_LIMITS.named),
      "<count>",
      "named right; with --sheets, over all sheets",
    ),
    told: yes("what stood in a glass was told before the next was named"),
    level: levelFlag,
  },
  example: "match --glasses 5 --right 3 --sheets 4",
  run: async ({ right, told, level, ...glasses }, client) => {
    const body = { ...glassBody(glasses), right, ...(told ? { told } : {}), ...given({ level }) };
    const json = await client("countsMatch", { body });
    return { json, text: () => printMatch(json) };
  },
});
