/** Best first; glasses in one inner list are level. */
export type Tiers = readonly (readonly string[])[];

const without = (tiers: Tiers, code: string): Tiers =>
  tiers.map((tier) => tier.filter((one) => one !== code)).filter((tier) => tier.length > 0);

const placeOf = (tiers: Tiers, code: string): number => tiers.findIndex((tier) => tier.includes(code));

/** A glass alone at a place; it is counted before the glass leaves its old one. */
export function putBetween(tiers: Tiers, code: string, before: number): Tiers {
  const head = without(tiers.slice(0, before), code);
  const tail = without(tiers.slice(before), code);
  return [...head, [code], ...tail];
}

/** Level with those at a place. */
export function putLevel(tiers: Tiers, code: string, at: number): Tiers {
  if (tiers[at]?.includes(code)) return tiers;
  const target = tiers[at]?.[0];
  const rest = without(tiers, code);
  const place = target === undefined ? -1 : placeOf(rest, target);
  return place === -1 ? [...rest, [code]] : rest.map((tier, i) => (i === place ? [...tier, code] : tier));
}

/** One place better: out of a tie to stand alone above it, or past the place above. */
export function raise(tiers: Tiers, code: string): Tiers {
  const place = placeOf(tiers, code);
  if (place === -1) return tiers;
  if ((tiers[place]?.length ?? 0) > 1) return putBetween(tiers, code, place);
  return place === 0 ? tiers : putBetween(tiers, code, place - 1);
}

/** One place worse: out of a tie to stand alone below it, or past the place below. */
export function lower(tiers: Tiers, code: string): Tiers {
  const place = placeOf(tiers, code);
  if (place === -1) return tiers;
  if ((tiers[place]?.length ?? 0) > 1) return putBetween(tiers, code, place + 1);
  return place === tiers.length - 1 ? tiers : putBetween(tiers, code, place + 2);
}

/** Level with the place above; the best stays as it is. */
export function tieAbove(tiers: Tiers, code: string): Tiers {
  const place = placeOf(tiers, code);
  return place < 1 ? tiers : putLevel(tiers, code, place - 1);
}

export const takeOut = without;

/** "1", or "2 to 3, level" for those that share places. */
export function placeText(tiers: Tiers, place: number): string {
  const before = tiers.slice(0, place).reduce((sum, tier) => sum + tier.length, 0);
  const count = tiers[place]?.length ?? 1;
  return count === 1 ? String(before + 1) : `${before + 1}–${before + count}`;
}
