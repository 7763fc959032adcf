/** One whiskey as it is believed to taste: value and spread by attribute; one that is left out is 0, exactly. */
export interface KnownWhiskey {
  readonly id: string;
  readonly profile: Readonly<Record<string, { readonly value: number; readonly sd: number }>>;
}

/** Whole parts by whiskey; a whiskey that is left out has none. */
export type Parts = Readonly<Record<string, number>>;

export interface TriedRecipe {
  readonly id: string;
  readonly parts: Parts;
}

/** Groups of ties, best first; each glass by the id of what was tried. */
export type TriedRanking = readonly (readonly string[])[];

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/**
 * Parts in the order of `ids` and in lowest terms.
 *
 * @throws RangeError when a part is not whole or all are 0
 * @example lowestTerms(["malt", "rye"], { rye: 2, malt: 4 }) // [2, 1]
 */
export function lowestTerms(ids: readonly string[], parts: Parts): number[] {
  const whole = ids.map((id) => (Object.hasOwn(parts, id) ? (parts[id] as number) : 0));
  const bad = whole.find((part) => !(Number.isInteger(part) && part >= 0));
  if (bad !== undefined) throw new RangeError(`a recipe requires whole parts of 0 or more, got ${bad}`);
  const low = inLowestTerms(whole);
  if (low === null) throw new RangeError("a recipe requires a part above 0, got none");
  return low;
}

/** Whole parts of 0 or more by what divides them all; null where all are 0. */
export function inLowestTerms(whole: readonly number[]): number[] | null {
  const common = whole.reduce(divisor, 0);
  return common === 0 ? null : whole.map((part) => part / common);
}

/** Shares of whole parts. */
export function sharesOf(whole: readonly number[]): number[] {
  const sum = whole.reduce((total, part) => total + part, 0);
  return whole.map((part) => part / sum);
}

/** Whole parts by whiskey, those of 0 left out. */
export const partsBy = (ids: readonly string[], whole: readonly number[]): Parts =>
  Object.fromEntries(ids.flatMap((id, i) => ((whole[i] as number) > 0 ? [[id, whole[i] as number]] : [])));
