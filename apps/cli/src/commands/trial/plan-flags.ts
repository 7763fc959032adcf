import { type BodyOf, MixtureModelName } from "@partsproof/house/protocol";
import {
  type GivenFlags,
  many,
  needed,
  one,
  readMass,
  readNumber,
  readVolume,
  readWhole,
  readWord,
} from "../../flags/index.ts";
import { given, readNumbers } from "../counts/counts-flags.ts";

const PLANS = ["lattice", "centroid", "D", "I"] as const;

/** How a set of trials is planned and poured, as flags. */
export const planFlags = {
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
};

export const planPlaces = {
  parts: "part",
  volumeMl: "volume",
  mostMl: "most",
  syringeMl: "syringe",
  scaleG: "scale",
} as const;

type Plan = Omit<NonNullable<BodyOf<"planTrials">>, "parts">;

export function plannedAs(flags: GivenFlags<typeof planFlags>): Plan {
  const { known, volume, most, syringe, scale, plan, model, trials, steps, within } = flags;
  return {
    plan,
    ...(known.length === 0 ? {} : { known: known.map((shares) => [...shares]) }),
    ...given({
      model,
      trials,
      steps,
      within,
      volumeMl: volume,
      mostMl: most,
      syringeMl: syringe,
      scaleG: scale,
    }),
  };
}
