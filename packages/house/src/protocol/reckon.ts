import { z } from "zod";
import { StatedStrength, VolumeMl } from "./fields.ts";
import { BenchCelsius, Instruments, TakenAs, UncertainFigure } from "./instruments.ts";

/** Grams, from a tenth of a milligram up. */
export const MassG = z.number().min(0.0001).max(100_000);

const Parts = z
  .array(z.object({ parts: z.number().min(0).max(10_000), strength: StatedStrength }))
  .min(1)
  .max(24);

export const MixDraft = z.object({
  parts: Parts,
  /** The sum poured, before contraction: at 20 °C, or as read at `celsius`. */
  volumeMl: VolumeMl.default(100),
  celsius: BenchCelsius.optional(),
  uncertainty: Instruments.optional(),
});
export const MixResult = z.object({
  abv20: z.number(),
  proof60F: z.number(),
  /** At 20 °C, as every volume here that does not say otherwise. */
  volumeMl: z.number(),
  contractionMl: z.number(),
  massG: z.number(),
  /** What averaging the strengths would have said. */
  naiveAbv20: z.number(),
  /** The mixture once it is as warm as what was poured. */
  asRead: z.object({ celsius: z.number(), volumeMl: z.number() }).optional(),
  uncertainty: z
    .object({
      takenAs: TakenAs,
      abv20: UncertainFigure,
      proof60F: UncertainFigure,
      volumeMl: UncertainFigure,
    })
    .optional(),
});
export type MixResult = z.infer<typeof MixResult>;

/**
 * One liquid added (water, unless `add` says what): one of `volumeMl`, `fillMl` and `finalG`. Two liquids added:
 * `volumeMl` and one of the others. Two of them where one is asked are refused.
 */
export const ReduceDraft = z.object({
  /** What it has; or `parts`, where it is first mixed from several. */
  from: StatedStrength.optional(),
  parts: Parts.optional(),
  to: StatedStrength,
  /** The liquid before anything is added (of `parts`: their sum). At 20 °C, or as read at `celsius`. */
  volumeMl: VolumeMl.optional(),
  /** What is to come out in all. At 20 °C, or as read at `celsius`. */
  fillMl: VolumeMl.optional(),
  /** What is to come out in all, by mass. */
  finalG: MassG.optional(),
  /** What is added; water is 0 % vol. */
  add: z.array(StatedStrength).min(1).max(2).optional(),
  steps: z.int().min(1).max(100).optional(),
  /** Equal volumes added each time, or equal falls in strength. */
  stepsBy: z.enum(["volume", "strength"]).optional(),
  celsius: BenchCelsius.optional(),
  uncertainty: Instruments.optional(),
});
const Amount = z.object({ abv20: z.number(), ml: z.number(), g: z.number() });
export const ReduceResult = z.object({
  liquidMl: z.number(),
  /** Of all that is added, what is water. */
  waterMl: z.number(),
  waterG: z.number(),
  finalMl: z.number(),
  /** What the head would have said; 0 where no water is added. */
  naiveWaterMl: z.number(),
  /** From here on: only where something besides the plain question was asked. */
  finalG: z.number().optional(),
  /** How much of each of the parts. */
  parts: z.array(Amount).optional(),
  /** How much of each liquid that is added. */
  added: z.array(Amount).optional(),
  steps: z
    .array(z.object({ addMl: z.number(), addG: z.number(), abv20: z.number(), volumeMl: z.number() }))
    .optional(),
  /** The same volumes as they are read at that temperature. */
  asRead: z
    .object({
      celsius: z.number(),
      liquidMl: z.number(),
      waterMl: z.number(),
      finalMl: z.number(),
      addedMl: z.array(z.number()),
    })
    .optional(),
  uncertainty: z
    .object({
      takenAs: TakenAs,
      /** Where it lands when these amounts are measured so. */
      abv20: UncertainFigure,
      finalMl: UncertainFigure,
      /** How much had to be added, the start being what it is; null unless one liquid is added to a measured volume. */
      addMl: UncertainFigure.nullable(),
    })
    .optional(),
});
export type ReduceResult = z.infer<typeof ReduceResult>;

export const DensityDraft = z.object({
  massFraction: z.number().min(0).max(1),
  celsius: BenchCelsius,
});
export const DensityResult = z.object({ kgPerM3: z.number() });

const absent = z.never().optional();
const volumeMl = VolumeMl.optional();
/** One strength, and a volume of it at 20 °C if amounts of alcohol are wanted. */
export const ConvertDraft = z.union([
  z.object({ abv20: z.number().min(0).max(100), proof60F: absent, massPercent: absent, volumeMl }),
  z.object({ proof60F: z.number().min(0).max(200), abv20: absent, massPercent: absent, volumeMl }),
  z.object({ massPercent: z.number().min(0).max(100), abv20: absent, proof60F: absent, volumeMl }),
]);
export const ConvertResult = z.object({
  abv20: z.number(),
  proof60F: z.number(),
  massPercent: z.number(),
  /** % vol with ethanol and mixture both measured at 15 °C. */
  abv15: z.number(),
  /** What is in `volumeMl`. */
  amount: z
    .object({
      volumeMl: z.number(),
      massG: z.number(),
      ethanolG: z.number(),
      /** Pure ethanol at 20 °C. */
      litresOfAlcohol: z.number(),
      /** At 60 °F, of 231 cubic inches. */
      wineGallons: z.number(),
      proofGallons: z.number(),
      /** 8 g of ethanol each. */
      ukUnits: z.number(),
      /** 14 g of ethanol each. */
      usStandardDrinks: z.number(),
    })
    .optional(),
});
export type ConvertResult = z.infer<typeof ConvertResult>;
