import { z } from "zod";
import { Chance } from "./chance.ts";
import { Id, Instant } from "./fields.ts";
import { DiscriminationMethod, QuestionId } from "./question.ts";

/** What so many glasses rest on; only locked sheets of revealed flights count. */
const Counted = z.object({ flights: z.int(), sheets: z.int(), tasters: z.int() });
const low = z.number();
const high = z.number();

/** What rankings say together: how good, or how close to a target, each is beside the others. */
export const WorthsFound = z.object({
  counted: Counted,
  /** The closest to what; null where the order was one of liking. */
  closeTo: z.string().nullable(),
  /** Best first. `worth` is a log worth less the mean of these items: 0.69 more is two to one in a pair. */
  items: z.array(
    z.object({
      key: z.string(),
      label: z.string(),
      target: z.boolean(),
      worth: z.number(),
      low,
      high,
      /** Rankings that it stands in. */
      rankings: z.int(),
      expectedRank: z.number(),
      /** `ranks[r]`: probability of place r + 1 among these items. */
      ranks: z.array(z.number()),
    }),
  ),
  /** `better[i][j]`: probability that item i is better (closer) than item j. */
  better: z.array(z.array(z.number())),
  /** The front runner beside all others together. */
  best: z.object({ probability: z.number(), sentence: z.string() }),
  /** The front runner, or the one that the page is about, beside each other. */
  pairs: z.array(
    z.object({ one: z.string(), other: z.string(), probability: z.number(), sentence: z.string() }),
  ),
  /** How looking at so many pairs is paid for. */
  pairsSaid: z.string(),
  /** What being served first or last does to a glass's log worth; taken out of the worths. */
  places: z.array(z.object({ place: z.enum(["first", "last"]), worth: z.number(), low, high })),
  placesSaid: z.string(),
  /** Whether tasters differ; null where nobody could have shown it. */
  tastersSaid: z.string().nullable(),
  level: z.number(),
  /** Of any probability here, from drawing. */
  drawingError: z.number(),
  method: z.string(),
});
export type WorthsFound = z.infer<typeof WorthsFound>;

/** Which names were taken for which. */
export const MixUpsFound = z.object({
  counted: Counted,
  names: z.array(z.object({ key: z.string(), label: z.string() })),
  /** `board[i][j]`: glasses of name i called name j. */
  board: z.array(z.array(z.int())),
  /** Those mixed up most surely first. */
  pairs: z.array(
    z.object({
      one: z.string(),
      other: z.string(),
      /** Glasses of the one called the other, and the other way round. */
      there: z.int(),
      back: z.int(),
      /** What luck alone gives on average. */
      expected: z.number(),
      p: z.number(),
      /** Made good for all pairs looked at (Holm). */
      pTogether: z.number(),
      sentence: z.string(),
    }),
  ),
  sentence: z.string(),
  method: z.string(),
});
export type MixUpsFound = z.infer<typeof MixUpsFound>;

/** How many glasses were named right, and how many of them were truly known. */
export const KnownFound = z.object({
  counted: Counted,
  guessed: z.int(),
  right: z.int(),
  luck: Chance,
  /** `p` made good for all such pages of the household (Bonferroni). */
  pTogether: z.number(),
  /** Share of glasses truly known, the rest being luck. */
  share: z.number(),
  low,
  high,
  level: z.number(),
  sentence: z.string(),
  method: z.string(),
});
export type KnownFound = z.infer<typeof KnownFound>;

/** Whether two were told apart, all sets of one method together. */
export const ApartFound = z.object({
  flights: z.int(),
  tasters: z.int(),
  method: DiscriminationMethod,
  standard: z.string(),
  one: z.string(),
  other: z.string(),
  right: z.int(),
  answered: z.int(),
  luck: Chance,
  /** `p` made good for all comparisons on this page (Holm). */
  pTogether: z.number(),
  /** How far apart they taste, in standard deviations of one taste; null where it has no end. */
  dPrime: z.number().nullable(),
  low,
  high: z.number().nullable(),
  level: z.number(),
  sentence: z.string(),
});
export type ApartFound = z.infer<typeof ApartFound>;

