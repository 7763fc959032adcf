import { z } from "zod";
import { Id, Instant, VolumeMl } from "./fields.ts";
import { byAttribute } from "./profile.ts";
import { ShelfSearchDraft } from "./shelf-search.ts";
import { Contents } from "./vessel.ts";

const KEPT_UP_POINTS = 400;

export const KeptUpQuery = z.object({
  /** Of the course: no more than a drawing has use for. */
  points: z.coerce.number().int().min(2).max(2000).default(KEPT_UP_POINTS),
});

/** A bottle as it was poured from and topped up. */
export const KeptUp = z.object({
  vesselId: Id,
  label: z.string(),
  capacityMl: z.number(),
  /** Everything that ever went in, in the order in which it first did. */
  liquids: z.array(z.object({ liquidId: z.string(), label: z.string(), ageYears: z.number().nullable() })),
  additions: z.array(
    z.object({
      transferId: Id,
      at: Instant,
      from: z.string(),
      ml: z.number(),
      liquidIds: z.array(z.string()),
      /** Part of it that is still there. */
      left: z.number(),
      leftMl: z.number(),
      /** Days until half of it or less was left; null while more is. */
      halfLifeDays: z.number().nullable(),
    }),
  ),
  pours: z.int(),
  pouredMl: z.number(),
  /** In order; `parts` are shares of the mass, in the order of `liquids`. */
  course: z.array(
    z.object({
      at: Instant,
      volumeMl: z.number(),
      abv20: z.number().nullable(),
      parts: z.array(z.number()),
      /** Null where a whiskey in it states no age, or it is empty. */
      youngestYears: z.number().nullable(),
    }),
  ),
  now: Contents,
});
export type KeptUp = z.infer<typeof KeptUp>;

/** What to add next, so that the bottle comes closest to what it is to taste of. */
export const NextAdditionDraft = z.strictObject({
  like: ShelfSearchDraft.shape.like,
  profile: ShelfSearchDraft.shape.profile,
  change: ShelfSearchDraft.shape.change,
  weights: byAttribute(z.number().min(0).max(1e6)).optional(),
  /** All the room there is, where left out. */
  addMl: VolumeMl.optional(),
  maxBottles: z.int().min(1).max(4).default(2),
  maxParts: z.int().min(1).max(12).default(6),
  top: z.int().min(1).max(20).default(5),
});

export const NextAddition = z.object({
  addMl: z.number(),
  /** The attributes that count: those of the target that somebody has said of every whiskey in the bottle. */
  attributes: z.array(z.string()),
  unknown: z.array(z.string()),
  /** Distance of the bottle as it is; null of an empty one. */
  before: z.number().nullable(),
  provenOptimal: z.boolean(),
  cannotTellApart: z.int(),
  conflict: z.array(z.string()),
  withoutProfile: z.array(z.object({ id: Id, label: z.string() })),
  recipes: z.array(
    z.object({
      parts: z.array(
        z.object({
          whiskeyId: Id,
          label: z.string(),
          parts: z.int(),
          ml: z.number(),
          from: z.array(z.object({ vesselId: Id, label: z.string(), ml: z.number() })),
        }),
      ),
      /** Of the whole bottle afterwards. */
      distance: z.number(),
      expectedDistance: z.number().nullable(),
      predicted: z.record(z.string(), z.number()),
      after: Contents,
    }),
  ),
});
export type NextAddition = z.infer<typeof NextAddition>;
