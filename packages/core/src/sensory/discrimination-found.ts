import { criticalCount } from "../statistics/index.ts";
import { differenceFraction, differenceP } from "./difference-test.ts";
import { DISCRIMINATION, type DiscriminationMethod } from "./discrimination-methods.data.ts";
import { plainOdds } from "./plain-chance.ts";
import { HARD_TO_PUT_DOWN_TO_LUCK, luckVerdict, shownP } from "./ranking-words.ts";

export interface DiscriminationFound {
  /** How likely as many right, or more, by luck alone: exact. Two-sided: as many on either side. */
  readonly p: number;
  /** The same in lowest terms, such as "1/27". */
  readonly fraction: string;
  readonly odds: string;
  /** The count that luck reaches at most once in twenty; null when no number of as many does. */
  readonly needed: number | null;
  readonly method: string;
  /** What was found and how much of it could be luck; never that two whiskeys are the same. */
  readonly sentence: string;
}

/**
 * What so many right answers of so many sets amount to, by the exact binomial law under which nobody can tell.
 *
 * One-sided for all methods but a paired comparison without an expectation (`sides` 2): there `right` is the larger of the two
 * counts and p is twice the upper tail, at most 1. Sets are taken as independent, which several sets of one taster are only as
 * far as nobody tells; so it can show that somebody does.
 *
 * @throws RangeError when counts are not whole with 1 <= answered and 0 <= right <= answered, or a two-sided test is asked of
 * another method than the paired comparison, or of the smaller count
 * @example discriminationFound({ method: "triangle", sides: 1, answered: 3, right: 3 }).fraction // "1/27"
 */
export function discriminationFound(ask: {
  readonly method: DiscriminationMethod;
  readonly sides: 1 | 2;
  readonly answered: number;
  readonly right: number;
}): DiscriminationFound {
  const { method, sides, answered, right } = ask;
  if (![answered, right].every(Number.isInteger) || answered < 1 || right < 0 || right > answered) {
    throw new RangeError(
      `discriminationFound requires 0 to n right of n answered, got ${right} of ${answered}`,
    );
  }
  if (sides === 2 && (method !== "paired" || 2 * right < answered)) {
    throw new RangeError(
      `a two-sided test requires the larger count of a paired comparison, got ${right} of ${answered} by ${method}`,
    );
  }
  const { chance, test } = DISCRIMINATION[method];
  const p = differenceP({ test, right, of: answered }, sides);
  const { numerator, denominator } = differenceFraction({ test, right, of: answered }, sides);
  const needed = criticalCount(answered, chance, HARD_TO_PUT_DOWN_TO_LUCK / sides);
  const how = `exact binomial law, ${sides === 1 ? "one" : "two"}-sided, ${answered} ${answered === 1 ? "set" : "sets"}, chance ${chance.numerator}/${chance.denominator} a set`;
  return {
    p,
    fraction: `${numerator}/${denominator}`,
    odds: plainOdds(p),
    needed,
    method: how,
    sentence: sentenceOf(ask, p, needed, how),
  };
}

function sentenceOf(
  { sides, answered, right }: Parameters<typeof discriminationFound>[0],
  p: number,
  needed: number | null,
  how: string,
): string {
  const count =
    sides === 1
      ? `${right} of ${answered} sets right`
      : `${right} of ${answered} sets picked the same one of the two`;
  const found = `${count}: that ${luckVerdict(p)} (${shownP(p)}, ${how}).`;
  if (p < HARD_TO_PUT_DOWN_TO_LUCK) return found;
  const would =
    needed === null
      ? `With ${answered} ${answered === 1 ? "set" : "sets"} even all ${sides === 1 ? "right" : "alike"} would not rule luck out.`
      : `${needed} of ${answered} would have been hard to put down to luck.`;
  return `${found} ${would} That nobody was found to tell them apart does not show that nobody can.`;
}
