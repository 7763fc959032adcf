import { studentTwoSided } from "./student-and-f-laws.ts";

export interface SignFlipTest {
  readonly mean: number;
  /** Two-sided: P(the mean this far from 0 or farther) when each difference might as well have had the other sign. */
  readonly p: number;
  readonly method: "exact" | "student";
}

/** Most differences other than 0 for which every choice of signs is gone through: 2^19 pairs of opposites. */
export const SIGN_FLIP_EXACT = 20;

/**
 * Whether paired differences have a mean other than 0: Fisher's exact test by flipping signs.
 *
 * Exact given the sizes of the differences, whatever their law, if under the claim to be refuted each is as likely to be positive as
 * negative. Differences of 0 say nothing and are left out of the count. Above 20 others Student's t is used and `method` says so.
 *
 * Source: Fisher, The Design of Experiments, 1935, section 21; Pitman, J. R. Stat. Soc. Suppl. 4 (1937) 119 (from memory).
 *
 * @throws RangeError when there is no difference or one is not finite
 * @example signFlipTest([1, 2, 3]) // p 0.25
 */
export function signFlipTest(differences: readonly number[]): SignFlipTest {
  if (differences.length === 0) throw new RangeError("signFlipTest requires at least 1 difference, got 0");
  const bad = differences.find((x) => !Number.isFinite(x));
  if (bad !== undefined) throw new RangeError(`signFlipTest requires finite differences, got ${bad}`);
  const total = differences.reduce((sum, x) => sum + x, 0);
  const mean = total / differences.length;
  const sizes = differences.map(Math.abs).filter((x) => x > 0);
  if (sizes.length === 0) return { mean, p: 1, method: "exact" };
  if (sizes.length > SIGN_FLIP_EXACT) {
    const n = differences.length;
    const variance = differences.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1);
    return { mean, p: studentTwoSided(mean / Math.sqrt(variance / n), n - 1), method: "student" };
  }
  const all = sizes.reduce((sum, x) => sum + x, 0);
  // Sums that differ only by rounding are the same sum.
  const least = Math.abs(total) - 1e-9 * all;
  const signs = sizes.map(() => 1);
  let sum = all;
  let far = sum >= least ? 1 : 0;
  // Gray code: one sign turns at a time; the first stays, its opposites being mirror images.
  const choices = 2 ** (sizes.length - 1);
  for (let i = 1; i < choices; i += 1) {
    const turn = 1 + (31 - Math.clz32(i & -i));
    const sign = -(signs[turn] as number);
    signs[turn] = sign;
    sum += 2 * sign * (sizes[turn] as number);
    if (Math.abs(sum) >= least) far += 1;
  }
  return { mean, p: far / choices, method: "exact" };
}
