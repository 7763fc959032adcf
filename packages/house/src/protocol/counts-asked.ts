import { z } from "zod";

/** What one question about numbers may hold. More is refused and not cut short. */
export const COUNTS_LIMITS = {
  /** Answers in a difference test. */
  trials: 10_000,
  /** The same one at a time. */
  turns: 2_000,
  glasses: 60,
  /** Glasses on all sheets together. */
  named: 1_200,
  /** Ways to know so many of each whiskey, where some are poured more than once. */
  ways: 3_000,
  items: 200,
  rankings: 5_000,
  /** Places in all rankings together. */
  placed: 50_000,
  /** Tasters times items, where tasters are told apart. */
  tasted: 300,
  /** Of all rankings: for each place and each size of tie, the items left, squared, times the size. */
  tieWork: 50_000_000,
  /** Of one table of comparisons, each cell. */
  count: 1_000_000,
  components: 12,
  runs: 1_000,
  /** How far shares may be from 1 together: thirds written as 0.33 are. */
  shareSlip: 0.015,
} as const;

const Name = z.string().min(1).max(120);
const Level = z.number().min(0.5).max(0.999);
const Risk = z.number().min(0.001).max(0.5);

export const CountsTest = z.enum([
  "triangle",
  "duo_trio",
  "two_afc",
  "three_afc",
  "tetrad",
  "two_out_of_five",
]);
export type CountsTest = z.infer<typeof CountsTest>;

/** How large a difference: the share of tasters that can tell while the rest guess, or the distance d′. */
export const CountsEffect = z.union([
  z.strictObject({ share: z.number().min(0.01).max(0.99) }),
  z.strictObject({ dPrime: z.number().min(0.01).max(6) }),
]);
export type CountsEffect = z.infer<typeof CountsEffect>;

type Refine = z.RefinementCtx;
/** One issue: its word, what the place requires, and what stood there. */
function wrong(
  context: Refine,
  code: string,
  path: readonly (string | number)[],
  message: string,
  input: unknown,
): void {
  context.addIssue({ code: "custom", path: [...path], message, input, params: { code } });
}

export const DifferDraft = z
  .strictObject({
    test: CountsTest,
    right: z.int().min(0).max(COUNTS_LIMITS.trials),
    of: z.int().min(1).max(COUNTS_LIMITS.trials),
    /** 2 for a paired comparison of which nothing was expected. 1 where left out. */
    sides: z.union([z.literal(1), z.literal(2)]).optional(),
    /** Of the intervals, 0.95 where left out. */
    level: Level.optional(),
    /** Asks for likeness too: is the difference smaller than one that would matter? */
    matters: CountsEffect.optional(),
  })
  .superRefine(({ test, right, of, sides }, context) => {
    if (right > of) wrong(context, "right_above_of", ["right"], `at most ${of}, which is of`, right);
    if (sides === 2 && test !== "two_afc")
      wrong(context, "sides_not_for_test", ["sides"], `1, as two sides are for two_afc`, sides);
  });
export type DifferDraft = z.infer<typeof DifferDraft>;

export const InTurnDraft = z.strictObject({
  test: CountsTest,
  /** In the order they were given, true for right. */
  results: z.array(z.boolean()).min(1).max(COUNTS_LIMITS.turns),
  /** The difference that Wald's test would find; a share of 0.5 where left out. */
  effect: CountsEffect.optional(),
  /** Risk of finding what is not there, 0.05 where left out. */
  alpha: Risk.optional(),
  /** Risk of missing the effect, 0.2 where left out. */
  beta: Risk.optional(),
  level: Level.optional(),
});
export type InTurnDraft = z.infer<typeof InTurnDraft>;

