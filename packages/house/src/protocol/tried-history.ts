import { z } from "zod";
import { Id } from "./fields.ts";
import { NextFlightDraft } from "./next-flight.ts";

export const TriedQuery = z.object({
  /** What new recipes may hold: the recipe's own whiskeys, or all of the shelf that somebody has said something of. */
  from: z.enum(["recipe", "shelf"]).default("recipe"),
});

/** A household's own history around a recipe: what POST /api/next takes, and what goes with its ids. */
export const TriedHistory = z.object({
  /** Items are whiskeys by id; what was tried goes by its name in the glass: `whiskey:<id>`, `batch:<id>` or `vessel:<id>`. */
  asked: NextFlightDraft,
  /** Of items and of what was tried. */
  names: z.record(z.string(), z.string()),
  /** What is left of each item on the shelf, mL, and its strength by the label, % vol. */
  stock: z.array(z.object({ id: Id, freeMl: z.number(), abv20: z.number() })),
  /** Vessels that can be poured from as they are, by the name of what is in them, with its parts by whiskey; the fullest first. */
  vessels: z.array(
    z.object({
      id: z.string(),
      vesselId: Id,
      label: z.string(),
      freeMl: z.number(),
      parts: z.record(z.string(), z.int()),
    }),
  ),
  /** Whether glasses were put in order and scored by liking, or by closeness to the target. */
  by: z.enum(["liking", "closeness"]),
  /** A sheet counts once: by its marks (scores), or as a ranking. */
  counted: z.object({ flights: z.int(), rankings: z.int(), marks: z.int(), tasters: z.int() }),
  /** What is not looked at, and why. */
  notes: z.array(z.string()),
});
export type TriedHistory = z.infer<typeof TriedHistory>;
