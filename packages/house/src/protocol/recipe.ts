import { z } from "zod";
import { Id, Instant, LongText, ShortText, StatedStrength, Version, VolumeMl } from "./fields.ts";
import { NamedWhiskey, RecipeOrigin, RuleText } from "./recipe-file.ts";
import { Contents } from "./vessel.ts";

const RECIPE_SLOTS = 12;
/** What another house said of its whiskey, as far as this one knows the fields; the file itself is kept whole. */
const OtherWhiskey = z.object(NamedWhiskey.shape);

/**
 * A slot names a whiskey, or a batch made before (a blend in a blend); or it is open: anything that keeps its rule, or the whiskey that
 * another house named, which this one does not have.
 */
export const SlotOf = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("whiskey"), whiskeyId: Id }),
  z.object({ kind: z.literal("batch"), batchId: Id }),
  z.object({ kind: z.literal("open"), named: OtherWhiskey.nullable().default(null) }),
]);
export type SlotOf = z.infer<typeof SlotOf>;
export const Slot = z.object({
  parts: z.int().min(0).max(99),
  of: SlotOf,
  /** What any other that stands here must keep: docs/slots.md. */
  rule: RuleText.optional(),
  /** Why it stands here, in words. */
  reason: LongText.optional(),
  /** The slot, from 1, of the recipe file that this line came in with. */
  from: z.int().min(1).max(RECIPE_SLOTS).optional(),
});
export type Slot = z.infer<typeof Slot>;

const body = {
  slots: z.array(Slot).min(1).max(RECIPE_SLOTS),
  /** Water to this strength after mixing; null for none. */
  waterTo: StatedStrength.nullable(),
  restDays: z.int().min(0).max(3650).nullable(),
  /** Oak as words for now: piece, toast, how long. */
  oak: z.string().max(400),
  note: LongText,
  /** Recipes it came from, the nearest first; left out where it came from none. */
  lineage: z.array(z.object(RecipeOrigin.shape)).max(50).optional(),
};
export const RecipeBody = z.object({
  slots: body.slots,
  waterTo: body.waterTo.default(null),
  restDays: body.restDays.default(null),
  oak: body.oak.default(""),
  note: body.note.default(""),
  lineage: body.lineage,
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
