import { z } from "zod";
import { Id, Instant, StatedStrength } from "./fields.ts";

/** How one thing that was poured did in a flight that is revealed. */
export const PlayedFlight = z.object({
  flightId: Id,
  name: z.string(),
  revealedAt: Instant,
  question: z.string(),
  /** Orders that had it, and how many of them had nothing before it (a tie at the front counts as its part). */
  orders: z.int(),
  first: z.number(),
  /** How often pure luck puts one of so many first, over the same orders. */
  firstByLuck: z.number(),
  /** Of all orders, 1 the best (how close: the closest); ties share. Null where nothing was put in order. */
  meanRank: z.number().nullable(),
  /** Glasses in an order, in the mean. */
  meanOf: z.number().nullable(),
  /** Mean of the scores it was given, where it was given any. */
  meanScore: z.number().nullable(),
  /** The same in words. */
  said: z.string(),
});
export type PlayedFlight = z.infer<typeof PlayedFlight>;

/** What differs from the version before. Shares are of what is poured before water. */
const Change = z.discriminatedUnion("what", [
  z.object({
    what: z.literal("slot"),
    label: z.string(),
    partsBefore: z.int().nullable(),
    partsNow: z.int().nullable(),
    shareBefore: z.number(),
    shareNow: z.number(),
  }),
  z.object({
    what: z.literal("water"),
    before: StatedStrength.nullable(),
    now: StatedStrength.nullable(),
  }),
  z.object({ what: z.literal("rest"), before: z.int().nullable(), now: z.int().nullable() }),
  z.object({ what: z.literal("oak"), before: z.string(), now: z.string() }),
]);
export type LineageChange = z.infer<typeof Change>;

const LineageBatch = z.object({
  batchId: Id,
  name: z.string(),
  madeAt: Instant,
  state: z.enum(["resting", "rested", "finished"]),
  ml: z.number(),
  abv20: z.number().nullable(),
  leftMl: z.number(),
  /** Recipes that have it in a slot: a blend in a blend. */
  usedIn: z.array(z.object({ recipeId: Id, name: z.string(), number: z.int() })),
  flights: z.array(PlayedFlight),
});
export type LineageBatch = z.infer<typeof LineageBatch>;

const LineageVersion = z.object({
  number: z.int(),
  createdAt: Instant,
  parts: z.array(z.object({ label: z.string(), parts: z.int(), batchId: Id.nullable() })),
  /** Empty for the first version, and for one in which only words changed. */
  changes: z.array(Change),
  note: z.string(),
  batches: z.array(LineageBatch),
});
export type LineageVersion = z.infer<typeof LineageVersion>;

export const Lineage = z.object({
  /** Oldest first, each with its versions, oldest first. */
  recipes: z.array(
    z.object({ recipeId: Id, name: z.string(), createdAt: Instant, versions: z.array(LineageVersion) }),
  ),
});
export type Lineage = z.infer<typeof Lineage>;

export const LineageQuery = z.object({
  /** Only this recipe, and what it comes from and goes into. */
  recipe: Id.optional(),
});
