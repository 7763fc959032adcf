import { z } from "zod";

const MixingLawName = z.enum(["mean", "power", "strongest"]);

/** An exponent as a search takes it: 1 is the mean of the parts; "strongest": the strongest part rules. */
export const MixingExponent = z.union([z.number().min(0.1).max(10), z.literal("strongest")]);

/** What mixes of revealed flights tell of one attribute. */
export const LearnedMixing = z.object({
  attribute: z.string(),
  /** What to go by; searches do. */
  law: MixingLawName,
  exponent: MixingExponent,
  sentence: z.string(),
  /** How many times likelier than the mean, what was believed beforehand counted in; 1e12 and more are told as 1e12. */
  odds: z.object({ power: z.number(), strongest: z.number() }),
  /** The exponent if the power law holds, and the middle 80 of 100. */
  power: z.object({ exponent: z.number(), low: z.number(), high: z.number() }),
  /** What was noted of each mix, 0 to 10, and what each law says of it from its parts alone. */
  blends: z.array(
    z.object({
      key: z.string(),
      label: z.string(),
      noted: z.object({ mean: z.number(), sd: z.number() }),
      foretold: z.object({ mean: z.number(), power: z.number(), strongest: z.number() }),
    }),
  ),
});
export type LearnedMixing = z.infer<typeof LearnedMixing>;

export const MixingBoard = z.object({
  headline: z.string(),
  /** Those that do not mix by the mean first, then those with the most mixes. */
  attributes: z.array(LearnedMixing),
  /** Mixes that tell nothing, and why. */
  silent: z.array(z.object({ label: z.string(), why: z.string() })),
  /** How many times likelier than the mean a law has to be, how far the mean is ahead beforehand, and the fewest mixes. */
  needed: z.object({ odds: z.number(), meanBeforehand: z.number(), mixes: z.int() }),
  method: z.string(),
});
export type MixingBoard = z.infer<typeof MixingBoard>;

/** One attribute of a search that was found not to mix by the mean. */
export const MixingUsed = z.object({
  attribute: z.string(),
  exponent: MixingExponent,
  /** Whether the search goes by it: it was not told to take all by the mean, and its distance allows it. */
  used: z.boolean(),
  sentence: z.string(),
});
export type MixingUsed = z.infer<typeof MixingUsed>;