/** Words used, counted once a glass. */
export const WordsFound = z.object({
  glasses: z.int(),
  otherGlasses: z.int(),
  words: z.array(z.object({ word: z.string(), here: z.int(), elsewhere: z.int() })),
  said: z.string(),
});
export type WordsFound = z.infer<typeof WordsFound>;

const WordGap = z.object({
  /** Core's attribute. */
  kind: z.string(),
  label: z.string(),
  /** The commonest of its words on these sheets. */
  words: z.array(z.string()),
  /** Glasses it was written of: by this taster, and by the others, each taster's glass by itself. */
  own: z.int(),
  others: z.int(),
  /** How many of the others wrote it. */
  othersWho: z.int(),
  /** Two-sided, exact. */
  p: z.number(),
  /** Made good for all kinds that could have shown a gap (Holm); null: too few to tell. */
  pTogether: z.number().nullable(),
  sentence: z.string(),
});

/** Kinds of words that one taster leaves out where the others at the table write them of the same glasses, and those they alone write. */
export const WordGapsFound = z.object({
  flights: z.int(),
  /** Glasses compared: this taster's, and those of the others. */
  glasses: z.int(),
  otherGlasses: z.int(),
  others: z.int(),
  /** Kinds that could have shown a gap. */
  looked: z.int(),
  missed: z.array(WordGap),
  alone: z.array(WordGap),
  missedSaid: z.string(),
  aloneSaid: z.string(),
  /** Whether they write more or less altogether. */
  amountSaid: z.string(),
  method: z.string(),
});
export type WordGapsFound = z.infer<typeof WordGapsFound>;

/** Scores of 0 to 100: each taster's mean is one value. */
export const ScoresFound = z.object({
  mean: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  tasters: z.int(),
  scores: z.int(),
  level: z.number(),
  sentence: z.string(),
});
export type ScoresFound = z.infer<typeof ScoresFound>;

/** Glasses where their words put them: the first two principal components. */
export const MapFound = z.object({
  items: z.array(
    z.object({
      key: z.string(),
      /** Of its name, as the mix-ups have it: pours of one whiskey share it. */
      name: z.string(),
      label: z.string(),
      x: z.number(),
      y: z.number(),
      /** Half axes and the turn of the longer one, in radians; null where nothing is known of the scatter. */
      ellipse: z.object({ along: z.number(), across: z.number(), turn: z.number() }).nullable(),
    }),
  ),
  words: z.array(z.object({ word: z.string(), x: z.number(), y: z.number() })),
  /** Share of what differs that the map shows. */
  shown: z.number(),
  tasters: z.int(),
  level: z.number(),
  sentence: z.string(),
  method: z.string(),
});
export type MapFound = z.infer<typeof MapFound>;

/** A word that goes with some glasses and not with others. */
const WordTest = z.object({
  word: z.string(),
  said: z.array(z.object({ label: z.string(), tasters: z.int() })),
  p: z.number(),
  pTogether: z.number(),
  method: z.string(),
});

/** How well a taster's confidence in their guesses fits what came true. */
export const ConfidenceFound = z.object({
  sheets: z.int(),
  guesses: z.int(),
  right: z.int(),
  /** Mean of what was said, a share. */
  said: z.number(),
  /** Brier's: 0 perfect, 1 always surely wrong. */
  score: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** What who knows nothing and says so scores on average. */
  byLuck: z.number(),
  level: z.number(),
  /** Whether as many were right as was said: exact, two-sided. */
  p: z.number(),
  /** By what was said, in per cent: how many were right, with the exact interval of their share. */
  groups: z.array(z.object({ sure: z.int(), right: z.int(), of: z.int(), low, high })),
  fitSaid: z.string(),
  surerSaid: z.string(),
  scoreSaid: z.string(),
  method: z.string(),
});
export type ConfidenceFound = z.infer<typeof ConfidenceFound>;

const flightLine = z.object({ flightId: Id, name: z.string(), revealedAt: Instant });

