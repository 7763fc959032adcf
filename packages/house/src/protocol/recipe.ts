import { z } from "zod";
import { Id, Instant, LongText, ShortText, StatedStrength, Version, VolumeMl } from "./fields.ts";
import { Contents } from "./vessel.ts";

/** A slot names a whiskey, or a batch made before (a blend in a blend). */
export const SlotOf = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("whiskey"), whiskeyId: Id }),
  z.object({ kind: z.literal("batch"), batchId: Id }),
]);
export type SlotOf = z.infer<typeof SlotOf>;
export const Slot = z.object({ parts: z.int().min(0).max(99), of: SlotOf });
export type Slot = z.infer<typeof Slot>;

const body = {
  slots: z.array(Slot).min(1).max(12),
  /** Water to this strength after mixing; null for none. */
  waterTo: StatedStrength.nullable(),
  restDays: z.int().min(0).max(3650).nullable(),
  /** Oak as words for now: piece, toast, how long. */
  oak: z.string().max(400),
  note: LongText,
};
export const RecipeBody = z.object({
  slots: body.slots,
  waterTo: body.waterTo.default(null),
  restDays: body.restDays.default(null),
  oak: body.oak.default(""),
  note: body.note.default(""),
});
export type RecipeBody = z.infer<typeof RecipeBody>;

export const RecipeDraft = z.object({
  name: ShortText,
  targetWhiskeyId: Id.nullable().default(null),
  ...RecipeBody.shape,
});
/** Name and target; a change of parts is a new version. */
export const RecipeEdit = z.object({
  version: Version,
  name: ShortText.optional(),
  targetWhiskeyId: Id.nullable().optional(),
});
export const RecipeVersionDraft = z.object({ version: Version, ...RecipeBody.shape });

export const RecipeVersion = z.object({ number: z.int().min(1), ...body, createdAt: Instant });
export type RecipeVersion = z.infer<typeof RecipeVersion>;
export const Recipe = z.object({
  id: Id,
  version: Version,
  name: ShortText,
  targetWhiskeyId: Id.nullable(),
  latest: RecipeVersion,
  createdAt: Instant,
  updatedAt: Instant,
});
export type Recipe = z.infer<typeof Recipe>;

/** What a recipe would give at `pouredMl`, the volume poured before contraction and water. */
export const RecipePreviewDraft = z.object({ pouredMl: VolumeMl.default(100), ...RecipeBody.shape });
export const RecipePreview = z.object({
  pouredMl: z.number(),
  contractionMl: z.number(),
  water: z.object({ ml: z.number(), g: z.number() }).nullable(),
  /** Why `waterTo` cannot be met, if so. */
  waterRefused: z.string().nullable(),
  result: Contents,
});
export type RecipePreview = z.infer<typeof RecipePreview>;
