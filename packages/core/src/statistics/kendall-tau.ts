import { inversionLaw } from "./inversion-law.ts";
import { normalCumulative } from "./normal-law.ts";

export interface KendallTau {
  /** Kendall's tau-b: −1 turned round, 0 nothing to do with each other, 1 the same order. Null when one of them is all ties. */
  readonly tau: number | null;
  /** Pairs put the same way in both, and the other way round. */
  readonly same: number;
  readonly opposite: number;
  /** P(so much the same or more) by chance. */
  readonly pSame: number;
  /** Two-sided. */
  readonly p: number;
  readonly method: "exact" | "normal";
}

/** Most things for which the exact law is used. */
const TAU_EXACT = 12;

/** Sizes of the groups of equal values. */
function tied(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()];
}

/**
 * Whether two orders of the same things go together: a taster's first and second pass, or scores against time (Mann's test of drift).
 *
 * p is exact without ties up to 12 things, by the law of inversions; else the normal approximation with the variance corrected for them, and
 * `method` says so.
 *
 * Source: Kendall, Biometrika 30 (1938) 81; Mann, Econometrica 13 (1945) 245; Kendall, Rank Correlation Methods (ties), from memory.
 *
 * @throws RangeError with fewer than 2 pairs, different lengths, or a value that is not finite
 * @example kendallTau([1, 2, 3, 4], [1, 2, 4, 3]) // tau 0.667, pSame 4/24
 */
export function kendallTau(x: readonly number[], y: readonly number[]): KendallTau {
  const n = x.length;
  if (n !== y.length)
    throw new RangeError(`kendallTau requires as many values in both, got ${n} and ${y.length}`);
  if (n < 2) throw new RangeError(`kendallTau requires 2 pairs or more, got ${n}`);
  const bad = [...x, ...y].find((value) => !Number.isFinite(value));
  if (bad !== undefined) throw new RangeError(`kendallTau requires finite values, got ${bad}`);
  let [same, opposite] = [0, 0];
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < i; j += 1) {
      const way =
        Math.sign((x[i] as number) - (x[j] as number)) * Math.sign((y[i] as number) - (y[j] as number));
      if (way > 0) same += 1;
      if (way < 0) opposite += 1;
    }
  }
  const pairs = (n * (n - 1)) / 2;
  const over = (groups: readonly number[], f: (t: number) => number): number =>
    groups.reduce((sum, t) => sum + f(t), 0);
  const [a, b] = [tied(x), tied(y)];
  const untied = (groups: readonly number[]): number => pairs - over(groups, (t) => (t * (t - 1)) / 2);
  const [freeX, freeY] = [untied(a), untied(b)];
  if (freeX === 0 || freeY === 0) return { tau: null, same, opposite, pSame: 1, p: 1, method: "exact" };
  const tau = (same - opposite) / Math.sqrt(freeX * freeY);
  if (freeX === pairs && freeY === pairs && n <= TAU_EXACT) {
    // Few inversions and many are equally likely.
    const law = inversionLaw(n);
    const tail = (inversions: number): number => law.pAtLeast(pairs - inversions);
    return {
      tau,
      same,
      opposite,
      pSame: tail(opposite),
      p: Math.min(1, 2 * tail(Math.min(same, opposite))),
      method: "exact",
    };
  }
  const whole = (t: number): number => t * (t - 1) * (2 * t + 5);
  let variance = (whole(n) - over(a, whole) - over(b, whole)) / 18;
  const two = (t: number): number => t * (t - 1);
  variance += (over(a, two) * over(b, two)) / (2 * two(n));
  if (n > 2) {
    const three = (t: number): number => two(t) * (t - 2);
    variance += (over(a, three) * over(b, three)) / (9 * three(n));
  }
  const z = (same - opposite) / Math.sqrt(variance);
  return {
    tau,
    same,
    opposite,
    pSame: normalCumulative(-z),
    p: 2 * normalCumulative(-Math.abs(z)),
    method: "normal",
  };
}
