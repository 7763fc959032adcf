import { inverseOf, maximiseConcave, type Concave } from "../numeric/index.ts";
import { type Appeal, type RankedSet, tieSizes } from "./ranked-set.ts";
import { rankingLogLikelihood } from "./ranking-likelihood.ts";
import { type NoMaximum, splitOf } from "./win-graph.ts";

export interface MostLikelyWorths {
  readonly ok: true;
  /** Natural logs, the first item's being 0. */
  readonly logWorth: readonly number[];
  /** From the observed information; the first is 0. */
  readonly standardError: readonly number[];
  /** Parameters besides the items' own, in their order (order of serving, first glass …). */
  readonly extra: readonly { readonly value: number; readonly standardError: number }[];
  /** δ of every size of tie that occurs. */
  readonly ties: readonly { readonly size: number; readonly delta: number }[];
  readonly logLikelihood: number;
  readonly steps: number;
}

/** `f` with its first variable held at 0. */
const firstHeld = (f: Concave): Concave => {
  const whole = (x: Float64Array): Float64Array => Float64Array.of(0, ...x);
  const size = f.size - 1;
  return {
    size,
    value: (x) => f.value(whole(x)),
    curve(x) {
      const { value, gradient, curvature } = f.curve(whole(x));
      const less = new Float64Array(size * size);
      for (let i = 0; i < size; i += 1) {
        for (let j = 0; j < size; j += 1) less[i * size + j] = curvature[(i + 1) * f.size + j + 1] as number;
      }
      return { value, gradient: gradient.subarray(1), curvature: less };
    },
  };
};

/** Whom each item was placed just ahead of, or level with: whoever comes later can be reached from there. */
function beaten(sets: readonly RankedSet[], items: number): Set<number>[] {
  const own = (appeal: Appeal | undefined): number =>
    appeal?.find(([parameter]) => parameter < items)?.[0] ?? -1;
  const beat: Set<number>[] = Array.from({ length: items }, () => new Set());
  for (const { appeals, sizes, times } of sets) {
    if (times === 0) continue;
    let from = 0;
    for (const [place, size] of sizes.entries()) {
      const upTo = from + size + (sizes[place + 1] ?? 0);
      for (let i = from; i < from + size; i += 1) {
        for (let j = from; j < upTo; j += 1) if (i !== j) beat[own(appeals[i])]?.add(own(appeals[j]));
      }
      from += size;
    }
  }
  return beat;
}

/**
 * The most likely log worths of `items` items (parameters 0 to items − 1), with whatever other parameters the appeals name.
 *
 * Maximum likelihood by Newton's method: the gradient is 0 to within rounding (relative 1e-9 of the worths where they are within 20 of
 * each other). When no maximum exists it says why: first by the graph of who was ever ahead of whom, else, with ties or other
 * parameters, when the steps don't shrink on the way up.
 *
 * @throws RangeError when there are fewer than 2 items
 */
export function mostLikelyWorths(
  sets: readonly RankedSet[],
  items: number,
  extras = 0,
): MostLikelyWorths | NoMaximum {
  if (!Number.isInteger(items) || items < 2)
    throw new RangeError(`mostLikelyWorths requires 2 items or more, got ${items}`);
  const split = splitOf(beaten(sets, items));
  if (split !== null) return split;
  const sizes = tieSizes(sets);
  const f = firstHeld(rankingLogLikelihood(sets, items + extras, sizes));
  const top = maximiseConcave(f, new Float64Array(f.size));
  if (top === null || top.lastStep > 1e-3) {
    return { ok: false, code: "runs_away", ahead: [], behind: [] };
  }
  const covariance = inverseOf(top.factor, f.size);
  const error = (i: number): number => Math.sqrt(covariance[i * f.size + i] as number);
  return {
    ok: true,
    logWorth: [0, ...top.at.subarray(0, items - 1)],
    standardError: [0, ...Array.from({ length: items - 1 }, (_, i) => error(i))],
    extra: Array.from({ length: extras }, (_, i) => ({
      value: top.at[items - 1 + i] as number,
      standardError: error(items - 1 + i),
    })),
    ties: sizes.map((size, i) => ({ size, delta: Math.exp(top.at[items - 1 + extras + i] as number) })),
    logLikelihood: top.value,
    steps: top.steps,
  };
}
