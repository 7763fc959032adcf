import { z } from "zod";
import { StatedStrength, VolumeMl } from "./fields.ts";

export const MixDraft = z.object({
  parts: z
    .array(z.object({ parts: z.number().min(0).max(10_000), strength: StatedStrength }))
    .min(1)
    .max(24),
  /** The sum poured, before contraction, at 20 °C. */
  volumeMl: VolumeMl.default(100),
});
export const MixResult = z.object({
  abv20: z.number(),
  proof60F: z.number(),
  volumeMl: z.number(),
  contractionMl: z.number(),
  massG: z.number(),
  /** What averaging the strengths would have said. */
  naiveAbv20: z.number(),
});
export type MixResult = z.infer<typeof MixResult>;

/** Either the volume of the liquid before water, or the final volume to fill. */
export const ReduceDraft = z.union([
  z.object({ from: StatedStrength, to: StatedStrength, volumeMl: VolumeMl }),
  z.object({ from: StatedStrength, to: StatedStrength, fillMl: VolumeMl }),
]);
export const ReduceResult = z.object({
  liquidMl: z.number(),
  waterMl: z.number(),
  waterG: z.number(),
  finalMl: z.number(),
  naiveWaterMl: z.number(),
});
export type ReduceResult = z.infer<typeof ReduceResult>;

export const DensityDraft = z.object({
  massFraction: z.number().min(0).max(1),
  celsius: z.number().min(-20).max(40),
});
export const DensityResult = z.object({ kgPerM3: z.number() });

export const ConvertDraft = z.union([
  z.object({ abv20: z.number().min(0).max(100) }),
  z.object({ proof60F: z.number().min(0).max(200) }),
  z.object({ massPercent: z.number().min(0).max(100) }),
]);
export const ConvertResult = z.object({ abv20: z.number(), proof60F: z.number(), massPercent: z.number() });