const glassesOf = {
  glasses: z.int().min(1).max(COUNTS_LIMITS.glasses),
  /** Sheets filled by themselves, each with as many glasses; 1 where left out. */
  sheets: z.int().min(1).max(COUNTS_LIMITS.named).optional(),
  /** How often each whiskey is poured, adding up to the glasses; its name may be used as often. All different where left out. */
  pours: z.array(z.int().min(1).max(COUNTS_LIMITS.glasses)).min(1).max(COUNTS_LIMITS.glasses).optional(),
  /** Names on offer that stand in no glass; 0 where left out. */
  distractors: z.int().min(0).max(COUNTS_LIMITS.glasses).optional(),
};
interface Glasses {
  readonly glasses: number;
  readonly sheets?: number | undefined;
  readonly pours?: readonly number[] | undefined;
}
function needGlasses({ glasses, sheets = 1, pours }: Glasses, context: Refine): void {
  if (glasses * sheets > COUNTS_LIMITS.named)
    wrong(
      context,
      "too_many_glasses",
      ["sheets"],
      `at most ${COUNTS_LIMITS.named} glasses on all sheets together`,
      sheets,
    );
  const poured = pours?.reduce((sum, times) => sum + times, 0);
  if (poured !== undefined && poured !== glasses)
    wrong(context, "pours_do_not_add_up", ["pours"], `counts that add up to the ${glasses} glasses`, pours);
}

/** In how many ways so many of each whiskey can be known; 1 where all differ, as any are then as good as others. */
export const waysToKnow = (pours: readonly number[] = []): number =>
  pours.some((times) => times > 1) ? pours.reduce((ways, times) => ways * (times + 1), 1) : 1;

export const MatchDraft = z
  .strictObject({
    ...glassesOf,
    /** Named right, over all sheets together. */
    right: z.int().min(0).max(COUNTS_LIMITS.named),
    /** Each name was told to be right or wrong, and what stood there, before the next was given. */
    told: z.boolean().optional(),
    level: Level.optional(),
  })
  .superRefine((asked, context) => {
    needGlasses(asked, context);
    const most = asked.glasses * (asked.sheets ?? 1);
    if (asked.right > most)
      wrong(
        context,
        "right_above_glasses",
        ["right"],
        `at most ${most}, the glasses of all sheets`,
        asked.right,
      );
  });
export type MatchDraft = z.infer<typeof MatchDraft>;

const Items = z.array(Name).min(2).max(COUNTS_LIMITS.items);

function needDifferent(field: string, names: readonly string[], context: Refine): ReadonlySet<string> {
  const seen = new Set<string>();
  for (const [n, name] of names.entries()) {
    if (seen.has(name))
      wrong(context, "name_twice", [field, n], "a name that does not stand before it", name);
    seen.add(name);
  }
  return seen;
}

/** What ties cost: every size that occurs is thought of at every place. */
function tieWork(rankings: readonly (readonly (readonly string[])[])[]): number {
  const sizes = new Set(rankings.flatMap((ranking) => ranking.map((group) => group.length)));
  const ties = [...sizes].reduce((sum, size) => sum + (size > 1 ? size : 0), 0);
  let work = 0;
  for (const ranking of rankings) {
    let left = ranking.reduce((sum, group) => sum + group.length, 0);
    for (const group of ranking) {
      work += left * left * ties;
      left -= group.length;
    }
  }
  return work;
}

