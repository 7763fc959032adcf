import { z } from "zod";
import { CountsTest, MixtureModelName } from "./counts-asked.ts";

/** Low and high end; null where nothing bounds it. */
const Span = z.tuple([z.number().nullable(), z.number().nullable()]);
const Numbers = z.array(z.number());

/** Why there is no number: a word for programs, the words for people, and the items it is about. */
export const CountsReason = z.object({
  code: z.string(),
  message: z.string(),
  ahead: z.array(z.string()).optional(),
  behind: z.array(z.string()).optional(),
});
export type CountsReason = z.infer<typeof CountsReason>;

export const DifferAnswer = z.object({
  test: CountsTest,
  right: z.int(),
  of: z.int(),
  /** Of a right answer by luck. */
  chance: z.number(),
  sides: z.int(),
  /** As many right or more by luck: exact. One-sided unless `sides` is 2. */
  p: z.number(),
  /** Fewest right that luck reaches in at most 1 of 20; null when not even all are that rare. */
  critical5: z.int().nullable(),
  /** Most likely distance; null when all were right, as it is then without bound. */
  dPrime: z.number().nullable(),
  /** By likelihood: covers the truth about as often as `level` says, at worst less. */
  dPrimeInterval: Span,
  /** By the exact interval of the chance: covers it at least as often. */
  dPrimeExact: Span,
  dPrimeReason: CountsReason.nullable(),
  /** Most likely share of tasters that can tell, the rest guessing, and its exact interval. */
  share: z.number(),
  shareInterval: Span,
  level: z.number(),
  method: z.string(),
  sentence: z.string(),
  /** Only where asked for. */
  likeness: z
    .object({
      /** Of a right answer with the difference that would matter. */
      chance: z.number(),
      /** As few right or fewer, with that difference. */
      p: z.number(),
      /** Most right that still show likeness at 1 in 20; null when not even none do. */
      critical5: z.int().nullable(),
      sentence: z.string(),
    })
    .nullable(),
});
export type DifferAnswer = z.infer<typeof DifferAnswer>;

export const InTurnAnswer = z.object({
  test: CountsTest,
  right: z.int(),
  of: z.int(),
  chance: z.number(),
  /** May be looked at after every answer: luck alone ever gets it below alpha with at most alpha. */
  anytimeP: z.number(),
  /** First answer after which it was at most alpha; null when none. */
  foundAt: z.int().nullable(),
  /** Of the chance of a right answer; holds at every moment together. */
  chanceInterval: Span,
  dPrimeInterval: Span,
  level: z.number(),
  /** Wald's test of luck against the effect. */
  wald: z.object({
    verdict: z.enum(["difference", "less than the effect", "go on"]),
    at: z.int().nullable(),
    /** Right answers of as many as there are that decide, now: this many or more, that many or fewer. */
    upper: z.int(),
    lower: z.int(),
    chanceWithEffect: z.number(),
    alpha: z.number(),
    beta: z.number(),
  }),
  method: z.string(),
  sentence: z.string(),
});
export type InTurnAnswer = z.infer<typeof InTurnAnswer>;

export const MatchAnswer = z.object({
  glasses: z.int(),
  sheets: z.int(),
  right: z.int(),
  of: z.int(),
  /** As many right or more by guessing: exact, one-sided, over all sheets. */
  pAtLeast: z.number(),
  /** The same in lowest terms; null when that takes more than 40 digits. */
  fraction: z.string().nullable(),
  /** How many are right by guessing, on average. */
  expected: z.number(),
  critical5: z.int().nullable(),
  /** Chance of exactly 0, 1, 2 … right. */
  exactly: Numbers,
  /** How much was truly known, the rest guessed; null where the model has no answer. */
  known: z.object({ share: z.number(), interval: Span, glasses: z.number(), level: z.number() }).nullable(),
  knownReason: CountsReason.nullable(),
  method: z.string(),
  sentence: z.string(),
});
export type MatchAnswer = z.infer<typeof MatchAnswer>;

/** Worths by Bayes' rule from a proper prior: there whatever the data. */
const Beliefs = z.object({
  /** Of each item's log worth less the mean of all of them. */
  logWorth: Numbers,
  sd: Numbers,
  interval: z.array(Span),
  level: z.number(),
  /** `better[i][j]`: probability that i is the better one. */
  better: z.array(Numbers),
  /** `preferred[i][j]`: probability that the next one to compare them puts i first. */
  preferred: z.array(Numbers),
  /** `ranks[i][r]`: probability of place r + 1. */
  ranks: z.array(Numbers),
  expectedRank: Numbers,
  draws: z.int(),
  /** What the draws are worth; a probability is off by about `monteCarloError`. */
  effective: z.number(),
  monteCarloError: z.number(),
  prior: z.string(),
  method: z.string(),
  /** How far tasters differ, where they were told apart. */
  spread: z.array(z.object({ sd: z.number(), probability: z.number() })).nullable(),
  sentences: z.array(z.string()),
});
export type CountsBeliefs = z.infer<typeof Beliefs>;

