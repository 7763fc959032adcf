import { z } from "zod";

/** A temperature the density formula is good for, °C. */
export const BenchCelsius = z.number().min(-20).max(40);

/**
 * What was measured with. Volumes and masses are measured with the one of `cylinder`, `syringeMl` and `scale` that is
 * named, a cylinder of class B where none is; only a sample takes a scale and a measure.
 */
export const Instruments = z.object({
  /** By which rule labels are taken to be right; 0 % vol is water and exact. */
  label: z.enum(["us", "eu", "fruit", "printed", "exact"]).default("us"),
  /** ISO 4788 class, or a kitchen jug. */
  cylinder: z.enum(["A", "B", "jug"]).optional(),
  /** What the syringe holds, mL. */
  syringeMl: z.number().min(0.1).max(1000).optional(),
  scale: z.enum(["pocket", "fine", "kitchen"]).optional(),
  thermometer: z.enum(["laboratory", "kitchen", "room"]).default("room"),
});
export type Instruments = z.infer<typeof Instruments>;

/** A hydrometer: one division of its scale, in its own unit, and how far it may be off (one division unless given). */
export const Hydrometer = z.object({
  division: z.number().positive().max(100).optional(),
  error: z.number().min(0).max(100).optional(),
  thermometer: Instruments.shape.thermometer,
});
export type Hydrometer = z.infer<typeof Hydrometer>;

/** One figure with how far it may be off. */
export const UncertainFigure = z.object({
  value: z.number(),
  standardUncertainty: z.number(),
  /** Holds the true value in 95 of 100 such cases. */
  interval95: z.tuple([z.number(), z.number()]),
  /** As one would say it: "57.0" give or take "0.3", in the figure's own unit. */
  said: z.object({ value: z.string(), giveOrTake: z.string() }),
  /** Where most of it comes from: "the labels, not the thermometer"; empty when nothing is uncertain. */
  largest: z.string(),
  /** Each input's part of the variance, the largest first; shares add to 1. */
  budget: z.array(z.object({ input: z.string(), kind: z.string(), share: z.number(), words: z.string() })),
});
export type UncertainFigure = z.infer<typeof UncertainFigure>;

/** What the instruments were taken to be, in words: one line for each. */
export const TakenAs = z.array(z.string());
