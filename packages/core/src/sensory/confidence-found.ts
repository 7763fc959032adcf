import {
  brier,
  type BrierScore,
  chancesTest,
  type ChancesTest,
  chosenSumTest,
  type ChosenSumTest,
  exactShare,
  type Interval,
  meanInterval,
} from "../statistics/index.ts";

/** One glass that was named with a confidence. */
export interface SureGuess {
  /** How sure that the name is right, whole per cent. */
  readonly sure: number;
  readonly right: boolean;
  /** The chance that a name put on it by luck is right. */
  readonly byLuck: number;
}

export interface ConfidenceFound {
  readonly guesses: number;
  readonly right: number;
  /** Mean of what was said, a share. */
  readonly said: number;
  readonly brier: BrierScore;
  /** Of the mean score of a sheet, Student's; null below three sheets or where all scored the same. */
  readonly interval: Interval | null;
  /** What somebody would score on average who knows nothing and says so: each glass's luck as the confidence. */
  readonly byLuck: number;
  /** Whether as many were right as was said. */
  readonly calibrated: ChancesTest;
  /** Whether they were surer where they were right; null where there are too many sheets to go through. */
  readonly surer: ChosenSumTest | null;
  readonly groups: readonly {
    readonly sure: number;
    readonly right: number;
    readonly of: number;
    /** Of the share right, exact. */
    readonly interval: Interval;
  }[];
}

const FEWEST_SHEETS = 3;
/** Beyond, the exact law of the sums takes too long. */
const MOST_SHEETS = 40;

/**
 * How well confidence fits what came true, over the sheets of one taster: Brier's score with an interval and beside what knowing nothing
 * would score, whether as many were right as said (glasses taken as independent), and whether the surer ones were right (given how
 * many were right on each sheet, exact).
 *
 * @returns null where nobody said how sure they were
 * @throws RangeError unless `sure` is whole and from 0 to 100
 * @example confidenceFound([[{ sure: 90, right: true, byLuck: 0.5 }, { sure: 50, right: false, byLuck: 0.5 }]])?.brier.score // 0.13
 */
export function confidenceFound(
  sheets: readonly (readonly SureGuess[])[],
  level = 0.95,
): ConfidenceFound | null {
  const own = sheets.filter((guesses) => guesses.length > 0);
  const all = own.flat();
  if (all.length === 0) return null;
  const bad = all.find(({ sure }) => !Number.isInteger(sure) || sure < 0 || sure > 100);
  if (bad !== undefined)
    throw new RangeError(`confidenceFound requires whole per cents from 0 to 100, got ${bad.sure}`);
  const score = brier(all.map(({ sure, right }) => ({ confidence: sure / 100, right })));
  const bySheet = own.map((guesses) =>
    mean(guesses.map(({ sure, right }) => (sure / 100 - Number(right)) ** 2)),
  );
  return {
    guesses: all.length,
    right: all.filter(({ right }) => right).length,
    said: mean(all.map(({ sure }) => sure / 100)),
    brier: score,
    interval:
      own.length < FEWEST_SHEETS || new Set(bySheet).size === 1
        ? null
        : meanInterval(bySheet, level).interval,
    byLuck: mean(all.map(({ byLuck }) => byLuck * (1 - byLuck))),
    calibrated: chancesTest(all.map(({ sure, right }) => ({ chance: sure / 100, right }))),
    surer:
      own.length > MOST_SHEETS
        ? null
        : chosenSumTest(
            own.map((guesses) => guesses.map(({ sure, right }) => ({ value: sure, marked: right }))),
          ),
    groups: score.groups.map(({ confidence, right, of }) => ({
      sure: Math.round(100 * confidence),
      right,
      of,
      interval: exactShare(right, of, level, "both"),
    })),
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