/** Rankings as a file holds them: docs/counts.md. */
export const RankDraft = z
  .strictObject({
    items: Items,
    /** Each best first; inner lists are ties; items that are not listed were not poured. */
    rankings: z
      .array(z.array(z.array(Name).min(1)).min(1))
      .min(1)
      .max(COUNTS_LIMITS.rankings),
    /** Whose each ranking is: those of one taster hang together. All of different people where left out. */
    tasters: z.array(Name).optional(),
    /** In which order the glasses of each ranking were served: the first and the last place are taken out. */
    served: z.array(z.array(Name)).optional(),
    level: Level.optional(),
  })
  .superRefine(({ items, rankings, tasters, served }, context) => {
    const known = needDifferent("items", items, context);
    let placed = 0;
    for (const [n, ranking] of rankings.entries()) {
      const seen = new Set<string>();
      for (const [place, group] of ranking.entries()) {
        for (const [at, name] of group.entries()) {
          placed += 1;
          const path = ["rankings", n, place, at];
          if (!known.has(name)) wrong(context, "name_unknown", path, "one of the items", name);
          else if (seen.has(name))
            wrong(context, "name_twice", path, "an item that is not in this ranking yet", name);
          seen.add(name);
        }
      }
      const order = served?.[n];
      if (
        order !== undefined &&
        (order.length !== seen.size ||
          new Set(order).size !== seen.size ||
          !order.every((name) => seen.has(name)))
      )
        wrong(context, "served_not_ranked", ["served", n], "the items of this ranking, each once", order);
    }
    if (placed > COUNTS_LIMITS.placed)
      wrong(
        context,
        "too_many_places",
        ["rankings"],
        `at most ${COUNTS_LIMITS.placed} places in all`,
        placed,
      );
    if (tieWork(rankings) > COUNTS_LIMITS.tieWork)
      wrong(
        context,
        "ties_too_large",
        ["rankings"],
        "ties of fewer items, or of fewer sizes: these take too long",
        placed,
      );
    for (const [field, list] of [
      ["tasters", tasters],
      ["served", served],
    ] as const)
      if (list !== undefined && list.length !== rankings.length)
        wrong(
          context,
          "not_one_each",
          [field],
          `${rankings.length} entries, one for each ranking`,
          list.length,
        );
    const judged = new Set(tasters).size * items.length;
    if (judged > COUNTS_LIMITS.tasted)
      wrong(
        context,
        "too_many_tasters",
        ["tasters"],
        `at most ${COUNTS_LIMITS.tasted} tasters times items`,
        judged,
      );
  });
export type RankDraft = z.infer<typeof RankDraft>;

const Times = z.int().min(0).max(COUNTS_LIMITS.count);
const Table = z.array(z.array(Times));

/** Comparisons of two as a file holds them: docs/counts.md. */
export const PairsDraft = z
  .strictObject({
    items: Items,
    /** `wins[i][j]`: times that item i beat item j. */
    wins: Table.optional(),
    /** `ties[i][j]` and `ties[j][i]`: times that neither did. */
    ties: Table.optional(),
    /** In place of both, where the effect of coming first is asked for. */
    served: z
      .array(
        z.strictObject({
          first: Name,
          second: Name,
          firstWon: Times,
          secondWon: Times,
          tied: Times.optional(),
        }),
      )
      .min(1)
      .max(COUNTS_LIMITS.rankings)
      .optional(),
    level: Level.optional(),
  })
  .superRefine(({ items, wins, ties, served }, context) => {
    const known = needDifferent("items", items, context);
    if ((wins === undefined) === (served === undefined))
      wrong(
        context,
        "wins_or_served",
        ["wins"],
        "either wins or served, and not both",
        wins === undefined ? null : "both",
      );
    if (served !== undefined && ties !== undefined)
      wrong(context, "wins_or_served", ["ties"], "no ties beside served", "both");
    for (const [field, table] of [
      ["wins", wins],
      ["ties", ties],
    ] as const)
      if (table !== undefined) needSquare(field, table, items.length, context);
    for (const [i, row] of (ties ?? []).entries())
      for (const [j, times] of row.entries())
        if (j < i && ties?.[j]?.[i] !== times)
          wrong(
            context,
            "ties_not_symmetric",
            ["ties", i, j],
            `${ties?.[j]?.[i]}, as at ${j}, ${i}: ties go both ways`,
            times,
          );
    for (const [n, { first, second }] of (served ?? []).entries()) {
      for (const [place, name] of [
        ["first", first],
        ["second", second],
      ] as const)
        if (!known.has(name)) wrong(context, "name_unknown", ["served", n, place], "one of the items", name);
      if (first === second)
        wrong(context, "compared_with_itself", ["served", n, "second"], "another item than first", second);
    }
  });
export type PairsDraft = z.infer<typeof PairsDraft>;

