import type { Friedman } from "../statistics/index.ts";

/** A p below this is called hard to put down to luck. */
export const HARD_TO_PUT_DOWN_TO_LUCK = 0.05;
/** A p below this is called very hard to put down to luck. */
const VERY_HARD_TO_PUT_DOWN_TO_LUCK = 0.01;
/** From this p on luck is called a good explanation; below, down to "hard", it is only not ruled out. */
const COULD_WELL_BE_LUCK = 0.2;

const BOUNDS = [COULD_WELL_BE_LUCK, HARD_TO_PUT_DOWN_TO_LUCK, VERY_HARD_TO_PUT_DOWN_TO_LUCK];

/** How far a p is from luck: 0 it could well be, 1 it is not ruled out, 2 hard to put down to it, 3 very hard. */
export const luckLevel = (p: number): number => BOUNDS.filter((bound) => p < bound).length;

/** Two figures, or as many more as it takes for the rounded p to lie on its own side of every threshold. */
export function shownP(p: number): string {
  if (p < 0.001) return "p < 0.001";
  let figures = 2;
  while (luckLevel(Number(p.toPrecision(figures))) !== luckLevel(p)) figures += 1;
  return `p = ${Number(p.toPrecision(figures))}`;
}

const VERDICTS = [
  "could well be luck",
  "does not rule luck out",
  "is hard to put down to luck",
  "is very hard to put down to luck",
];

/** What a p says of luck, as the end of a sentence. */
export const luckVerdict = (p: number): string => VERDICTS[luckLevel(p)] ?? "";

/**
 * What a panel's rankings amount to, in plain words and always with the number and the method.
 *
 * Thresholds: p < 0.01 "very hard to put down to luck", p < 0.05 "hard to put down to luck", p < 0.2 "does not
 * rule luck out", else "could well be luck". 0.05 and 0.01 are the customary levels; 0.2, one in five, and the words
 * are this project's. p is one upper tail of Friedman's test: it says that the rankings agree more than luck would, not
 * which glass is best or by how much.
 *
 * @example rankingWords(friedman([[1, 2, 3], [1, 2, 3], [1, 2, 3]]))
 * // "The agreement is hard to put down to luck (p = 0.028, Friedman's test, exact, 3 tasters, 3 glasses)."
 */
export function rankingWords(test: Friedman): string {
  const panel = `${test.judges} ${test.judges === 1 ? "taster" : "tasters"}, ${test.items} glasses`;
  if (!test.ok) return `Nobody told any of the glasses apart: every ranking is one big tie (${panel}).`;
  if (test.judges === 1) return `One ranking has nothing to agree with: no test can be made (${panel}).`;
  const how = test.method === "exact" ? "exact" : `chi-square approximation, ${test.df} degrees of freedom`;
  return `The agreement ${luckVerdict(test.p)} (${shownP(test.p)}, Friedman's test, ${how}, ${panel}).`;
}
