import { z } from "zod";
import { SearchWhiskey } from "./search.ts";

const NEXT_LIMITS = { items: 60, tried: 200, rankings: 100, glasses: 12, parts: 30 } as const;

/** Glasses one person ranks at once. */
const MOST_RANKED = 12;

const Name = z.string().min(1).max(120);

/** What was tried and how it was ranked, as a file holds it: docs/next.md. */
export const NextFlightDraft = z
  .strictObject({
    /** Whiskeys as in a search. Of each only its id and profile count here. */
    items: z.array(SearchWhiskey).min(1).max(NEXT_LIMITS.items),
    /** Recipes poured so far: whole parts by whiskey. */
    tried: z
      .array(
        z.strictObject({
          id: Name,
          parts: z
            .record(Name, z.int().min(0).max(1000))
            .refine((parts) => Object.values(parts).some((part) => part > 0), {
              error: "at least one part above 0",
            }),
        }),
      )
      .max(NEXT_LIMITS.tried),
    /** One ranking a flight and taster, best first; each place the ids that share it. */
    rankings: z
      .array(z.array(z.array(Name).min(1).max(MOST_RANKED)).min(1).max(MOST_RANKED))
      .max(NEXT_LIMITS.rankings),
    /** In the next flight, the anchor counted in. */
    glasses: z.int().min(2).max(NEXT_LIMITS.glasses),
    /** Most whole parts of a new recipe. */
    maxParts: z.int().min(1).max(NEXT_LIMITS.parts),
    /** Where chance begins: the same gives the same flight. */
    seed: z.int().min(0).max(4_294_967_295),
  })
  .superRefine(({ items, tried, rankings }, context) => {
    const wrong = (path: (string | number)[], code: string, message: string, input: unknown): void =>
      context.addIssue({ code: "custom", path, message, input, params: { code } });
    const known = once(items, (n, id) => wrong(["items", n, "id"], "id_twice", "an id of its own", id));
    const poured = once(tried, (n, id) => wrong(["tried", n, "id"], "id_twice", "an id of its own", id));
    for (const [n, { parts }] of tried.entries())
      for (const id of Object.keys(parts))
        if (!known.has(id)) wrong(["tried", n, "parts", id], "item_unknown", "the id of an item", id);
    for (const [r, ranking] of rankings.entries()) {
      const seen = new Set<string>();
      for (const [g, group] of ranking.entries())
        for (const [n, id] of group.entries()) {
          const path = ["rankings", r, g, n];
          if (!poured.has(id)) wrong(path, "not_tried", "the id of what was tried", id);
          if (seen.has(id)) wrong(path, "ranked_twice", "an id that stands in this ranking once", id);
          seen.add(id);
        }
      if (seen.size > MOST_RANKED)
        wrong(["rankings", r], "too_many_ranked", `at most ${MOST_RANKED} glasses`, seen.size);
    }
  });
export type NextFlightDraft = z.infer<typeof NextFlightDraft>;

function once(
  list: readonly { readonly id: string }[],
  twice: (n: number, id: string) => void,
): ReadonlySet<string> {
  const seen = new Set<string>();
  for (const [n, { id }] of list.entries()) {
    if (seen.has(id)) twice(n, id);
    seen.add(id);
  }
  return seen;
}

export const NextFlightAnswer = z.object({
  /** The anchor first, where anything was tried. Fewer than asked for only where there are no more recipes. */
  glasses: z.array(z.object({ parts: z.record(z.string(), z.int()), why: z.string() })),
  /** Of what was tried: log worth less the mean of all recipes tried, and the chance that none of them is better. */
  posterior: z.array(z.object({ id: z.string(), mean: z.number(), sd: z.number(), pBest: z.number() })),
  stop: z.object({ advised: z.boolean(), why: z.string() }),
});
export type NextFlightAnswer = z.infer<typeof NextFlightAnswer>;