const Effect = z.object({ value: z.number(), standardError: z.number() });

export const RankAnswer = z.object({
  items: z.array(z.string()),
  rankings: z.int(),
  friedman: z.object({
    /** Corrected for ties; null with a reason. */
    statistic: z.number().nullable(),
    df: z.int().nullable(),
    p: z.number().nullable(),
    method: z.enum(["exact", "chi-square"]).nullable(),
    /** By the approximation, whatever the method: what most programs print. */
    pChiSquare: z.number().nullable(),
    rankSums: Numbers.nullable(),
    reason: CountsReason.nullable(),
  }),
  kendallW: z.number().nullable(),
  plackettLuce: z.object({
    /** Natural logs in the order of the items, the first 0; null with a reason where no most likely ones exist. */
    logWorth: Numbers.nullable(),
    standardError: Numbers.nullable(),
    /** δ of each size of tie that occurs. */
    ties: z.array(z.object({ size: z.int(), delta: z.number() })).nullable(),
    /** What being served first and last does to a log worth; null unless the order was given. */
    placeEffects: z.object({ first: Effect, last: Effect }).nullable(),
    logLikelihood: z.number().nullable(),
    reason: CountsReason.nullable(),
  }),
  bayesian: Beliefs,
  sentence: z.string(),
});
export type RankAnswer = z.infer<typeof RankAnswer>;

export const PairsAnswer = z.object({
  items: z.array(z.string()),
  comparisons: z.int(),
  logWorth: Numbers.nullable(),
  standardError: Numbers.nullable(),
  /** Davidson's ν: P(tie) ∝ ν√(πᵢπⱼ); 0 where nothing was tied. */
  tieParameter: z.number().nullable(),
  /** Log of the odds that coming first gives between equals; null unless asked for. */
  orderEffect: Effect.nullable(),
  /** Of the single comparisons, without binomial coefficients. */
  logLikelihood: z.number().nullable(),
  reason: CountsReason.nullable(),
  bayesian: Beliefs,
});
export type PairsAnswer = z.infer<typeof PairsAnswer>;

const ByTerm = z.record(z.string(), z.number());
export const MixtureAnswer = z.object({
  model: MixtureModelName,
  runs: z.int(),
  terms: z.int(),
  /** By term: "x1", "x1:x2", "x1:x2:x3"; null with a reason. */
  coefficients: ByTerm.nullable(),
  standardErrors: ByTerm.nullable(),
  /** Student's, at `level`. */
  intervals: z.record(z.string(), Span).nullable(),
  level: z.number(),
  /** Residual standard deviation. */
  sigma: z.number().nullable(),
  /** Residual degrees of freedom, runs less terms. */
  df: z.int(),
  /** About the mean; null when every y is the same. */
  rSquared: z.number().nullable(),
  reason: CountsReason.nullable(),
  /** What was taken as it stands though it is odd. */
  notes: z.array(z.string()),
});
export type MixtureAnswer = z.infer<typeof MixtureAnswer>;

export const CouldShowAnswer = z.object({
  of: z.enum(["differ", "in-turn", "match", "rank"]),
  /** How probable it is that what is there is found. */
  power: z.number(),
  /** Of a simulated power: what drawing leaves open. */
  powerInterval: Span.nullable(),
  /** How probable it is that something is found where nothing is: exact. At most alpha, but in turn only nearly. */
  falseFinding: z.number().nullable(),
  critical: z.int().nullable(),
  alpha: z.number(),
  /** Trials that find it with 1 − beta: the first number, and that from which on it stays so; null when 400 are not enough. */
  needs: z.object({ beta: z.number(), smallest: z.int(), stable: z.int() }).nullable(),
  /** In turn: how many trials on average, with the effect and by luck alone. */
  expectedTrials: z.object({ withEffect: z.number(), byLuck: z.number() }).nullable(),
  /** Of rankings: how often the best one comes out first. */
  bestFirst: z.number().nullable(),
  method: z.string(),
  sentence: z.string(),
});
export type CouldShowAnswer = z.infer<typeof CouldShowAnswer>;