function needSquare(
  field: "wins" | "ties",
  table: readonly (readonly number[])[],
  size: number,
  context: Refine,
): void {
  if (table.length !== size)
    wrong(context, "table_not_square", [field], `${size} rows, one for each item`, table.length);
  for (const [i, row] of table.entries()) {
    if (row.length !== size)
      wrong(context, "table_not_square", [field, i], `${size} counts, one for each item`, row.length);
    if ((row[i] ?? 0) !== 0)
      wrong(context, "compared_with_itself", [field, i, i], "0: nothing is compared with itself", row[i]);
  }
}

export const MixtureModelName = z.enum(["linear", "quadratic", "special-cubic"]);
const Share = z.number().min(0).max(1);

/** Mixtures that were measured, as a file holds them: docs/counts.md. */
export const MixtureDraft = z
  .strictObject({
    components: z
      .array(
        Name.refine((name) => !name.includes(":"), {
          error: "a name without a colon, which stands between names",
        }),
      )
      .min(2)
      .max(COUNTS_LIMITS.components),
    runs: z
      .array(z.strictObject({ x: z.array(Share), y: z.number().min(-1e12).max(1e12) }))
      .min(1)
      .max(COUNTS_LIMITS.runs),
    /** Scheffé's polynomial; quadratic where left out. */
    model: MixtureModelName.optional(),
    level: Level.optional(),
  })
  .superRefine(({ components, runs }, context) => {
    needDifferent("components", components, context);
    for (const [n, { x }] of runs.entries()) {
      if (x.length !== components.length)
        wrong(
          context,
          "not_one_each",
          ["runs", n, "x"],
          `${components.length} shares, one for each component`,
          x.length,
        );
      const sum = x.reduce((total, share) => total + share, 0);
      if (Math.abs(sum - 1) > COUNTS_LIMITS.shareSlip)
        wrong(
          context,
          "shares_do_not_add_up",
          ["runs", n, "x"],
          `shares that add up to 1, within ${COUNTS_LIMITS.shareSlip}`,
          sum,
        );
    }
  });
export type MixtureDraft = z.infer<typeof MixtureDraft>;

/** What chosen numbers could show, before a flight is poured. */
export const CouldShowDraft = z.discriminatedUnion("of", [
  z.strictObject({
    of: z.literal("differ"),
    test: CountsTest,
    trials: z.int().min(1).max(COUNTS_LIMITS.trials),
    effect: CountsEffect,
    alpha: Risk.optional(),
    beta: Risk.optional(),
  }),
  z.strictObject({
    of: z.literal("in-turn"),
    test: CountsTest,
    /** Trials after which one gives up. */
    trials: z.int().min(1).max(500),
    effect: CountsEffect,
    alpha: Risk.optional(),
    beta: Risk.optional(),
  }),
  z
    .strictObject({
      of: z.literal("match"),
      ...glassesOf,
      /** Glasses of each sheet that the taster really knows; the rest are guessed. */
      known: z.int().min(1).max(COUNTS_LIMITS.glasses),
      alpha: Risk.optional(),
    })
    .superRefine((asked, context) => {
      needGlasses(asked, context);
      if (waysToKnow(asked.pours) > COUNTS_LIMITS.ways)
        wrong(
          context,
          "too_many_ways",
          ["pours"],
          `at most ${COUNTS_LIMITS.ways} ways to know so many of each`,
          asked.pours,
        );
      if (asked.known > asked.glasses)
        wrong(
          context,
          "known_above_glasses",
          ["known"],
          `at most ${asked.glasses}, the glasses`,
          asked.known,
        );
    }),
  z.strictObject({
    of: z.literal("rank"),
    sheets: z.int().min(1).max(200),
    /** Natural logs of how much the glasses are liked; only differences count. 1 apart: chosen before the other 73 times in 100. */
    logWorth: z.array(z.number().min(-10).max(10)).min(2).max(12),
    alpha: Risk.optional(),
    /** How many flights are drawn, 1000 where left out. */
    flights: z.int().min(100).max(4000).optional(),
  }),
]);
export type CouldShowDraft = z.infer<typeof CouldShowDraft>;
