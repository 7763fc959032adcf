import { z } from "zod";
import { Id } from "./fields.ts";
import { MixingUsed } from "./mixing.ts";
import { byAttribute } from "./profile.ts";
import { SearchAnswer } from "./search-answer.ts";
import { SearchProblem, SearchRules } from "./search.ts";

const Intensity = z.number().min(0).max(10);

/** A search among a household's whiskeys. Rules name whiskeys by id, makers and woods as the whiskeys do. */
export const ShelfSearchDraft = z.strictObject({
  /** Like this whiskey: its profile is the target, but for what nobody has said of it. It is not used itself unless `useIt`. */
  like: Id.optional(),
  useIt: z.boolean().default(false),
  /** The target, or instead of what `like` says of these. */
  profile: byAttribute(Intensity).optional(),
  /** More or less of an attribute than `like` has; stays within 0 to 10. */
  change: byAttribute(z.number().min(-10).max(10)).optional(),
  weights: byAttribute(z.number().min(0).max(1e6)).optional(),
  rules: SearchRules,
  top: SearchProblem.shape.top,
  distance: SearchProblem.shape.distance,
  /** Where left out: shares of the alcohol if all were tasted at one strength, else of the volume. */
  shares: SearchProblem.shape.shares,
  /** `mean`: every attribute by the mean of the parts, whatever mixes have shown. */
  mixing: z.enum(["learned", "mean"]).default("learned"),
  /** `learned`: whiskeys by what was learned of them, as soon as a revealed flight teaches any; else as the shelf has them. */
  levels: z.enum(["shelf", "learned"]).default("shelf"),
});
export type ShelfSearchDraft = z.infer<typeof ShelfSearchDraft>;

/** What goes with ids. */
const labels = {
  names: z.record(z.string(), z.string()),
  /** Prices are in this, per litre. */
  currency: z.string(),
  /** Left out, because nobody has said what they taste of. */
  withoutProfile: z.array(z.object({ id: Id, label: z.string() })),
  /** Attributes of the target that were found not to mix by the mean of the parts, and whether that counts here. */
  mixing: z.array(MixingUsed),
  /** Where levels of whiskeys come from; learned ones rest on so many notes of revealed flights. */
  levels: z.object({ from: z.enum(["shelf", "learned"]), notes: z.int() }),
};

/** The household's problem, as any search takes it: what is on the shelf, and what could be bought for it. */
export const ShelfProblem = z.object({
  problem: SearchProblem,
  /** Known whiskeys that are not on the shelf and still sold. */
  candidates: SearchProblem.shape.whiskeys,
  ...labels,
});
export type ShelfProblem = z.infer<typeof ShelfProblem>;

export const ShelfSearchAnswer = SearchAnswer.extend({
  ...labels,
  target: SearchProblem.shape.target,
  shares: z.enum(["volume", "alcohol"]),
});
export type ShelfSearchAnswer = z.infer<typeof ShelfSearchAnswer>;
