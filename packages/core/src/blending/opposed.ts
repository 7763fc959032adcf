import type { Frame } from "./frame.ts";
import type { Groups } from "./groups.ts";

/**
 * How far apart a whiskey and a group can point at most: the least cosine in M of each whiskey with the members of each group, row
 * by row, at most 0; 1 when every pair is NaN. Cosines of 0 or less stay above what they are as the threshold falls.
 */
export function opposedTo(
  frame: Frame,
  pairs: Float64Array,
  gram: Float64Array,
  groups: Groups,
): Float64Array {
  const { alpha, beta } = frame;
  const n = beta.length;
  const { of, count } = groups;
  const least = new Float64Array(n * count).fill(1);
  const root = new Float64Array(n);
  for (let k = 0; k < n; k += 1)
    root[k] = 1 / Math.sqrt(gram[k * n + k]! - beta[k]! * beta[k]! + 2 * alpha[k]!);
  for (let k = 0; k < n; k += 1)
    for (let l = 0; l < n; l += 1) {
      const cosine = (pairs[k * n + l]! - beta[k]! * beta[l]! + alpha[k]! + alpha[l]!) * root[k]! * root[l]!;
      const at = k * count + of[l]!;
      if (cosine < least[at]!) least[at] = Math.min(0, cosine);
    }
  return least;
}