/** One flight weighed: what its sheets together can carry. Exists only after the reveal. */
export const WeighedFlight = z.object({
  flightId: Id,
  name: z.string(),
  revealedAt: Instant,
  headline: z.string(),
  worths: WorthsFound.nullable(),
  /** What was poured more than once stands in `worths` glass by glass; here its pours are taken as the one whiskey they are. */
  poursTogether: z.array(z.object({ name: z.string(), sentence: z.string() })),
  mixUps: MixUpsFound.nullable(),
  known: KnownFound.nullable(),
  apart: ApartFound.nullable(),
  map: MapFound.nullable(),
  wordTests: z.object({ sentence: z.string(), words: z.array(WordTest) }).nullable(),
});
export type WeighedFlight = z.infer<typeof WeighedFlight>;

const flightsOf = z.array(flightLine.extend({ question: QuestionId, sheets: z.int() }));

/** Everything known of a recipe over all flights that its batches stood in. */
export const RecipeFinding = z.object({
  recipeId: Id,
  name: z.string(),
  headline: z.string(),
  flights: flightsOf,
  batches: z.array(
    z.object({
      batchId: Id,
      name: z.string(),
      version: z.int(),
      flights: z.int(),
      sheets: z.int(),
      scores: ScoresFound.nullable(),
    }),
  ),
  worths: WorthsFound.nullable(),
  closeness: z.array(WorthsFound),
  mixUps: MixUpsFound.nullable(),
  apart: z.array(ApartFound),
  scores: ScoresFound.nullable(),
  words: WordsFound.nullable(),
});
export type RecipeFinding = z.infer<typeof RecipeFinding>;

/** A whiskey as it was poured in flights. */
export const WhiskeyFinding = z.object({
  whiskeyId: Id,
  name: z.string(),
  headline: z.string(),
  flights: flightsOf,
  named: KnownFound.nullable(),
  mixUps: MixUpsFound.nullable(),
  worths: WorthsFound.nullable(),
  apart: z.array(ApartFound),
  scores: ScoresFound.nullable(),
  words: WordsFound.nullable(),
});
export type WhiskeyFinding = z.infer<typeof WhiskeyFinding>;

/** One taster over time. */
export const TasterFinding = z.object({
  tasterId: Id,
  name: z.string(),
  headline: z.string(),
  flights: flightsOf,
  /** Flight after flight: how many glasses were named right, and how many luck gives. */
  guesses: z.array(flightLine.extend({ guessed: z.int(), right: z.int(), byLuck: z.number() })),
  known: KnownFound.nullable(),
  /** Whether the guesses got better or worse, by Kendall's tau with time. */
  drift: z.object({ tau: z.number().nullable(), p: z.number(), sentence: z.string() }).nullable(),
  /** Null where it was never said how sure a guess was. */
  confidence: ConfidenceFound.nullable(),
  /** Glasses that held the same, in one flight: how far apart they were ranked. */
  repeats: z
    .object({
      pairs: z.array(
        flightLine.extend({ label: z.string(), first: z.number(), second: z.number(), of: z.int() }),
      ),
      luck: Chance,
      /** The p of all pairs put as near as can be: from 0.05 on they cannot show that the taster is steady. */
      leastP: z.number(),
      sentence: z.string(),
    })
    .nullable(),
  /** The same glasses put in order twice. */
  orders: z
    .object({
      kept: z.int(),
      pairs: z.int(),
      luck: Chance,
      /** The p of all pairs put the same way again: from 0.05 on they cannot show that the taster is steady. */
      leastP: z.number(),
      sentence: z.string(),
    })
    .nullable(),
  mixUps: MixUpsFound.nullable(),
  apart: z.array(ApartFound),
  words: WordsFound.nullable(),
  /** Blind spots, and words of their own; null where nobody else wrote of the same glasses. */
  wordGaps: WordGapsFound.nullable(),
  canTell: z.array(z.string()),
  cannotTell: z.array(z.string()),
});
export type TasterFinding = z.infer<typeof TasterFinding>;

/** Own blends, by all rankings that they stand in. */
export const League = z.object({
  headline: z.string(),
  counted: Counted,
  worths: WorthsFound.nullable(),
  /** What each of its items is. */
  blends: z.array(z.object({ key: z.string(), recipeId: Id.nullable(), recipe: z.string().nullable() })),
});
export type League = z.infer<typeof League>;
