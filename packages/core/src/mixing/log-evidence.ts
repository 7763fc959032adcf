import { cholesky } from "../numeric/index.ts";
import type { Foretold } from "./foretold.ts";
import type { NotedLevel } from "./noted-mix.ts";

/**
 * The log density of what was noted of the mixes, as foretold, both taken to be normal: off by the parts, by the note, and by what no law
 * says (`misfit`, one standard deviation).
 */
export function logEvidence(
  { mean, covariance }: Foretold,
  noted: readonly NotedLevel[],
  misfit: number,
): number {
  const n = noted.length;
  const spread = covariance.slice();
  for (const [i, { sd }] of noted.entries()) spread[i * n + i]! += sd * sd + misfit * misfit;
  const root = cholesky(spread, n);
  if (root === null) throw new Error("logEvidence requires spreads above 0");
  let sum = (-n / 2) * Math.log(2 * Math.PI);
  const off = new Float64Array(n);
  for (const [i, level] of noted.entries()) {
    let left = level.mean - mean[i]!;
    for (let k = 0; k < i; k += 1) left -= root[i * n + k]! * off[k]!;
    off[i] = left / root[i * n + i]!;
    sum -= off[i] ** 2 / 2 + Math.log(root[i * n + i]!);
  }
  return sum;
}
