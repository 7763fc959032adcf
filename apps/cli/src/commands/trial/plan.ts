import { type BodyOf, MixtureModelName } from "@partsproof/house/protocol";
import {
  many,
  one,
  type Read,
  readMass,
  readNumber,
  readStrength,
  readVolume,
  readWhole,
  readWord,
  needed,
  some,
} from "../../flags/index.ts";
import { unread } from "../../flags/read-number.ts";
import { printTrialPlan } from "../../print/trial.ts";
import { reckoning } from "../command.ts";
import { given, readNumbers } from "../counts/counts-flags.ts";

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

const PLANS = ["lattice", "centroid", "D", "I"] as const;

export const trialPlan = reckoning({
  name: "trial plan",
  says: "Which small mixes to make so that a handful say most, the pours and the strength of each.",
  flags: {
    part: some(readTrialPart, "<name>[@<strength>][:<low>-<high>]", "a whiskey, and what its share may be"),
    plan: needed(readWord("plan", PLANS), `<${PLANS.join("|")}>`, "whole plans, or the few that tell most"),
    model: one(
      readWord("model", MixtureModelName.options),
      `<${MixtureModelName.options.join("|")}>`,
      "what is to be fitted afterwards; quadratic where left out",
    ),
    trials: one(readWhole("trials", 1, 40), "<number>", "for D and I; as many as the model has terms"),
    steps: one(readWhole("steps", 1, 6), "<number>", "of a lattice, 2 where left out"),
    known: many(readNumbers("known", 0, 1), "<shares>", "a mixture that was tasted already: 0.5,0.25,0.25"),
    volume: one(readVolume, "<volume>", "of a trial, 30 mL where left out"),
    most: one(readVolume, "<volume>", "of a trial whose shares ask for more, 100 mL where left out"),
    syringe: one(readVolume, "<volume>", "its smallest step, 0.5 mL where left out"),
    scale: one(readMass, "<mass>", "instead: the smallest step of a scale"),
    within: one(readNumber("within", 0.0001, 0.2), "<0.0001 to 0.2>", "how far a share may be off, 0.01"),
  },
  example:
    "trial plan --part Malt@62.4 --part Rye@50 --part Wheat@58 --plan centroid --volume 20ml --syringe 0.5ml",
  places: {
    parts: "part",
    volumeMl: "volume",
    mostMl: "most",
    syringeMl: "syringe",
    scaleG: "scale",
  },
  run: async ({ part, known, volume, most, syringe, scale, plan, ...rest }, client) => {
    const body: Draft = {
      parts: [...part],
      plan,
      ...(known.length === 0 ? {} : { known: known.map((shares) => [...shares]) }),
      ...given({
        model: rest.model,
        trials: rest.trials,
        steps: rest.steps,
        within: rest.within,
        volumeMl: volume,
        mostMl: most,
        syringeMl: syringe,
        scaleG: scale,
      }),
    };
    const json = await client("planTrials", { body });
    return { json, text: () => printTrialPlan(json) };
  },
});
