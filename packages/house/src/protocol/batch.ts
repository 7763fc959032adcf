import { z } from "zod";
import { Id, Instant, LongText, ShortText, StatedStrength, Version, VolumeMl } from "./fields.ts";
import { Issue } from "./issue.ts";
import { Contents } from "./vessel.ts";

/** One pour into the batch's vessel: out of a vessel, or water from the tap. */
export const Pour = z.object({
  from: z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("vessel"), vesselId: Id }),
    z.object({ kind: z.literal("water") }),
  ]),
  amount: z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("volume"), ml: z.number().positive().max(100_000) }),
    z.object({ kind: z.literal("mass"), g: z.number().positive().max(100_000) }),
  ]),
});
export type Pour = z.infer<typeof Pour>;

/** What to pour so that `finalMl` at 20 °C results, water and contraction counted; where from; what is short. */
export const BatchPlanDraft = z.object({
  recipeId: Id,
  recipeNumber: z.int().min(1).optional(),
  finalMl: VolumeMl,
});
export const BatchPlan = z.object({
  recipeId: Id,
  recipeNumber: z.int(),
  steps: z.array(
    z.object({
      label: z.string(),
      /** null for water. */
      slot: z.int().nullable(),
      /** Vessels to take it from, fullest opened first; one step may need two bottles. */
      pours: z.array(z.object({ ...Pour.shape, label: z.string(), ml: z.number(), g: z.number() })),
      ml: z.number(),
      g: z.number(),
      shortMl: z.number(),
    }),
  ),
  result: Contents,
  issues: z.array(Issue),
});
export type BatchPlan = z.infer<typeof BatchPlan>;

/** The largest batch for so many vessels: what the shelf allows, what is left, what it costs. Nothing is moved. */
export const BatchMakeDraft = z.object({
  recipeId: Id,
  recipeNumber: z.int().min(1).optional(),
  /** What a vessel holds to the brim, how much of it stays empty, and how many there are. */
  vesselMl: VolumeMl,
  headMl: z.number().min(0).max(100_000).default(0),
  vessels: z.int().min(1).max(100).default(1),
  /** Of what a pour is counted. */
  pourMl: z.number().min(1).max(500).default(30),
});
export const BatchMake = z.object({
  /** Room in the vessels, what the shelf allows at most, and the smaller of the two. */
  roomMl: z.number(),
  largestMl: z.number(),
  finalMl: z.number(),
  /** What runs out first; null where the vessels are the limit. */
  limitedBy: z.string().nullable(),
  /** How large a finished batch each whiskey allows by itself. */
  limits: z.array(z.object({ label: z.string(), freeMl: z.number(), allowsMl: z.number() })),
  /** Null where the shelf has none of something. */
  plan: BatchPlan.nullable(),
  left: z.array(z.object({ vesselId: Id, label: z.string(), takenMl: z.number(), leftMl: z.number() })),
  /** Null unless every whiskey has a price. */
  perVesselMinor: z.number().nullable(),
  perPourMinor: z.number().nullable(),
  pourMl: z.number(),
});
export type BatchMake = z.infer<typeof BatchMake>;

/** Water in steps over days: what it ends at, in how many steps, how many days apart, from when and from which strength. */
export const BatchReduction = z.object({
  waterTo: StatedStrength,
  steps: z.int().min(1).max(20),
  everyDays: z.int().min(1).max(60),
  since: Instant,
  fromAbv20: z.number().min(0).max(100),
});
export type BatchReduction = z.infer<typeof BatchReduction>;

export const BatchDraft = z.object({
  name: ShortText,
  recipeId: Id,
  recipeNumber: z.int().min(1).optional(),
  vessel: z.discriminatedUnion("kind", [
    z.object({ kind: z.literal("new"), label: ShortText, capacityMl: VolumeMl }),
    z.object({ kind: z.literal("existing"), vesselId: Id }),
  ]),
  /** What was really poured, in order. */
  pours: z.array(Pour).min(1).max(60),
  /** Days to rest; the recipe's own when left out; null for none. */
  restDays: z.int().min(0).max(3650).nullable().optional(),
  note: LongText.default(""),
});
/** What is asked of a reduction; when it began and from which strength the house says. */
const ReductionAsked = BatchReduction.pick({ waterTo: true, steps: true, everyDays: true });

export const BatchEdit = z.object({
  version: Version,
  name: ShortText.optional(),
  restDays: z.int().min(0).max(3650).nullable().optional(),
  finished: z.boolean().optional(),
  note: LongText.optional(),
  /** Water in steps over days, begun now; null for none. */
  reduction: ReductionAsked.nullable().optional(),
});
export const Batch = z.object({
  id: Id,
  version: Version,
  name: ShortText,
  recipeId: Id,
  recipeName: z.string(),
  recipeNumber: z.int(),
  vesselId: Id,
  vesselLabel: z.string(),
  madeAt: Instant,
  restDays: z.int().nullable(),
  restDueAt: Instant.nullable(),
  state: z.enum(["resting", "rested", "finished"]),
  note: LongText,
  /** Water in steps: what is done, and what is still to do from what the vessel holds now. */
  reduction: BatchReduction.extend({
    done: z.int(),
    left: z.array(z.object({ dueAt: Instant, addMl: z.number(), addG: z.number(), afterAbv20: z.number() })),
  }).nullable(),
  /** In order, from the ledger. */
  poured: z.array(z.object({ transferId: Id, label: z.string(), ml: z.number(), g: z.number() })),
  /** What it was when made, and what the vessel holds now. */
  made: Contents,
  now: Contents,
});
export type Batch = z.infer<typeof Batch>;
