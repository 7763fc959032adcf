import { z } from "zod";

const REST_LIMITS = { attributes: 12, tastings: 200, days: 3650, pieces: 12 } as const;

const Name = z.string().trim().min(1).max(120);
const Day = z.number().min(0).max(REST_LIMITS.days);
const Level = z.number().min(0).max(10);

const AreaPerLitre = z.number().min(1).max(4600);
const ThicknessMm = z.number().min(0.2).max(200);
const Use = z.int().min(1).max(5);

/** Wood with days of its own. */
const PieceIn = z.strictObject({
  /** Contact area a litre, cm². */
  areaPerLitre: z.number().positive().max(4600),
  /** Face to face, mm; 7 where left out. */
  thicknessMm: ThicknessMm.optional(),
  /** 1 for new wood, 2 for its second use. */
  use: Use.optional(),
  /** Days since the first wood went in; with it where left out. */
  inDay: Day.optional(),
  /** When it came out; it is in still where left out. */
  outDay: Day.optional(),
});

/** What is known of a rest on oak, as a file holds it: docs/guide/rest.md. */
export const RestDraft = z
  .strictObject({
    /** The rule: the oak comes out when this attribute reaches this, 0 to 10. */
    pull: z.strictObject({ attribute: Name, level: z.number().min(0.5).max(10) }),
    /** From which level on the oak leads; one and a half more than the pull level where left out. */
    leadsAt: z.number().min(0.5).max(12).optional(),
    /** Days since the oak went in; the last tasting's day where left out. */
    today: Day.optional(),
    /** Where the wood lies; what is left out is as the beliefs are said for: cask contact, 7 mm, 60 % vol, 20 °C, new wood. */
    oak: z
      .strictObject({
        /** Contact area a litre, cm². */
        areaPerLitre: AreaPerLitre.optional(),
        /** Face to face, mm. */
        thicknessMm: ThicknessMm.optional(),
        /** 1 for new wood, 2 for its second use. */
        use: Use.optional(),
        /** Instead of these three, where wood went in or came out on days of its own. */
        pieces: z.array(PieceIn).min(1).max(REST_LIMITS.pieces).optional(),
      })
      .optional(),
    abv20: z.number().min(20).max(80).optional(),
    celsius: z.number().min(0).max(45).optional(),
    /** A quick and a slow stage, or Peleg's curve. Two stages where left out. */
    form: z.enum(["two-stage", "peleg"]).optional(),
    /** Attributes that rise and then fall, as tannin does; all others go up to a plateau. */
    falling: z.array(Name).max(REST_LIMITS.attributes).optional(),
    /** What was tasted: the day since the oak went in (0: before) and levels of 0 to 10. */
    tastings: z
      .array(z.strictObject({ day: Day, levels: z.record(Name, Level) }))
      .max(REST_LIMITS.tastings)
      .optional(),
  })
  .superRefine(({ pull, leadsAt, tastings = [], today, oak }, context) => {
    const wrong = (path: (string | number)[], code: string, message: string, input: unknown): void =>
      context.addIssue({ code: "custom", path, message, input, params: { code } });
    if (leadsAt !== undefined && leadsAt < pull.level)
      wrong(["leadsAt"], "leads_below_pull", `at least ${pull.level}, the pull level`, leadsAt);
    const names = new Set([pull.attribute, ...tastings.flatMap(({ levels }) => Object.keys(levels))]);
    if (names.size > REST_LIMITS.attributes)
      wrong(["tastings"], "too_many_attributes", `at most ${REST_LIMITS.attributes} attributes`, names.size);
    const { pieces = [], ...alone } = oak ?? {};
    if (pieces.length > 0 && Object.values(alone).some((one) => one !== undefined))
      wrong(["oak"], "pieces_or_one_wood", "either pieces or the wood as one, and not both", pieces.length);
    for (const [n, { inDay = 0, outDay = inDay }] of pieces.entries())
      if (outDay < inDay)
        wrong(["oak", "pieces", n, "outDay"], "out_before_in", `at least ${inDay}, its day in`, outDay);
    for (const [n, { day }] of tastings.entries())
      if (today !== undefined && day > today)
        wrong(["tastings", n, "day"], "tasting_after_today", `at most ${today}, which is today`, day);
  });
export type RestDraft = z.infer<typeof RestDraft>;

/** When a level is reached, in days since the oak went in. */
const Window = z.object({
  /** Days that hold `level` of the belief; `high` is null where it may never come, `low` too where it surely does not. */
  low: z.number().nullable(),
  high: z.number().nullable(),
  level: z.number(),
  /** The middle of those courses that get there; null where none does. */
  middle: z.number().nullable(),
  /** Days that hold `level` of those that get there; null where none does. */
  ifEver: z.object({ low: z.number(), high: z.number() }).nullable(),
  /** Chance that it is not reached within three years. */
  never: z.number(),
});

export const RestAnswer = z.object({
  pull: z.object({ attribute: z.string(), level: z.number() }),
  leadsAt: z.number(),
  today: z.number(),
  /** When to pull: the attribute of the rule reaches its level. */
  ready: Window,
  /** Chance that it is there today. */
  readyToday: z.number(),
  /** When the oak leads, and from which day on that is as likely as not; null where it never is. */
  leads: Window,
  leadsFrom: z.number().nullable(),
  leadsToday: z.number(),
  /** Days to taste on, the next one first, with the share of what is not known that each is expected to take away. */
  nextTastings: z.array(z.object({ day: z.int(), tells: z.number() })),
  /** Every attribute that was tasted, and the rule's: what its level is believed to be, middle and 80 %. */
  attributes: z.array(
    z.object({
      attribute: z.string(),
      course: z.enum(["rises", "rises-and-falls"]),
      tastings: z.int(),
      levels: z.array(z.object({ day: z.number(), low: z.number(), middle: z.number(), high: z.number() })),
      /** Of how many equal courses the belief is worth. */
      effective: z.number(),
    }),
  ),
  sentences: z.array(z.string()),
  method: z.string(),
  /** What the beliefs rest on. */
  notKnown: z.string(),
  cautions: z.array(z.string()),
});
export type RestAnswer = z.infer<typeof RestAnswer>;
