/**
 * What is believed of oak in a bottle before anybody has tasted it. No rate constant for small pieces of oak in spirit was found in
 * print, so every line is wide and says what it rests on: "memory" is general knowledge not looked up, "taken" has no source at all.
 * They hold for the conditions of `REFERENCE` and are carried to others by `EFFECTS`.
 */

/** What the beliefs below are said for: as much wood a litre as a 200 L cask has, a stick or stave, full strength, a room, new wood. */
export const REFERENCE = { caskRatio: 1, thicknessCm: 0.7, abv20: 60, celsius: 20, use: 1 } as const;

/** Even between low and high. */
interface Even {
  readonly low: number;
  readonly high: number;
  readonly how: string;
}
/** Even inside, with a share outside on both sides. */
interface Shouldered extends Even {
  readonly outside: number;
  readonly outsideLogSd: number;
}
/** Normal, cut off at low and high. */
interface Bell extends Even {
  readonly mean: number;
  readonly sd: number;
}

export const PRIORS = {
  before: {
    mean: 1.5,
    sd: 1,
    low: 0,
    high: 5,
    how: "level before the oak, 0 to 10: taken; a tasting on day 0 says it",
  },
  rise: {
    mean: 6,
    sd: 2,
    low: 0.5,
    high: 12,
    how: "how much the oak adds in the end, points of 0 to 10, above 10 where the scale ends before the taste does: taken",
  },
  /** Of what comes in the end, the share that is washed off quickly; mechanism Delgado 2022 and Trillo 2024, the numbers taken. */
  quick: { low: 0.25, high: 0.55, how: "share of the quick stage: taken, about 0.3 to 0.5" },
  /** How many times faster the quick stage is, even on the scale of its logarithm. */
  faster: {
    low: 3,
    high: 12,
    how: "quick stage against slow: taken, from rates of 0.3 to 1.5 and 0.05 to 0.4 a day",
  },
  /**
   * The day on which a curve that gets to 6 of 10 gets there: each doubling between 5 and 90 days as likely as the next, and one in
   * twenty outside, by a factor that is half a normal law on the log scale.
   */
  dayOfSix: {
    low: 5,
    high: 90,
    outside: 0.05,
    outsideLogSd: 1,
    how: "taken: nobody has published it, so nearly nothing is said",
  },
  /** The day by which half of the rise is there, of a curve that never gets to 6, or that falls again. */
  halfDay: { low: 2, high: 45, how: "taken" },
  /** Days in which half of what rose has gone again, of an attribute that falls; even on the log scale. */
  fallHalfDays: {
    low: 90,
    high: 720,
    how: "taken; that tannin softens with time is common practice, no source",
  },
  /** Standard deviation of one tasting by one person, points of 0 to 10. */
  noise: { low: 1, high: 1.5, how: "taken" },
} as const satisfies Record<string, Even | Bell | Shouldered>;

/** How far conditions carry the curves, each even or normal between its bounds, drawn anew for every curve. */
export const EFFECTS = {
  /** Rise goes by the dose to this power. */
  dosePower: { low: 0.3, high: 0.7, how: "exponents of taste by concentration: memory" },
  /** Speed goes by the thickness to minus this power; diffusion alone would be 2, trade's days for chips and staves say about 1. */
  thicknessPower: { mean: 1, sd: 0.3, low: 0, high: 2, how: "taken, between trade's days and diffusion" },
  /** Activation energy of extraction, kJ/mol (Arrhenius). */
  activation: { low: 15, high: 40, how: "memory; Obodovych 2024 found 1.14 per 10 °C near the plateau" },
  /** What second use leaves of the rise of the use before. */
  eachUse: {
    low: 0.3,
    high: 0.7,
    how: "second use is weaker: common practice, no source; the numbers taken",
  },
} as const satisfies Record<string, Even | Bell>;

/** How much of the rise a strength brings out, % vol to share; straight lines between, level outside. Memory, "a workable assumption". */
export const BY_STRENGTH: readonly (readonly [abv20: number, share: number])[] = [
  [40, 0.8],
  [46, 0.92],
  [55, 1],
  [62, 1],
  [68, 0.95],
];

/** Beyond so many days a level counts as never reached. */
export const HORIZON_DAYS = 1095;
/** Half a step of a sheet: a score of 0 or 10 means that or beyond. */
export const HALF_STEP = 0.25;
