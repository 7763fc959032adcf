import { z } from "zod";
import { StatedStrength, VolumeMl } from "./fields.ts";
import { BenchCelsius, Hydrometer, Instruments, TakenAs, UncertainFigure } from "./instruments.ts";
import { MassG } from "./reckon.ts";

/** What a floating instrument shows: % vol at 20 °C, US proof at 60 °F, or kg/m³ at 20 °C, each right at that temperature. */
const Reading = z.discriminatedUnion("scale", [
  z.object({ scale: z.literal("abv20"), value: z.number().min(0).max(100) }),
  z.object({ scale: z.literal("proof60F"), value: z.number().min(0).max(200) }),
  z.object({ scale: z.literal("density20"), value: z.number().min(500).max(1200) }),
]);

export const GaugeDraft = z.object({
  reading: Reading,
  /** The liquid's temperature: one of the two. */
  celsius: BenchCelsius.optional(),
  fahrenheit: z.number().min(-4).max(104).optional(),
  /** Dissolved solids, mg in 100 mL. */
  solidsMgPer100Ml: z.number().min(0).max(100_000).optional(),
  uncertainty: Hydrometer.optional(),
});
export const GaugeResult = z.object({
  /** Proof at 60 °F, corrected for temperature, and for solids where they were given. */
  trueProof: z.number(),
  /** % vol at 20 °C, corrected the same. */
  abv20: z.number(),
  /** What the liquid's density is at its temperature and at 20 °C, solids and all. */
  kgPerM3: z.number(),
  kgPerM3At20: z.number(),
  celsius: z.number(),
  solids: z
    .object({
      mgPer100Ml: z.number(),
      /** Corrected for temperature only: what the solids let the hydrometer see. */
      apparentProof: z.number(),
      obscurationProof: z.number(),
      /** Whether it changes the tenth of a proof. */
      matters: z.boolean(),
      /** What 27 CFR 30.31 does at this much: take it as read, add the obscuration, or have it distilled. */
      rule: z.enum(["as_read", "add_obscuration", "distil"]),
      /** Whether the factor was found for such a strength (80 to 100 proof). */
      inRange: z.boolean(),
    })
    .optional(),
  uncertainty: z.object({ takenAs: TakenAs, trueProof: UncertainFigure, abv20: UncertainFigure }).optional(),
});
export type GaugeResult = z.infer<typeof GaugeResult>;

/** One of `ml`, as read at `celsius`, and `grams`, as the scale shows them. */
export const WeighDraft = z.object({
  strength: StatedStrength,
  ml: VolumeMl.optional(),
  grams: MassG.optional(),
  celsius: BenchCelsius.default(20),
  /** In air of 1.2 kg/m³ against weights of 8000 kg/m³; else in vacuum. */
  inAir: z.boolean().default(false),
  uncertainty: Instruments.optional(),
});
export const WeighResult = z.object({
  /** What the scale shows: the mass, unless in air. */
  grams: z.number(),
  massG: z.number(),
  /** As read at `celsius`. */
  ml: z.number(),
  ml20: z.number(),
  kgPerM3: z.number(),
  ethanolG: z.number(),
  celsius: z.number(),
  inAir: z.boolean(),
  /** Of the mass where a volume was given, of the volume where grams were. */
  uncertainty: z
    .object({
      takenAs: TakenAs,
      massG: UncertainFigure.optional(),
      ml20: UncertainFigure.optional(),
    })
    .optional(),
});
export type WeighResult = z.infer<typeof WeighResult>;

/** How strong an unlabelled sample is, from what it weighs and measures. */
export const SampleDraft = z.object({
  /** As the scale shows it, the vessel not counted. */
  grams: MassG,
  /** As read at `celsius`. */
  ml: VolumeMl,
  celsius: BenchCelsius.default(20),
  inAir: z.boolean().default(false),
  uncertainty: Instruments.optional(),
});
export const SampleResult = z.object({
  abv20: z.number(),
  proof60F: z.number(),
  kgPerM3: z.number(),
  celsius: z.number(),
  inAir: z.boolean(),
  /** The strength if the grams were the other of mass and scale reading; null where no mixture is so light or heavy. */
  otherwiseAbv20: z.number().nullable(),
  uncertainty: z.object({ takenAs: TakenAs, abv20: UncertainFigure }).optional(),
});
export type SampleResult = z.infer<typeof SampleResult>;

export const TemperatureDraft = z.object({
  strength: StatedStrength,
  kgPerM3: z.number().min(500).max(1200),
});
export const TemperatureResult = z.object({
  /** Every temperature at which this mixture has this density, coldest first: two near its densest point. */
  celsius: z.array(z.number()).min(1).max(2),
});
export type TemperatureResult = z.infer<typeof TemperatureResult>;
