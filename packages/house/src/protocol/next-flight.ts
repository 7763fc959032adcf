import { z } from "zod";
import { MOST_MIX_ML } from "./flight-pours.ts";
import { MarkSheet, markIssues, MOST_SHEETS } from "./mark-sheet.ts";
import { SearchWhiskey } from "./search.ts";

export const NEXT_LIMITS = {
  items: 60,
  tried: 200,
  rankings: 100,
  scores: MOST_SHEETS,
  glasses: 12,
  parts: 30,
} as const;

/** Glasses one person ranks at once. */
const MOST_RANKED = 12;

const Name = z.string().min(1).max(120);

/** Whole parts by item. */
const WholeParts = z
  .record(Name, z.int().min(0).max(1000))
  .refine((parts) => Object.values(parts).some((part) => part > 0), { error: "at least one part above 0" });

const Order = z.array(z.array(Name).min(1).max(MOST_RANKED)).min(1).max(MOST_RANKED);

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
          parts: WholeParts,
        }),
      )
      .max(NEXT_LIMITS.tried),
    /**
     * One ranking a flight and taster, or a choice of two; best first, each place the ids that share it. Where rankings say who made
     * them, what one taster likes may differ from what all like. With a flight, it is of the same sheet as the marks of that taster and
     * flight in `scores`, and one of the two is taken.
     */
    rankings: z
      .array(z.union([Order, z.strictObject({ taster: Name, order: Order, flight: Name.optional() })]))
      .max(NEXT_LIMITS.rankings),
    /** Marks, one sheet a flight and taster: how much liked, or, with a target, how close to it. */
    scores: z.array(MarkSheet).max(NEXT_LIMITS.scores).optional(),
    /** In the next flight, the anchor counted in. */
    glasses: z.int().min(2).max(NEXT_LIMITS.glasses),
    /** Most whole parts of a new recipe. */
    maxParts: z.int().min(1).max(NEXT_LIMITS.parts),
    /** Where chance begins: the same gives the same flight. */
    seed: z.int().min(0).max(4_294_967_295),
    /** Items that new recipes may hold, as what is on the shelf; all where left out. */
    mixes: z.array(Name).min(1).max(NEXT_LIMITS.items).optional(),
    /** Least and most share of a new recipe, by item. */
    least: z.record(Name, z.number().min(0).max(1)).optional(),
    most: z.record(Name, z.number().min(0).max(1)).optional(),
    fewestWhiskeys: z.int().min(1).max(NEXT_LIMITS.items).optional(),
    mostWhiskeys: z.int().min(1).max(NEXT_LIMITS.items).optional(),
    /** What was tried and still stands ready, though it may not be mixed anew. */
    ready: z.array(Name).max(NEXT_LIMITS.tried).optional(),
    /** What was tried and all is to come close to: in every flight. */
    target: Name.optional(),
    /** What is left: all glasses of the flight together take no more. There is enough of what it does not name. */
    shelf: z
      .strictObject({
        /** mL left, by item. */
        leftMl: z.record(Name, z.number().min(0).max(1_000_000)),
        /** mL that a new mix is made of, for all who taste; 30 where left out. Measured in steps of 0.5 mL. */
        mixMl: z.number().min(5).max(MOST_MIX_ML).optional(),
        /** mL that are poured of a whiskey that stands ready, for all who taste; 15 where left out. */
        pourMl: z.number().min(1).max(10_000).optional(),
        /** What stands ready besides `ready`, tried or not: a glass of it is poured as it is, and not mixed. */
        stands: z.array(WholeParts).max(NEXT_LIMITS.tried).optional(),
      })
      .optional(),
    /**
     * Glasses of the proposal, by their numbers from 1, that somebody decides otherwise: other parts, or null to leave it out. They change
     * nothing in what is proposed; `lacks` is then of the flight with them in it.
     */
    instead: z
      .array(
        z.strictObject({
          glass: z.int().min(1).max(NEXT_LIMITS.glasses),
          parts: WholeParts.nullable(),
        }),
      )
      .max(NEXT_LIMITS.glasses)
      .optional(),
  })
  .superRefine(
    ({ items, tried, rankings, scores, mixes, least, most, ready, target, shelf, instead }, context) => {
      const wrong = (path: (string | number)[], code: string, message: string, input: unknown): void =>
        context.addIssue({ code: "custom", path, message, input, params: { code } });
      const known = once(items, (n, id) => wrong(["items", n, "id"], "id_twice", "an id of its own", id));
      const poured = once(tried, (n, id) => wrong(["tried", n, "id"], "id_twice", "an id of its own", id));
      for (const [n, { parts }] of tried.entries())
        for (const id of Object.keys(parts))
          if (!known.has(id)) wrong(["tried", n, "parts", id], "item_unknown", "the id of an item", id);
      const mixed = [...(mixes ?? []).entries()].map(([n, id]) => [["mixes", n], id] as const);
      const bounded = (["least", "most"] as const).flatMap((name) =>
        Object.keys((name === "least" ? least : most) ?? {}).map((id) => [[name, id], id] as const),
      );
      const left = Object.keys(shelf?.leftMl ?? {}).map((id) => [["shelf", "leftMl", id], id] as const);
      const stands = (shelf?.stands ?? []).flatMap((parts, n) =>
        Object.keys(parts).map((id) => [["shelf", "stands", n, id], id] as const),
      );
      const own = (instead ?? []).flatMap(({ parts }, n) =>
        Object.keys(parts ?? {}).map((id) => [["instead", n, "parts", id], id] as const),
      );
      for (const [path, id] of [...mixed, ...bounded, ...left, ...stands, ...own])
        if (!known.has(id)) wrong([...path], "item_unknown", "the id of an item", id);
      for (const [n, { glass }] of (instead ?? []).entries())
        if (instead?.findIndex((one) => one.glass === glass) !== n)
          wrong(["instead", n, "glass"], "glass_twice", "a glass that is decided otherwise once", glass);
      for (const [n, id] of (ready ?? []).entries())
        if (!poured.has(id)) wrong(["ready", n], "not_tried", "the id of what was tried", id);
      if (target !== undefined && !poured.has(target))
        wrong(["target"], "not_tried", "the id of what was tried", target);
      markIssues(scores ?? [], poured, target, wrong);
      for (const [r, ranking] of rankings.entries()) {
        const seen = new Set<string>();
        const [order, within] = Array.isArray(ranking) ? [ranking, []] : [ranking.order, ["order"]];
        for (const [g, group] of order.entries())
          for (const [n, id] of group.entries()) {
            const path = ["rankings", r, ...within, g, n];
            if (!poured.has(id)) wrong(path, "not_tried", "the id of what was tried", id);
            if (seen.has(id)) wrong(path, "ranked_twice", "an id that stands in this ranking once", id);
            seen.add(id);
          }
        if (seen.size > MOST_RANKED)
          wrong(["rankings", r], "too_many_ranked", `at most ${MOST_RANKED} glasses`, seen.size);
      }
    },
  );
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
  /** The anchor first, where anything was tried, then the target. Fewer than asked for only where there are no more recipes. */
  glasses: z.array(
    z.object({
      parts: z.record(z.string(), z.int()),
      why: z.string(),
      kind: z.enum(["anchor", "target", "again", "new"]),
      /** Chance that it is better than the anchor; one half of the anchor itself, and where there is none. */
      better: z.number(),
    }),
  ),
  /** Of what was tried: log worth less the mean of all recipes tried, and the chance that none of them is better. */
  posterior: z.array(z.object({ id: z.string(), mean: z.number(), sd: z.number(), pBest: z.number() })),
  /** What can be mixed and is believed the best, tried or not; null where nothing can be. */
  favourite: z.object({ parts: z.record(z.string(), z.int()), tried: z.boolean() }).nullable(),
  stop: z.object({ advised: z.boolean(), why: z.string() }),
  /** Of what one taster likes, the share of the variance that is their own; 0 where all are taken for one palate. */
  ownShare: z.number(),
  /** Items of which too little is left: some mixes were not looked at, or not chosen, for them. */
  scarce: z.array(z.string()),
  /**
   * Of which items the flight, with what is decided otherwise in it, asks for more than is left: mL of all its glasses together, and mL left;
   * the most lacking first. None of the proposal as it is.
   */
  lacks: z.array(z.object({ id: z.string(), needMl: z.number(), leftMl: z.number() })),
  /** What all of it rests on: rankings and marks that were taken and say something. */
  counted: z.object({ rankings: z.int(), marks: z.int() }),
});
export type NextFlightAnswer = z.infer<typeof NextFlightAnswer>;
