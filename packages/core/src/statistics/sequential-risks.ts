export type Verdict = "upper" | "lower" | "go on";

export interface SequentialRisks {
  readonly upper: number;
  readonly lower: number;
  /** No verdict within the most trials. */
  readonly undecided: number;
  /** Expected trials, those without a verdict counted as the most. */
  readonly expectedTrials: number;
}

/**
 * What a rule that may stop after every trial really does when the chance of a success is p: every path gone through by counts.
 *
 * Accuracy: sums of positive chances, relative 1e-12.
 *
 * @param verdict the rule, asked after each trial
 * @param most trials after which it ends without a verdict
 * @throws RangeError unless 0 <= p <= 1 and `most` is whole and 1 to 10000
 * @example sequentialRisks((right, n) => (right === n && n === 3 ? "upper" : "go on"), 0.5, 3).upper // 0.125
 */
export function sequentialRisks(
  verdict: (right: number, n: number) => Verdict,
  p: number,
  most: number,
): SequentialRisks {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`sequentialRisks requires a chance from 0 to 1, got ${p}`);
  if (!Number.isInteger(most) || most < 1 || most > 10_000) {
    throw new RangeError(`sequentialRisks requires 1 to 10000 trials, got ${most}`);
  }
  const ended = { upper: 0, lower: 0 };
  let expectedTrials = 0;
  let alive = [1];
  for (let n = 1; n <= most; n += 1) {
    const next = Array.from({ length: n + 1 }, () => 0);
    alive.forEach((weight, right) => {
      expectedTrials += weight;
      next[right] = (next[right] as number) + weight * (1 - p);
      next[right + 1] = (next[right + 1] as number) + weight * p;
    });
    alive = next.map((weight, right) => {
      if (weight === 0) return 0;
      const here = verdict(right, n);
      if (here === "go on") return weight;
      ended[here] += weight;
      return 0;
    });
  }
  return { ...ended, undecided: alive.reduce((sum, x) => sum + x, 0), expectedTrials };
}
