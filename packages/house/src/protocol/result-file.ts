import { z } from "zod";
import { LongText, ShortText } from "./fields.ts";
import { NamedWhiskey, Sha256 } from "./recipe-file.ts";

/** What a result file says it is: what came of a recipe in another kitchen. */
export const RESULT_FILE_FORMAT = "parts-and-proof/result";
export const RESULT_FILE_TYPE = "application/vnd.parts-and-proof.result+json";

const Percent = z.number().min(0).max(100);

/** Where one taster put the blend among the glasses of one blind flight. */
const SheetPlace = z.looseObject({
  /** Who, as a number within this file: the same number is the same taster. Nobody is named. */
  taster: z.int().min(1).max(500),
  /** 1 is the best liked, or the closest; level ones share the mean of their places. */
  place: z.number().min(1).max(16),
  /** Glasses in the ranking, this one among them. */
  of: z.int().min(2).max(16),
  /** How many glasses stand level with it, itself among them. */
  level: z.int().min(1).max(16),
});

/** What somebody who made a recipe sends back: docs/result-file.md. Nothing personal but what they chose to say. */
export const ResultFile = z
  .looseObject({
    format: z.literal(RESULT_FILE_FORMAT),
    version: z.int().min(1),
    /** Which recipe: its file's name and hash. */
    recipe: z.looseObject({ name: ShortText, sha256: Sha256 }),
    /** What the kitchen wants to be called; left out, it is called by nothing. */
    kitchen: ShortText.optional(),
    /** What stood in each slot of the recipe; left out of a slot that stayed empty. */
    slots: z
      .array(
        z.looseObject({
          slot: z.int().min(1).max(12),
          parts: z.int().min(1).max(99),
          whiskey: NamedWhiskey.optional(),
        }),
      )
      .max(12),
    /** What was bottled, % vol at 20 °C. */
    abv: Percent.optional(),
    restDays: z.int().min(0).max(3650).optional(),
    /** Blind flights that it stood in, each revealed. */
    flights: z
      .array(
        z.looseObject({
          /** Whether the order asked for was one of liking, or of closeness to a target. */
          asked: z.enum(["liked", "close"]),
          /** What stood beside it, where that is told. */
          beside: z.array(ShortText).max(16).optional(),
          sheets: z.array(SheetPlace).max(500),
        }),
      )
      .max(200),
    notes: LongText.optional(),
  })
  .superRefine(({ flights }, context) => {
    for (const [f, { sheets }] of flights.entries())
      for (const [s, { place, of, level }] of sheets.entries())
        if (place > of || level > of)
          context.addIssue({
            code: "custom",
            path: ["flights", f, "sheets", s],
            message: "a place among the glasses there were",
            input: { place, of, level },
          });
  });
export type ResultFile = z.infer<typeof ResultFile>;
