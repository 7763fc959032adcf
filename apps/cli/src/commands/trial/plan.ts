import type { BodyOf } from "@partsproof/house/protocol";
import { type Read, readStrength, some } from "../../flags/index.ts";
import { unread } from "../../flags/read-number.ts";
import { printTrialPlan } from "../../print/trial.ts";
import { reckoning } from "../command.ts";
import { planFlags, planPlaces, plannedAs } from "./plan-flags.ts";

type Draft = NonNullable<BodyOf<"planTrials">>;
type Part = Draft["parts"][number];

/** "Malt@62.4:0.2-0.6": a name, its strength, and what its share may be; the last two where they are known. */
const readTrialPart: Read<Part> = (text) => {
  const form = /^([^@:]+)(?:@([^:]+))?(?::([\d.]+)-([\d.]+))?$/.exec(text.trim());
  const limit = "<name>[@<strength>][:<low>-<high>], such as Malt@62.4:0.2-0.6";
  if (form === null) return unread("part", "part_unreadable", limit, text);
  const [, name = "", strength, low, high] = form;
  const read = strength === undefined ? null : readStrength(strength);
  if (read !== null && !read.ok) return read;
  if ([low, high].some((share) => share !== undefined && !/^(?:0|1|0?\.\d+|1\.0+|0\.\d+)$/.test(share)))
    return unread("part", "part_unreadable", limit, text);
  return {
    ok: true,
    value: {
      name: name.trim(),
      ...(read === null ? {} : { strength: read.value }),
      ...(low === undefined || high === undefined ? {} : { low: Number(low), high: Number(high) }),
    },
  };
};

export const trialPlan = reckoning({
  name: "trial plan",
  says: "Which small mixes to make so that a handful say most, the pours and the strength of each.",
  flags: {
    part: some(readTrialPart, "<name>[@<strength>][:<low>-<high>]", "a whiskey, and what its share may be"),
    ...planFlags,
  },
  example:
    "trial plan --part Malt@62.4 --part Rye@50 --part Wheat@58 --plan centroid --volume 20ml --syringe 0.5ml",
  places: planPlaces,
  run: async ({ part, ...flags }, client) => {
    const json = await client("planTrials", { body: { parts: [...part], ...plannedAs(flags) } });
    return { json, text: () => printTrialPlan(json) };
  },
});
