import { z } from "zod";
import { Chance } from "./chance.ts";
import { Id } from "./fields.ts";
import { NameId } from "./glass.ts";
import { DiscriminationMethod } from "./question.ts";

const whose = { sheetId: Id, tasterId: Id, taster: z.string() };

/** Whether two whiskeys were told apart. Sets of sheets that were not locked are shown and count for nothing. */
export const SetsFound = z.object({
  method: DiscriminationMethod,
  /** The standard the sets follow, such as "ISO 4120". */
  standard: z.string(),
  task: z.string(),
  /** The two: `glass` is that of the finding's `glasses`. */
  between: z.array(z.object({ glass: z.int(), label: z.string(), timesPicked: z.int().nullable() })),
  /** `paired` with one said beforehand to have more: which of the two. */
  expected: z.int().nullable(),
  /** Sets answered on locked sheets. */
  answered: z.int(),
  /** Right of these; in a two-sided paired comparison the larger of the two counts. */
  right: z.int(),
  /** Of a right answer by luck alone, such as "1/3". */
  chance: z.string(),
  sides: z.union([z.literal(1), z.literal(2)]),
  /** How likely as many right, or more, by luck alone; null where nothing was answered. */
  luck: Chance.nullable(),
  /** Right answers of as many that luck reaches at most once in twenty; null where no number does. */
  needed: z.int().nullable(),
  sentence: z.string(),
  sheets: z.array(
    z.object({
      ...whose,
      counted: z.boolean(),
      answered: z.int(),
      /** Null in a two-sided paired comparison, where no answer is right or wrong. */
      right: z.int().nullable(),
      sets: z.array(
        z.object({
          set: z.int(),
          /** What stood there in order, a glass labelled "R" first. */
          glasses: z.array(z.object({ code: z.string(), glass: z.int() })),
          picked: z.array(z.string()).nullable(),
          right: z.boolean().nullable(),
        }),
      ),
    }),
  ),
});
export type SetsFound = z.infer<typeof SetsFound>;

/** The glasses by how close they were put to the target, and where the hidden target itself was put. */
export const ClosenessFound = z.object({
  target: z.object({ nameId: NameId, label: z.string() }),
  /** Closest first, by mean rank over the sheets counted; level ones share a place. */
  order: z.array(
    z.object({
      glass: z.int(),
      label: z.string(),
      target: z.boolean(),
      place: z.number(),
      meanRank: z.number(),
    }),
  ),
  /** Where each locked sheet with a ranking put the hidden target; the best of them where there are two. */
  sheets: z.array(z.object({ ...whose, rank: z.number(), of: z.int() })),
  /** Sheets that put it first, alone. */
  first: z.int(),
  /** How likely as many would, or more, by luck alone; null without a ranking. */
  luck: Chance.nullable(),
  sentence: z.string(),
});
export type ClosenessFound = z.infer<typeof ClosenessFound>;

/** How a taster's two orders of the same glasses agree: pairs put the same way again. */
export const AgreementFound = z.object({
  sheets: z.array(
    z.object({
      ...whose,
      kept: z.int(),
      pairs: z.int(),
      luck: Chance,
      /** Glass by glass: its place in the first round and in the second. */
      places: z.array(z.object({ glass: z.int(), label: z.string(), first: z.int(), second: z.int() })),
    }),
  ),
  kept: z.int(),
  pairs: z.int(),
  luck: Chance.nullable(),
  sentence: z.string(),
});
export type AgreementFound = z.infer<typeof AgreementFound>;
