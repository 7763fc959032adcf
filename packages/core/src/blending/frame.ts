import type { Space } from "./space.ts";

/**
 * A search with some lines of the recipe fixed, parts and all, and `left` parts still to give out (0: any number; then nothing is
 * fixed). With the threshold t it asks for the recipes p with p'Mp <= 0, where
 *
 *   M(k,l) = G(k,l) - beta(k) beta(l) + alpha(k) + alpha(l),   beta(k) = each(k) (t - goal(k)).
 *
 * Nothing fixed and no tilt: alpha is 0, and p'Mp <= 0 says that the distance is at most the threshold less the goals. With lines
 * fixed, the constants they bring are multiplied by 1 = (sum of p) / left, which makes them part of M. A tilt (multiples of the
 * rules' rows) takes tilt.p times the parts in all off, which is 0 or more for a recipe that keeps the rules.
 */
export type Frame = {
  readonly support: readonly number[];
  readonly parts: readonly number[];
  readonly sum: number;
  readonly left: number;
  /** Scalar products of the fixed lines' sum with each whiskey, and with itself. */
  readonly along: Float64Array;
  readonly square: number;
  readonly alpha: Float64Array;
  readonly beta: Float64Array;
  /** What was `threshold` when alpha and beta were last reckoned. */
  threshold: number;
  /** True when every beta (with its share of the fixed ones) is 0 or more, so that a lower threshold only raises M. */
  rising: boolean;
  /** No pair still to be looked at has a lower M(k,l) / sqrt(M(k,k) M(l,l)). */
  floor: number;
  /** The least of them for each whiskey with each group, from `opposedTo`, or null. */
  opposed: Float64Array | null;
};

export function frameOf(
  space: Space,
  support: readonly number[],
  parts: readonly number[],
  left: number,
): Frame {
  const { n, gram } = space;
  const along = new Float64Array(n);
  for (const [x, i] of support.entries())
    for (let l = 0, at = i * n; l < n; l += 1, at += 1) along[l]! += parts[x]! * gram[at]!;
  let square = 0;
  let sum = 0;
  for (const [x, i] of support.entries()) {
    square += parts[x]! * along[i]!;
    sum += parts[x]!;
  }
  const alpha = new Float64Array(n);
  const beta = new Float64Array(n);
  return {
    support,
    parts,
    sum,
    left,
    along,
    square,
    alpha,
    beta,
    threshold: Infinity,
    rising: false,
    floor: -1,
    opposed: null,
  };
}

/** Reckons alpha and beta for a threshold. */
export function setThreshold(
  { objective }: Space,
  tilt: Float64Array,
  frame: Frame,
  threshold: number,
): void {
  const { support, parts, left, along, square, sum, alpha, beta } = frame;
  const { each, goal } = objective;
  let fixed = 0;
  let tilted = 0;
  for (const [x, i] of support.entries()) {
    fixed += parts[x]! * each[i]! * (threshold - goal[i]!);
    tilted += parts[x]! * tilt[i]!;
  }
  const all = (sum + left) / (left || 1);
  frame.rising = true;
  for (let k = 0; k < beta.length; k += 1) {
    beta[k] = each[k]! * (threshold - goal[k]!);
    if (left === 0) alpha[k] = -tilt[k]! / 2;
    else
      alpha[k] =
        (along[k]! - fixed * beta[k]! - (tilted * all) / 2) / left +
        (square - fixed * fixed) / (2 * left * left) -
        (tilt[k]! * all) / 2;
    if (beta[k]! + (left > 0 ? fixed / left : 0) < 0) frame.rising = false;
  }
  frame.threshold = threshold;
}
