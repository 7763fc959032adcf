import type { Parts } from "./recipe.ts";

/** What is left to pour of, and what a glass of the flight takes. */
export interface ShelfLeft {
  /** mL left of each whiskey; one that is not named is never short. */
  readonly leftMl: Readonly<Record<string, number>>;
  /** mL of each whiskey that a glass takes for everyone: mixed anew, or poured from what stands ready. */
  readonly takes: (parts: Parts, ready: boolean) => Readonly<Record<string, number>>;
}

/** A shelf while glasses are taken from it, one after the other. */
export interface Larder {
  /** Whiskeys of which too little is left for one more such glass. */
  readonly short: (parts: Parts, ready: boolean) => readonly string[];
  readonly take: (parts: Parts, ready: boolean) => void;
}

/** What rounding leaves, mL. */
const NOTHING_ML = 1e-9;

/**
 * Counts what is left of each whiskey while glasses are taken.
 *
 * @throws RangeError on an amount left that is not 0 mL or more
 * @example larderOf({ leftMl: { malt: 20 }, takes }).short({ malt: 1 }, false) // ["malt"], where a glass takes 30 mL
 */
export function larderOf({ leftMl, takes }: ShelfLeft): Larder {
  const left = new Map(Object.entries(leftMl));
  for (const [id, ml] of left)
    if (!(ml >= 0)) throw new RangeError(`${id} requires 0 mL or more left, got ${ml} mL`);
  return {
    short: (parts, ready) =>
      Object.entries(takes(parts, ready)).flatMap(([id, ml]) =>
        ml > (left.get(id) ?? Infinity) + NOTHING_ML ? [id] : [],
      ),
    take: (parts, ready) => {
      for (const [id, ml] of Object.entries(takes(parts, ready)))
        left.set(id, Math.max(0, (left.get(id) ?? Infinity) - ml));
    },
  };
}
