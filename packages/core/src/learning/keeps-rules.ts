import type { Parts } from "./recipe.ts";

/** What every new recipe must keep; a rule that is left out asks for nothing. */
export interface NextRules {
  /** Least share of the whole, by whiskey. */
  readonly least?: Readonly<Record<string, number>> | undefined;
  /** Most of the whole, by whiskey. */
  readonly most?: Readonly<Record<string, number>> | undefined;
  readonly fewestWhiskeys?: number | undefined;
  readonly mostWhiskeys?: number | undefined;
}

/** Shares that are equal but for rounding. */
const SAME = 1e-9;

/**
 * Whether a recipe keeps the rules.
 *
 * @example keepsRules({ most: { islander: 0.5 } })({ malt: 1, islander: 2 }) // false
 */
export function keepsRules({
  least = {},
  most = {},
  fewestWhiskeys = 1,
  mostWhiskeys = Infinity,
}: NextRules): (parts: Parts) => boolean {
  return (parts) => {
    const used = Object.values(parts).filter((part) => part > 0);
    const all = used.reduce((sum, part) => sum + part, 0);
    const share = (id: string): number => (Object.hasOwn(parts, id) ? (parts[id] as number) : 0) / all;
    return (
      used.length >= fewestWhiskeys &&
      used.length <= mostWhiskeys &&
      Object.entries(least).every(([id, bound]) => share(id) >= bound - SAME) &&
      Object.entries(most).every(([id, bound]) => share(id) <= bound + SAME)
    );
  };
}
