import type { Component } from "./composition.ts";
import type { Facts } from "./facts.ts";

export type GrainShares = {
  /** Share of the alcohol by the grain it was made from, the largest first. */
  readonly grainShares: readonly { readonly grain: string; readonly share: number }[];
  /** Share of the alcohol whose grain is not stated; with `grainShares` it adds up to 1. 0 without alcohol. */
  readonly unknownGrainShare: number;
};

/** Grain bills are written in rounded per cent; together they may miss 1 by this much. */
const ROUNDING = 1e-6;

/**
 * Each whiskey's grain bill, weighted by the mass of pure alcohol it brought (common practice, no source).
 * A bill that adds up to less than 1 leaves its remainder unknown.
 *
 * @throws {RangeError} when a grain bill has a share outside 0 to 1 or adds up to more than 1.
 */
export function grainSharesOf(composition: readonly Component[], facts: Facts): GrainShares {
  const shares = new Map<string, number>();
  let unknownGrainShare = 0;
  for (const { liquidId, shareOfAlcohol } of composition) {
    if (shareOfAlcohol === 0) continue;
    const grains = facts.get(liquidId)?.grains ?? [];
    const stated = grains.reduce((sum, { share }) => sum + share, 0);
    if (!grains.every(({ share }) => share >= 0 && share <= 1) || stated > 1 + ROUNDING)
      throw new RangeError(
        `grain bill of ${liquidId} requires shares of 0 to 1 that add up to at most 1, got ${grains
          .map(({ grain, share }) => `${grain} ${share}`)
          .join(", ")}`,
      );
    const whole = Math.max(1, stated);
    for (const { grain, share } of grains)
      shares.set(grain, (shares.get(grain) ?? 0) + (shareOfAlcohol * share) / whole);
    unknownGrainShare += shareOfAlcohol * Math.max(0, 1 - stated);
  }
  const grainShares = [...shares]
    .map(([grain, share]) => ({ grain, share }))
    .toSorted((a, b) => b.share - a.share || (a.grain < b.grain ? -1 : 1));
  return { grainShares, unknownGrainShare };
}
