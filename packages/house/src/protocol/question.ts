import { z } from "zod";
import { Id, ShortText } from "./fields.ts";
import { GlassCode, NameId, Ranking } from "./glass.ts";

/** What a flight is set to find out; the words for each are core's (`QUESTIONS`). */
export const QuestionId = z.enum([
  "like_best",
  "which_is_which",
  "how_close",
  "tell_apart",
  "changed",
  "agree_with_myself",
]);
export type QuestionId = z.infer<typeof QuestionId>;

/** How two whiskeys are told apart; task, chance and orders are core's (`DISCRIMINATION`). */
export const DiscriminationMethod = z.enum(["triangle", "duo_trio", "paired", "tetrad"]);

export const MOST_SETS = 8;

/** What a draft says of its question. Whatever the question has no use for is refused, not left out. */
export const questionDraft = {
  question: QuestionId.default("which_is_which"),
  /** `tell_apart` and `changed`: needed. */
  method: DiscriminationMethod.nullable().default(null),
  /** `paired`: what is asked for, as in "Which of the two is sweeter?": needed. */
  asked: ShortText.max(60).nullable().default(null),
  /** `paired`: the vessel that the host takes to have more of it, fixed before; sealed with the key. Null: either may have. */
  expectedVesselId: Id.nullable().default(null),
  /** `tell_apart` and `changed`: sets each taster gets. */
  sets: z.int().min(1).max(MOST_SETS).default(1),
  /** `how_close`: a glass of the target labelled "R" is poured for each taster besides the hidden one. */
  reference: z.boolean().default(false),
  /** So many of the glasses, drawn by the house, are poured a second time. */
  repeats: z.int().min(0).max(3).default(0),
  /** One more glass, of a whiskey that everybody knows. */
  controlVesselId: Id.nullable().default(null),
  /** `like_best` and `which_is_which`: each taster gets so many of the glasses, where all are more than a palate takes. */
  glassesEach: z.int().min(2).max(12).nullable().default(null),
  /** The strong and smoky glasses late, where that costs no balance. */
  late: z.boolean().default(false),
};

/** How the glasses of a flight are laid out. Nothing here follows from what is in which glass. */
export const FlightDesign = z.object({
  method: DiscriminationMethod.nullable(),
  asked: z.string().nullable(),
  /** `paired`: 1 where the host said beforehand which has more, 2 where either may. */
  sides: z.union([z.literal(1), z.literal(2)]).nullable(),
  /** Sets each taster answers; 2, the two rounds, for `agree_with_myself`; 0 where the glasses stand in one row. */
  setsEach: z.int(),
  /** Coded glasses each taster gets, over all sets. */
  glassesEach: z.int(),
  /** A glass labelled "R" is poured besides: one a taster, or one in each set of a duo-trio. */
  reference: z.boolean(),
  repeats: z.int(),
  controlNameId: NameId.nullable(),
  late: z.boolean(),
  /** What the design balances and what it leaves unbalanced, in plain sentences. */
  said: z.array(z.string()),
});
export type FlightDesign = z.infer<typeof FlightDesign>;

/** The label of a glass that is known: it has no code, no notes and no place in an answer. */
export const REFERENCE_LABEL = "R";

/** An answer to one set. Both null takes it back. */
export const SetAnswer = z.object({
  set: z.int().min(1).max(MOST_SETS),
  /** Triangle: the odd one. Duo-trio: the one like R. Paired: the one that has more. Tetrad: the two of one group. */
  picked: z.array(GlassCode).min(1).max(2).nullable().default(null),
  /** `agree_with_myself`: the glasses of this round, best first, no two level. */
  ranking: Ranking.default(null),
});
export type SetAnswer = z.infer<typeof SetAnswer>;

/** What a sheet takes besides notes and scores; anything else is refused. */
export const SheetAsks = z.object({
  guesses: z.boolean(),
  /** What a ranking of all glasses means here; null where none is taken. */
  ranking: z.enum(["best first", "closest first"]).nullable(),
  /** What an answer to a set says; null where there are no sets. */
  answers: z.enum(["picked", "ranking"]).nullable(),
});

/** One set as it stands before the taster, with what is answered so far. */
export const SheetSet = z.object({
  set: z.int(),
  /** A glass labelled "R" stands first. */
  reference: z.boolean(),
  /** In the order to taste; `position` is that of `glasses` of the sheet. */
  glasses: z.array(z.object({ position: z.int(), code: GlassCode })),
  picked: z.array(GlassCode).nullable(),
  ranking: Ranking,
});
