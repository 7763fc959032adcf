import {
  type CountLaw,
  countLaw,
  criticalCount,
  type Fraction,
  inversionLaw,
  matchLaw,
  poolLaws,
  type TrialsNeeded,
  trialsNeeded,
} from "../statistics/index.ts";
import { DISCRIMINATION, type DiscriminationMethod } from "./discrimination-methods.data.ts";
import { criticalOf, sheetsNeeded } from "./sheets-needed.ts";
import { MAX_GLASSES } from "./williams-square.ts";

/** The risks a test may run. */
export interface Risks {
  /** Of finding what is not there. */
  readonly alpha: number;
  /** Of missing what is there. */
  readonly beta: number;
}

/** A question with what it is to find. A share is a whole number of per cent, 1 to 100. */
export type QuestionAsk =
  | { readonly question: "like_best"; readonly glasses: number; readonly share: number }
  | { readonly question: "how_close"; readonly glasses: number; readonly share: number }
  | {
      readonly question: "which_is_which";
      readonly glasses: number;
      readonly distractors: number;
      readonly known: number;
    }
  | {
      readonly question: "tell_apart" | "changed";
      readonly method: DiscriminationMethod;
      readonly sides: 1 | 2;
      readonly share: number;
    }
  | { readonly question: "agree_with_myself"; readonly glasses: number; readonly again: number };

export interface Needs {
  /** Sheets (one taster, one sitting), sets or pairs of rankings; null when some hundreds are not enough. */
  readonly trials: TrialsNeeded | null;
  /** With fewer even the best possible result does not rule luck out. */
  readonly fewest: number;
}

function requireWhole(what: string, x: number, low: number, high: number): void {
  if (!Number.isInteger(x) || x < low || x > high) {
    throw new RangeError(`${what} requires a whole number from ${low} to ${high}, got ${x}`);
  }
}

/** Successes of those who can tell, and of the others by luck: share + (1 − share)·chance. */
const withShare = ({ numerator, denominator }: Fraction, share: number): Fraction => ({
  numerator: 100n * numerator + BigInt(share) * (denominator - numerator),
  denominator: 100n * denominator,
});

function byTrials(chance: Fraction, share: number, alpha: number, beta: number): Needs {
  requireWhole("a share", share, 1, 100);
  let fewest = 1;
  while (criticalCount(fewest, chance, alpha) === null) fewest += 1;
  return { trials: trialsNeeded({ p0: chance, p1: withShare(chance, share), alpha, beta }), fewest };
}

function bySheets(luck: CountLaw, skill: CountLaw, alpha: number, beta: number): Needs {
  let fewest = 1;
  let pooled = luck;
  while (criticalOf(pooled, alpha) === null) {
    pooled = poolLaws([pooled, luck]);
    fewest += 1;
  }
  return { trials: sheetsNeeded({ luck, skill, alpha, beta }), fewest };
}

const labels = (count: number): Record<string, number> =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`name ${i}`, 1]));

/** Pairs put the same way again: the other end of the law of pairs turned round. */
const keptPairs = (law: CountLaw): CountLaw => countLaw(law.exactly.toReversed());

/**
 * How many sheets, sets or rankings a question needs at given risks, by exact laws.
 *
 * - `like_best`, `how_close`: by first places only. `share` per cent put the best first, the rest pick by luck (1 in n). Which
 *   one is best is not known beforehand, so alpha is shared out among the n glasses (Bonferroni); for `how_close` the hidden
 *   target is named beforehand and has the whole alpha. Whole rankings carry more, so this errs to too many.
 * - `which_is_which`: the taster knows `known` of the glasses and guesses the rest.
 * - `tell_apart`, `changed`: `share` per cent can tell, the rest guess (ISO 4120: p = pd + (1 − pd)·chance). Two-sided only for
 *   the paired comparison.
 * - `agree_with_myself`: two glasses side by side are put the same way again with `again` per cent, 51 to 99 (Mallows' model).
 *
 * @throws RangeError when a number is outside its range
 * @example questionNeeds({ question: "tell_apart", method: "triangle", sides: 1, share: 50 }, { alpha: 0.05, beta: 0.2 })
 * // { trials: { smallest: 16, stable: 16, criticalAtSmallest: 9, criticalAtStable: 9 }, fewest: 3 }
 */
export function questionNeeds(ask: QuestionAsk, { alpha, beta }: Risks): Needs {
  for (const risk of [alpha, beta]) {
    if (!(risk >= 0.001 && risk <= 0.5)) throw new RangeError(`a risk requires 0.001 to 0.5, got ${risk}`);
  }
  if ("method" in ask) {
    if (ask.sides === 2 && ask.method !== "paired") {
      throw new RangeError(`a two-sided test requires the paired comparison, got ${ask.method}`);
    }
    return byTrials(DISCRIMINATION[ask.method].chance, ask.share, alpha / ask.sides, beta);
  }
  const { glasses } = ask;
  requireWhole("a flight", glasses, 2, MAX_GLASSES);
  switch (ask.question) {
    case "like_best":
    case "how_close": {
      const chance = { numerator: 1n, denominator: BigInt(glasses) };
      return byTrials(chance, ask.share, ask.question === "like_best" ? alpha / glasses : alpha, beta);
    }
    case "which_is_which": {
      requireWhole("known glasses", ask.known, 1, glasses);
      requireWhole("distractors", ask.distractors, 0, MAX_GLASSES);
      const guessed = glasses - ask.known;
      const rest = matchLaw({ rows: labels(guessed), columns: labels(guessed + ask.distractors) });
      const skill = countLaw([...Array.from({ length: ask.known }, () => 0n), ...rest.exactly]);
      const luck = matchLaw({ rows: labels(glasses), columns: labels(glasses + ask.distractors) });
      return bySheets(luck, skill, alpha, beta);
    }
    case "agree_with_myself": {
      requireWhole("the same way again", ask.again, 51, 99);
      const again = { numerator: BigInt(ask.again), denominator: 100n };
      return bySheets(keptPairs(inversionLaw(glasses)), keptPairs(inversionLaw(glasses, again)), alpha, beta);
    }
  }
}
