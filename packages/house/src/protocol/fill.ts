import { z } from "zod";
import { FillWhiskey, RecipeFile } from "./recipe-file.ts";

/** What one filling may hold. More is refused and not cut short. */
export const FILL_LIMITS = { whiskeys: 500, couldBuy: 100, top: 20 } as const;

const Weight = z.number().min(0).max(1e6);

/** A shelf as a file holds it. */
export const FillShelf = z.strictObject({
  whiskeys: z
    .array(FillWhiskey)
    .max(FILL_LIMITS.whiskeys)
    .superRefine((whiskeys, context) => {
      const seen = new Set<string>();
      for (const [n, { id }] of whiskeys.entries()) {
        if (seen.has(id))
          context.addIssue({
            code: "custom",
            path: [n, "id"],
            message: "an id that no whiskey before it has",
            input: id,
          });
        seen.add(id);
      }
    }),
});

export const RecipeFillDraft = z.strictObject({
  recipe: RecipeFile,
  shelf: FillShelf,
  /** Bottles that could be bought, tried in slots that stay empty. */
  couldBuy: FillShelf.shape.whiskeys.max(FILL_LIMITS.couldBuy).optional(),
  /** Original and filling are both reduced to this strength, % vol. */
  waterTo: z.number().min(1).max(100).optional(),
  /** So much poured in all, mL; each share of it must be on the shelf. */
  pouredMl: z.number().min(1).max(1e7).optional(),
  /** 1 where left out. */
  weights: z
    .strictObject({
      profile: z.record(z.string().min(1).max(120), Weight).optional(),
      strength: Weight.optional(),
      age: Weight.optional(),
    })
    .optional(),
  /** How many fillings; 1 where left out. */
  top: z.int().min(1).max(FILL_LIMITS.top).optional(),
});
export type RecipeFillDraft = z.infer<typeof RecipeFillDraft>;

const Missing = z.object({ rule: z.string(), fact: z.string() });

const Filling = z.object({
  /** By slot, null where it stays empty. */
  ids: z.array(z.string().nullable()),
  /** Points of 10 off the original, whatever the missing facts turn out to be. */
  distance: z.number(),
  /** The same if they turn out best. */
  least: z.number(),
  off: z.array(
    z.object({
      /** An attribute, "strength" or "age". */
      what: z.string(),
      original: z.number(),
      low: z.number(),
      high: z.number().nullable(),
      most: z.number(),
      least: z.number(),
    }),
  ),
  /** % vol of the exact mix at 20 °C, before water. */
  abv: z.number(),
  /** For a litre of the mix, to `waterTo`; null where none is asked for or the mix is weaker. */
  waterMl: z.number().nullable(),
  youngestYears: z.number().nullable(),
  pricePerLitre: z.number().nullable(),
});

export const RecipeFillAnswer = z.object({
  slots: z.array(
    z.object({
      slot: z.int(),
      parts: z.int(),
      /** As the language prints it; null where only a whiskey is named. */
      rule: z.string().nullable(),
      candidates: z.array(z.string()),
      rejected: z.array(
        z.object({
          id: z.string(),
          breaks: z.array(z.object({ rule: z.string(), value: z.union([z.number(), z.string()]) })),
          missing: z.array(Missing),
        }),
      ),
      /** Nothing known speaks against these; the missing facts decide. */
      asked: z.array(z.object({ id: z.string(), missing: z.array(Missing) })),
    }),
  ),
  best: Filling.nullable(),
  /** How far the best is from the original; null when nothing is filled. */
  distance: z.number().nullable(),
  /** The next best, up to `top` in all. */
  others: z.array(Filling),
  /** No other filling is closer than the last listed. */
  proven: z.boolean(),
  /** Slots that stay empty, from 1. */
  empty: z.array(z.int()),
  /** What would fill them best: the rule, and about which profile and strength. */
  wanted: z.array(
    z.object({
      slot: z.int(),
      rule: z.string(),
      profile: z.record(z.string(), z.number()),
      abv: z.number().nullable(),
    }),
  ),
  /** With bottles of `couldBuy` in the empty slots, the closest first. */
  bought: z.array(Filling),
  /** What closeness was measured by; what is not known of the original does not count. */
  counted: z.object({ attributes: z.array(z.string()), strength: z.boolean(), age: z.boolean() }),
  elapsedMs: z.number(),
});
export type RecipeFillAnswer = z.infer<typeof RecipeFillAnswer>;
