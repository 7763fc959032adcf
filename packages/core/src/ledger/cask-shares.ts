import type { Component } from "./composition.ts";
import type { Facts } from "./facts.ts";

export type CaskShares = {
  /** Share of the alcohol that has lain in each kind of cask, the largest first. */
  readonly casks: readonly {
    readonly species: string;
    readonly held: string;
    readonly shareOfAlcohol: number;
  }[];
  /** Share of the alcohol of which no cask is known. */
  readonly unknownCaskShare: number;
};

/**
 * Casks weighted by the mass of pure alcohol that has lain in them (common practice, no source). A whiskey
 * that has lain in two kinds of cask counts whole in both, so these shares can add up to more than 1.
 */
export function caskSharesOf(composition: readonly Component[], facts: Facts): CaskShares {
  const shares = new Map<string, { species: string; held: string; shareOfAlcohol: number }>();
  let unknownCaskShare = 0;
  for (const { liquidId, shareOfAlcohol } of composition) {
    if (shareOfAlcohol === 0) continue;
    const casks = facts.get(liquidId)?.casks ?? [];
    if (casks.length === 0) unknownCaskShare += shareOfAlcohol;
    const kinds = new Map(
      casks.map(({ species, held }) => [JSON.stringify([species, held]), { species, held }]),
    );
    for (const [key, kind] of kinds) {
      const before = shares.get(key)?.shareOfAlcohol ?? 0;
      shares.set(key, { ...kind, shareOfAlcohol: before + shareOfAlcohol });
    }
  }
  const casks = [...shares]
    .toSorted(([a, x], [b, y]) => y.shareOfAlcohol - x.shareOfAlcohol || (a < b ? -1 : 1))
    .map(([, share]) => share);
  return { casks, unknownCaskShare };
}
