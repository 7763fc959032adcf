import { z } from "zod";
import { Id } from "./fields.ts";
import { NoteWhere } from "./note.ts";

/** An intensity of 0 to 10: mean, standard deviation, and the interval that holds 95 of 100, within the scale. */
export const Drawn = z.object({
  attribute: z.string(),
  mean: z.number(),
  sd: z.number(),
  low: z.number(),
  high: z.number(),
});

/**
 * What is known of one liquid. `kept`: what the shelf says of a whiskey; `predicted`: the mean of its parts; `observed`: what
 * sheets of revealed flights say.
 */
export const ProfileLine = z.object({
  key: z.string(),
  label: z.string(),
  kind: z.enum(["kept", "predicted", "observed"]),
  /** An attribute that is not there is unknown, never zero. In the order of core's list. */
  attributes: z.array(Drawn),
  /** Observed: the same by parts of the tasting. */
  sections: z.partialRecord(NoteWhere, z.array(Drawn)),
  /** Predicted: what cannot be, and which parts say nothing of it. */
  unknown: z.array(z.object({ attribute: z.string(), parts: z.array(z.string()) })),
  /** Observed: what it rests on; null for the others. */
  counted: z.object({ flights: z.int(), glasses: z.int(), tasters: z.int() }).nullable(),
  /** Where it comes from, in a sentence. */
  said: z.string(),
});
export type ProfileLine = z.infer<typeof ProfileLine>;

/** One liquid as it was observed beside what was predicted (or kept) of it. */
export const Against = z.object({
  label: z.string(),
  /** Keys of two lines. */
  predicted: z.string(),
  observed: z.string(),
  rows: z.array(
    z.object({
      attribute: z.string(),
      predicted: Drawn.nullable(),
      observed: Drawn.nullable(),
      /** Observed less predicted, with its interval of 95; null where one is unknown. */
      difference: z.object({ mean: z.number(), low: z.number(), high: z.number() }).nullable(),
      p: z.number().nullable(),
      /** Made good for all attributes compared on the board (Holm). */
      pTogether: z.number().nullable(),
      became: z.enum(["more", "less", "not told apart", "not predicted", "not observed"]),
    }),
  ),
  sentence: z.string(),
});
export type Against = z.infer<typeof Against>;

/** Profiles drawn together. Only what locked sheets of revealed flights say is observed. */
export const ProfileBoard = z.object({
  headline: z.string(),
  lines: z.array(ProfileLine),
  against: z.array(Against),
  /** How each taster uses the scale, learned over all that others spoke of too: says offset + stretch × (what is agreed − 5) + 5. */
  scales: z.array(z.object({ tasterId: Id, taster: z.string(), offset: z.number(), stretch: z.number() })),
  level: z.number(),
  method: z.string(),
});
export type ProfileBoard = z.infer<typeof ProfileBoard>;
