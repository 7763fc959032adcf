import { z } from "zod";
import { StatedStrength, VolumeMl } from "./fields.ts";
import { BenchCelsius, Instruments, TakenAs, UncertainFigure } from "./instruments.ts";
import { Issue } from "./issue.ts";
import { MassG } from "./reckon.ts";

/** What to pour by weight, and again after an overshoot. One of `volumeMl`, `fillMl` and `finalG`. Volumes are at 20 °C. */
export const WeighOutDraft = z.object({
  parts: z
    .array(
      z.object({
        parts: z.number().min(0).max(10_000),
        strength: StatedStrength,
        /** What is in the vessel of it already, as the scale showed it. */
        pouredG: z.number().min(0).max(100_000).optional(),
        /** No more of it can be poured. */
        done: z.boolean().default(false),
      }),
    )
    .min(1)
    .max(24),
  /** Instead of `pouredG`: a scale that was not zeroed, first with the vessel alone, then after each part in order. */
  readingsG: z.array(z.number().min(-100_000).max(100_000)).min(1).max(25).optional(),
  /** The sum of the parts, before contraction. */
  volumeMl: VolumeMl.optional(),
  /** What is to come out in all. */
  fillMl: VolumeMl.optional(),
  finalG: MassG.optional(),
  /** What the vessel holds at most. */
  vesselMl: VolumeMl.optional(),
  /** The strength the parts are taken to, with `add` or water. */
  to: StatedStrength.optional(),
  add: StatedStrength.optional(),
  celsius: BenchCelsius.default(20),
  inAir: z.boolean().default(false),
  uncertainty: Instruments.optional(),
});
const PourOnScale = z.object({
  abv20: z.number(),
  /** Asked before anything was poured. */
  plannedG: z.number(),
  pouredG: z.number(),
  toPourG: z.number(),
  /** `toPourG` as a volume read at `celsius`. */
  toPourMl: z.number(),
  /** What a scale that is not zeroed shows after it. */
  scaleG: z.number(),
});
export const WeighOutResult = z.object({
  /** In the order of the parts. */
  pours: z.array(PourOnScale),
  /** What takes them to `to`, last into the vessel; null where no strength was asked. */
  reducing: PourOnScale.nullable(),
  ratioKept: z.boolean(),
  strengthKept: z.boolean(),
  /** By how much a part's share of the parts is off at most, 0 to 1. */
  worstShareOff: z.number(),
  abv20: z.number(),
  proof60F: z.number(),
  finalMl: z.number(),
  finalG: z.number(),
  celsius: z.number(),
  inAir: z.boolean(),
  uncertainty: z.object({ takenAs: TakenAs, abv20: UncertainFigure }).optional(),
});
export type WeighOutResult = z.infer<typeof WeighOutResult>;

/** Which second bottle, and how much of it, takes this one to a strength. Volumes are at 20 °C. */
export const LiftDraft = z.object({
  from: StatedStrength,
  volumeMl: VolumeMl,
  to: StatedStrength,
  /** The bottles at hand. */
  with: z.array(StatedStrength).max(24).default([]),
  /** How much there is room for: asks how strong a second bottle would have to be. */
  roomMl: VolumeMl.optional(),
});
export const LiftResult = z.object({
  bottles: z.array(
    z.object({
      abv20: z.number(),
      /** Null, with the issue, where it cannot be done with this one. */
      addMl: z.number().nullable(),
      addG: z.number().nullable(),
      finalMl: z.number().nullable(),
      /** Whether it fits the room; null where no room was given. */
      fits: z.boolean().nullable(),
      issue: Issue.nullable(),
    }),
  ),
  /** How strong the second bottle has to be to do it with `roomMl`. */
  needed: z.object({ roomMl: z.number(), abv20: z.number(), proof60F: z.number() }).nullable(),
});
export type LiftResult = z.infer<typeof LiftResult>;

/** A vessel filled exactly, contraction counted. Volumes are at 20 °C. */
export const FillDraft = z.object({
  held: z.object({ volumeMl: VolumeMl, strength: StatedStrength }),
  with: StatedStrength,
  vesselMl: VolumeMl,
});
export const FillResult = z.object({
  addMl: z.number(),
  addG: z.number(),
  /** The gap as seen, which contraction makes too little. */
  naiveAddMl: z.number(),
  abv20: z.number(),
  proof60F: z.number(),
  finalMl: z.number(),
});
export type FillResult = z.infer<typeof FillResult>;

const Level = z.object({
  /** As read at `celsius`. */
  volumeMl: z.number().min(0).max(100_000),
  strength: StatedStrength,
  celsius: BenchCelsius.default(20),
});
export const EvaporatedDraft = z.object({
  before: Level,
  after: Level,
  uncertainty: Instruments.optional(),
});
export const EvaporatedResult = z.object({
  ethanolG: z.number(),
  /** Below 0: water came in. */
  waterG: z.number(),
  massG: z.number(),
  /** By how much the level fell, at 20 °C. */
  volumeMl: z.number(),
  /** Of the ethanol there was, 0 to 1. */
  ethanolShare: z.number(),
  /** Strength of what has gone; null when nothing has, or water came in. */
  abv20Gone: z.number().nullable(),
  uncertainty: z
    .object({ takenAs: TakenAs, ethanolG: UncertainFigure, waterG: UncertainFigure, massG: UncertainFigure })
    .optional(),
});
export type EvaporatedResult = z.infer<typeof EvaporatedResult>;
