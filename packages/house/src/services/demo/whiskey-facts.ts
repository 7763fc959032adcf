import type { BodyOf, GrainShare, StatedStrength } from "../../protocol/index.ts";

/** One invented whiskey of the demo. */
export type WhiskeyFacts = BodyOf<"addWhiskey">;

export const abv = (value: number): StatedStrength => ({ basis: "abv20", value });
export const proof = (value: number): StatedStrength => ({ basis: "proof60F", value });

/** A grain bill in per cent, as it is said: `bill({ rye: 80, "malted barley": 20 })`. */
export const bill = (percents: Readonly<Record<string, number>>): GrainShare[] =>
  Object.entries(percents).map(([grain, percent]) => ({ grain, percent }));
