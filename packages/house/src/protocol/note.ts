import { NOTED } from "@partsproof/core/notes";
import { z } from "zod";

/** The longest note that is read, in UTF-16 units. */
export const NOTE_LONGEST = 20_000;

export const NoteWhere = z.enum(["nose", "palate", "finish", "whole"]);

/** A tasting note to be read: nothing of it is kept. */
export const ReadDraft = z.object({
  text: z.string().max(NOTE_LONGEST),
  /** The part of the tasting that the note is of, until it says another. */
  where: NoteWhere.default("whole"),
});

const Intensity = z.object({ mean: z.number(), sd: z.number() });
/** Intensities by attribute. What was not spoken of is not there: it is unknown, not zero. */
const ReadProfile = z.record(z.string(), Intensity);
const Quote = z.tuple([z.int(), z.int()]);

export const NoteObservation = z.object({
  /** Start and end in the text, in UTF-16 units. */
  quote: Quote,
  word: z.string(),
  attribute: z.enum(NOTED),
  where: NoteWhere,
  /** 0 (not there) to 10, with its standard deviation. */
  strength: z.number(),
  spread: z.number(),
  stance: z.enum(["present", "absent", "less", "more", "unsure"]),
  /** Said of this glass, or by comparison with another one. */
  who: z.enum(["this", "compared"]),
});

export const ReadResult = z.object({
  observations: z.array(NoteObservation),
  /** Of the whole note. */
  profile: ReadProfile,
  /** Of each part of the tasting that was spoken of. */
  sections: z.partialRecord(NoteWhere, ReadProfile),
  remarks: z.array(
    z.object({
      quote: Quote,
      kind: z.enum(["liking", "memory", "other glass"]),
      liking: z.union([z.literal(1), z.literal(-1)]).optional(),
    }),
  ),
});
