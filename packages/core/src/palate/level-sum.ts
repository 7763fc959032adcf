import type { AttributeBelief } from "./attribute-belief.ts";
import type { Sum } from "./studied.ts";

const NONE = new Float64Array(64);

/** Coefficients of the core's numbers, the leaf told by them, written over each time. */
let work = new Float64Array(64);
function coefficientsOf({ pull }: AttributeBelief, { base, leaf }: Sum): Float64Array {
  if (work.length < base.length) work = new Float64Array(2 * base.length);
  const by = leaf >= 0 ? (pull[leaf] as Float64Array) : NONE;
  if (leaf < 0) work.set(base);
  else for (let i = 0; i < base.length; i += 1) work[i] = (base[i] as number) + (by[i] as number);
  return work;
}

export function meanOf(belief: AttributeBelief, sum: Sum): number {
  const { places, leaf } = sum;
  const coefficients = coefficientsOf(belief, sum);
  let mean = leaf >= 0 ? (belief.leafRest[leaf] as number) : 0;
  for (let i = 0; i < places.length; i += 1)
    mean += (coefficients[i] as number) * (belief.core[places[i] as number] as number);
  return mean;
}

export function varianceOf(belief: AttributeBelief, sum: Sum): number {
  const { core, covariance } = belief;
  const { places, leaf } = sum;
  const c = core.length;
  const coefficients = coefficientsOf(belief, sum);
  let variance = leaf >= 0 ? (belief.leafVariance[leaf] as number) : 0;
  for (let i = 0; i < places.length; i += 1) {
    const row = (places[i] as number) * c;
    let part = ((coefficients[i] as number) * (covariance[row + (places[i] as number)] as number)) / 2;
    for (let j = 0; j < i; j += 1)
      part += (coefficients[j] as number) * (covariance[row + (places[j] as number)] as number);
    variance += 2 * (coefficients[i] as number) * part;
  }
  return variance;
}

/** Covariances of the sum with `count` of the core's numbers from `from` on. */
export function withNumbers(belief: AttributeBelief, sum: Sum, from: number, count: number): Float64Array {
  const { core, covariance } = belief;
  const coefficients = coefficientsOf(belief, sum);
  const out = new Float64Array(count);
  for (let i = 0; i < sum.places.length; i += 1) {
    const row = (sum.places[i] as number) * core.length + from;
    const by = coefficients[i] as number;
    for (let j = 0; j < count; j += 1) out[j] = (out[j] as number) + by * (covariance[row + j] as number);
  }
  return out;
}

/** Covariance of two sums, from the first's covariances with the core; what they have of one leaf besides is not in it. */
export function throughCore(withCore: Float64Array, belief: AttributeBelief, sum: Sum): number {
  const coefficients = coefficientsOf(belief, sum);
  let covariance = 0;
  for (let i = 0; i < sum.places.length; i += 1)
    covariance += (coefficients[i] as number) * (withCore[sum.places[i] as number] as number);
  return covariance;
}
