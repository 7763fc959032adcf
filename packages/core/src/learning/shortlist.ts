import { anyMixes } from "./any-mix.ts";
import type { Taste } from "./learn-taste.ts";
import type { PlacedMix } from "./mixture-kernel.ts";
import { sharesOf } from "./recipe.ts";

/** Recipes looked at closely: the most promising, and some from all over. */
const PROMISING = 110;
const ALL_OVER = 50;
/** A recipe is as promising as its mean and so many sds. */
const HOPE = 1.5;

export interface Shortlist {
  /** What was tried, in its order, and then recipes worth a closer look. */
  readonly mixes: Taste["recipes"];
  /** What is believed the best of the pool; null where that is empty. */
  readonly favourite: {
    readonly whole: readonly number[];
    readonly mean: number;
    readonly sd: number;
  } | null;
}

/**
 * The recipes of a pool that are worth drawing: most of it is neither good nor unknown enough.
 *
 * @example shortlist(taste, pourable(taste.ids, 8, [], rng)).mixes
 */
export function shortlist(taste: Taste, pool: readonly (readonly number[])[]): Shortlist {
  const places = pool.map((whole) => taste.kernel.place(sharesOf(whole)));
  const believed = anyMixes(taste, places);
  const placed = pool.map((whole, n) => ({
    whole,
    placed: places[n] as PlacedMix,
    ...(believed[n] as (typeof believed)[number]),
  }));
  let favourite: Shortlist["favourite"] = null;
  for (const one of placed) if (favourite === null || one.mean > favourite.mean) favourite = one;
  const sorted = placed.toSorted((a, b) => b.mean + HOPE * b.sd - (a.mean + HOPE * a.sd));
  const others = sorted.slice(PROMISING);
  const step = Math.max(1, others.length / ALL_OVER);
  const some = others.filter((_, n) => Math.floor(n / step) !== Math.floor((n - 1) / step));
  const known = new Set(taste.recipes.map(({ whole }) => whole.join()));
  return {
    mixes: [
      ...taste.recipes,
      ...[...sorted.slice(0, PROMISING), ...some].filter(({ whole }) => !known.has(whole.join())),
    ],
    favourite,
  };
}
