import type { Parts } from "./recipe.ts";
import type { ShelfLeft } from "./shelf-left.ts";
import { eachOnce } from "./to-mix.ts";

/** A glass that somebody means to pour, proposed or their own. */
export interface MeantGlass {
  readonly parts: Parts;
  /** Poured from what stands ready; else mixed for it. */
  readonly stands: boolean;
}

/** What glasses ask of a whiskey beyond what is left of it, mL. */
export interface FlightLack {
  readonly id: string;
  readonly needMl: number;
  readonly leftMl: number;
}

/** What rounding leaves, mL. */
const NOTHING_ML = 1e-9;

/**
 * Of which whiskeys glasses together ask for more than is left, the most lacking first. Glasses of one recipe are poured of one mix. What
 * stands ready takes what is there at most: it is poured smaller rather than not at all.
 *
 * @throws RangeError on an amount left that is not 0 mL or more
 * @example flightLack([{ parts: { malt: 1 }, stands: false }], { leftMl: { malt: 20 }, takes }) // malt: 30 of 20, where a mix is 30 mL
 */
export function flightLack(
  glasses: readonly MeantGlass[],
  { leftMl, takes }: ShelfLeft,
): readonly FlightLack[] {
  const need = new Map<string, number>();
  for (const { parts, stands } of eachOnce(glasses).toSorted((a, b) => Number(b.stands) - Number(a.stands)))
    for (const [id, ml] of Object.entries(takes(parts, stands))) {
      const so = need.get(id) ?? 0;
      need.set(id, stands ? Math.max(so, Math.min(so + ml, leftMl[id] ?? Infinity)) : so + ml);
    }
  return [...need]
    .flatMap(([id, needMl]): FlightLack[] => {
      const left = leftMl[id] ?? Infinity;
      if (!(left >= 0)) throw new RangeError(`${id} requires 0 mL or more left, got ${left} mL`);
      return needMl > left + NOTHING_ML ? [{ id, needMl, leftMl: left }] : [];
    })
    .toSorted((a, b) => b.needMl - b.leftMl - (a.needMl - a.leftMl) || (a.id < b.id ? -1 : 1));
}
