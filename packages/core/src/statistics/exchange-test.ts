/** One group of like things: the value of the one that is asked about, and those of the others. */
export interface ExchangeGroup {
  readonly own: number;
  readonly others: readonly number[];
}

export interface ExchangeTest {
  /** Sum of the own values. */
  readonly own: number;
  /** What the sum is on average when the own one is any of its group. */
  readonly expected: number;
  /** P(sum <= own) and P(sum >= own), each with own itself. */
  readonly lower: number;
  readonly upper: number;
  /** Two-sided: twice the smaller tail, at most 1. */
  readonly p: number;
  /** The least p that these groups can give, whichever of each is the own one. */
  readonly leastP: number;
}

/**
 * Whether one of each group has more, or less, than its group: the exact law of the sum when in every group the own one is any of them,
 * all as likely, group by group by themselves.
 *
 * With groups of yes and no (1 and 0) it is the exact test of Mantel and Haenszel for tables in which one row has one observation:
 * conditional on the totals of each table. With larger counts it is the permutation test within strata; what hangs together inside
 * one thing of a group stays together. Groups without others say nothing and are left out.
 *
 * Exact but for rounding: relative error below 1e-12 up to a thousand groups.
 *
 * Source: Mantel and Haenszel, J. Natl Cancer Inst. 22 (1959) 719; Pesarin, Multivariate Permutation Tests (2001), ch. 3 (from memory).
 *
 * @throws RangeError unless all values are whole and 0 or more
 * @example exchangeTest([{ own: 0, others: [1, 1] }, { own: 0, others: [2, 1, 1] }]).lower // 1/3 × 1/4
 */
export function exchangeTest(groups: readonly ExchangeGroup[]): ExchangeTest {
  let law: readonly number[] = [1];
  let [own, least, expected] = [0, 0, 0];
  for (const group of groups) {
    const all = [group.own, ...group.others];
    const bad = all.find((value) => !Number.isSafeInteger(value) || value < 0);
    if (bad !== undefined)
      throw new RangeError(`exchangeTest requires whole values of 0 or more, got ${bad}`);
    if (group.others.length === 0) continue;
    const low = Math.min(...all);
    law = oneMore(
      law,
      all.map((value) => value - low),
    );
    own += group.own;
    least += low;
    expected += all.reduce((sum, value) => sum + value, 0) / all.length;
  }
  const at = own - least;
  // Small terms first, so that a small tail keeps its digits.
  const lower = Math.min(1, total(law.slice(0, at + 1)));
  const upper = Math.min(1, total(law.slice(at)));
  return {
    own,
    expected,
    lower,
    upper,
    p: Math.min(1, 2 * Math.min(lower, upper)),
    leastP: Math.min(1, 2 * Math.min(law[0] ?? 1, law.at(-1) ?? 1)),
  };
}

/** The law of the sum so far and of one of these values besides. */
function oneMore(law: readonly number[], values: readonly number[]): number[] {
  const longer = Array.from({ length: law.length + Math.max(...values) }, () => 0);
  const each = 1 / values.length;
  for (const value of values)
    for (const [sum, chance] of law.entries())
      longer[sum + value] = (longer[sum + value] ?? 0) + chance * each;
  return longer;
}

const total = (chances: readonly number[]): number =>
  chances.toSorted((a, b) => a - b).reduce((sum, chance) => sum + chance, 0);
