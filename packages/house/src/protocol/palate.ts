import { z } from "zod";
import { Id } from "./fields.ts";
import { Drawn } from "./profile-board.ts";

/** What one more note of a glass is expected to teach. */
export const TaughtByNote = z.object({
  /** Name in the glass: "whiskey:id", "batch:id" or "vessel:id". */
  key: z.string(),
  label: z.string(),
  /** Shares by whiskey. */
  parts: z.record(z.string(), z.number()),
  /** The fullest vessel that can pour it. */
  vesselId: Id,
  /** Share that it takes off the sum of the variances of all levels looked at, 0 to 1. */
  share: z.number(),
  /** How far off its own level is, on the scale of 0 to 10: now, and once a note has spoken of it. */
  off: z.object({ before: z.number(), after: z.number() }),
  why: z.string(),
  /** Of that, how much is about each attribute, the three most. */
  attributes: z.array(z.object({ attribute: z.string(), share: z.number() })),
});
export type TaughtByNote = z.infer<typeof TaughtByNote>;

/** One attribute of a whiskey: what was learned, beside what its label and its notes alone say. */
export const LearnedLevel = z.object({
  attribute: z.string(),
  learned: Drawn,
  /** What the label alone says, before any note. */
  label: Drawn,
  /** The plain mean of notes of the whiskey by itself, and how many there are; null where there is none. */
  raw: z.object({ mean: z.number(), notes: z.int() }).nullable(),
  /** Sayings of mixes that held it. */
  inMixes: z.int(),
});
export type LearnedLevel = z.infer<typeof LearnedLevel>;

/** What a whiskey tastes of to the household. */
export const LearnedProfile = z.object({
  whiskeyId: Id,
  label: z.string(),
  headline: z.string(),
  /** Attributes that were spoken of, of it or of a mix that held it; in the order of core's list. */
  levels: z.array(LearnedLevel),
  /** What the next note of it would teach; null where it is not on the shelf. */
  next: TaughtByNote.nullable(),
  level: z.number(),
  method: z.string(),
});
export type LearnedProfile = z.infer<typeof LearnedProfile>;

/** What was learned of the table, and what to taste next to learn most of what is on the shelf. */
export const PalateBoard = z.object({
  headline: z.string(),
  /** Most first. */
  next: z.array(TaughtByNote),
  /** Root mean variance of a level of the whiskeys on the shelf, and how many whiskeys and attributes that is over. */
  doubt: z.object({ sd: z.number(), whiskeys: z.int(), attributes: z.int() }),
  /** How each uses the scale: says 5 + offset + stretch × (level − 5), off by `noise` besides. Null: what is written on the shelf. */
  tasters: z.array(
    z.object({
      tasterId: Id.nullable(),
      taster: z.string(),
      offset: z.number(),
      stretch: z.number(),
      noise: z.number(),
    }),
  ),
  /** A half-and-half mix is off the mean of its parts by so much. */
  mixing: z.number(),
  counted: z.object({ notes: z.int(), flights: z.int(), shelf: z.int() }),
  /** Glasses that teach nothing, and why. */
  silent: z.array(z.object({ label: z.string(), why: z.string() })),
  method: z.string(),
});
export type PalateBoard = z.infer<typeof PalateBoard>;
