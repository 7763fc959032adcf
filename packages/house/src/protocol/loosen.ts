import { z } from "zod";
import { FillShelf, RecipeFillDraft } from "./fill.ts";
import { RecipeFile } from "./recipe-file.ts";

/** How far off, and whether one slot or every slot at once is filled anew. */
export const LoosenAsked = z.strictObject({
  /** The most that the result may be off the original, in points of 10. */
  within: z.number().min(0).max(10),
  changing: z.enum(["one", "all"]).default("one"),
  weights: RecipeFillDraft.shape.weights,
});

/** A recipe file, and the whiskeys that rules are tried on. */
export const LoosenDraft = z.strictObject({ recipe: RecipeFile, shelf: FillShelf, ...LoosenAsked.shape });
export type LoosenDraft = z.infer<typeof LoosenDraft>;

export const LoosenAnswer = z.object({
  within: z.number(),
  changing: LoosenAsked.shape.changing.unwrap(),
  slots: z.array(
    z.object({
      slot: z.int(),
      parts: z.int(),
      /** The whiskey whose place it is. */
      named: z.string().nullable(),
      /** The rule the slot has now. */
      before: z.string().nullable(),
      /** The loosest; null where none of four conditions holds, or nothing is known of the slot's whiskey. */
      rule: z.string().nullable(),
      /** No rule of its kind lets in more whiskeys that are near enough. */
      proven: z.boolean(),
      lets: z.array(z.string()),
      keepsOutNear: z.array(z.string()),
      keepsOut: z.array(z.string()),
      /** Too little is known of these to say how far off they are. */
      notJudged: z.array(z.string()),
      /** The farthest of those let in, one slot changed; null where none is. */
      farthest: z.number().nullable(),
      /** Why there is no rule. */
      why: z.string().nullable(),
    }),
  ),
  /** What each slot by itself is held to. */
  eachWithin: z.number(),
  /** All slots filled anew at once, with judged whiskeys these rules let in: at most this far off. */
  together: z.number(),
  elapsedMs: z.number(),
});
export type LoosenAnswer = z.infer<typeof LoosenAnswer>;

export const ShelfLoosenAnswer = z.object({
  ...LoosenAnswer.shape,
  /** What ids are called. */
  names: z.record(z.string(), z.string()),
});
export type ShelfLoosenAnswer = z.infer<typeof ShelfLoosenAnswer>;
