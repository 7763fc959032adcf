import type { ShelfWhiskey } from "@partsproof/core/blending";
import { abv20 } from "@partsproof/core/quantity";
import type { LearnedMixing, Vessel, Whiskey } from "@partsproof/house/protocol";
import { inOrder } from "./attributes.ts";
import { type Taste, tasteOf } from "./taste.ts";

export interface Shelf {
  /** Those with a profile. What nobody has said of one is null, never left out. */
  readonly whiskeys: readonly ShelfWhiskey[];
  readonly tastes: ReadonlyMap<string, Taste>;
  /** Every attribute somebody has said anything of. */
  readonly attributes: readonly string[];
  /** Ids of those with something left. */
  readonly onShelf: readonly string[];
  /** Ids of those without a profile: they cannot be searched. */
  readonly untasted: readonly string[];
  /** Attributes that were found not to mix by the mean of the parts. */
  readonly laws: readonly LearnedMixing[];
}

/** The household's whiskeys as core searches them; prices in minor units a litre. */
export function shelfOf(
  whiskeys: readonly Whiskey[],
  vessels: readonly Pick<Vessel, "whiskeyId" | "contents" | "keptMl">[],
  mixing: readonly LearnedMixing[] = [],
): Shelf {
  const left = new Map<string, number>();
  for (const { whiskeyId, contents, keptMl } of vessels)
    if (whiskeyId !== null)
      left.set(whiskeyId, (left.get(whiskeyId) ?? 0) + Math.max(0, contents.volumeMl - keptMl));
  const tastes = new Map<string, Taste>();
  for (const whiskey of whiskeys) {
    const taste = tasteOf(whiskey);
    if (taste !== null) tastes.set(whiskey.id, taste);
  }
  const attributes = inOrder([...new Set([...tastes.values()].flatMap(({ values }) => Object.keys(values)))]);
  const tasted = whiskeys.filter(({ id }) => tastes.has(id));
  return {
    whiskeys: tasted.map((whiskey) =>
      shelfWhiskey(whiskey, tastes.get(whiskey.id)?.values ?? {}, attributes, left.get(whiskey.id) ?? 0),
    ),
    tastes,
    attributes,
    onShelf: tasted.filter(({ id }) => (left.get(id) ?? 0) > 0).map(({ id }) => id),
    laws: mixing.filter(({ law }) => law !== "mean"),
    untasted: whiskeys.filter(({ id }) => !tastes.has(id)).map(({ id }) => id),
  };
}

function shelfWhiskey(
  whiskey: Whiskey,
  values: Taste["values"],
  attributes: readonly string[],
  availableMl: number,
): ShelfWhiskey {
  return {
    id: whiskey.id,
    abv20: abv20(whiskey.abv20),
    profile: Object.fromEntries(attributes.map((attribute) => [attribute, values[attribute] ?? null])),
    pricePerLitre: whiskey.priceMinor === null ? null : (1000 * whiskey.priceMinor) / whiskey.bottleMl,
    availableMl,
    ageYears: whiskey.ageYears,
    grains:
      whiskey.grains === null
        ? null
        : Object.fromEntries(whiskey.grains.map(({ grain, percent }) => [grain, percent / 100])),
    casks: whiskey.casks.length === 0 ? null : whiskey.casks,
    maker: whiskey.maker,
    group: whiskey.distilledAt,
    gone: whiskey.availability === "gone",
  };
}
