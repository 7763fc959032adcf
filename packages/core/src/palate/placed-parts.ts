import type { LearnedLevels } from "./learn-levels.ts";

/**
 * Amounts as places and shares, and the variance by which the mix strays from the mean of its parts.
 *
 * @throws RangeError on amounts that are not 0 or more with one above 0, or of a whiskey that is not given
 */
export function placedParts(
  { whiskeys, mixing }: Pick<LearnedLevels, "whiskeys" | "mixing">,
  parts: Readonly<Record<string, number>>,
): { readonly shares: readonly (readonly [number, number])[]; readonly strays: number } {
  const poured = Object.entries(parts).filter(([, part]) => part !== 0);
  const all = poured.reduce((sum, [, part]) => sum + part, 0);
  const shares = poured.map(([id, part]) => [whiskeys.indexOf(id), part / all] as const);
  if (shares.length === 0 || shares.some(([i, share]) => i < 0 || !(share > 0 && share < Infinity)))
    throw new RangeError(
      `a glass requires amounts above 0 of whiskeys that are given, got ${JSON.stringify(parts)}`,
    );
  const squares = shares.reduce((sum, [, share]) => sum + share * share, 0);
  return { shares, strays: 2 * Math.max(0, 1 - squares) * mixing ** 2 };
}
