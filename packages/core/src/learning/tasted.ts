import type { RankedSet } from "../statistics/index.ts";
import { marksOf, type NumberedSheet, type TastedMarks } from "./marks.ts";
import type { TriedRanking } from "./recipe.ts";

/** A recipe as one taster finds it; null where all are taken for one palate. Rankings of nobody are of one palate of their own, "". */
export interface Tasted {
  readonly recipe: number;
  readonly taster: string | null;
}

/** Rankings and marks over what was tasted by number. */
export interface TastedSets {
  readonly tasted: readonly Tasted[];
  readonly sets: readonly RankedSet[];
  readonly sheets: readonly TastedMarks[];
}

/** Who made a ranking, and its groups of ties by number of the recipe. */
export interface NumberedRanking {
  readonly taster: string;
  readonly places: readonly (readonly number[])[];
}

/** Rankings that say something, with recipes by number. @throws RangeError on a ranking of what was not tried */
export function numbered(
  rankings: readonly TriedRanking[],
  tasters: readonly (string | null)[],
  recipeOf: ReadonlyMap<string, number>,
): NumberedRanking[] {
  return rankings.flatMap((ranking, r) => {
    const groups = ranking.filter((group) => group.length > 0);
    if (groups.flat().length < 2) return [];
    const places = groups.map((group) =>
      group.map((id) => {
        const at = recipeOf.get(id);
        if (at === undefined)
          throw new RangeError(`learnTaste requires rankings of what was tried, got ${id}`);
        return at;
      }),
    );
    return [{ taster: tasters[r] ?? "", places }];
  });
}

/** All recipes tasted by one palate, whoever ranked and marked them. */
export const asOnePalate = (
  rankings: readonly NumberedRanking[],
  sheets: readonly NumberedSheet[],
  recipes: number,
): TastedSets => ({
  tasted: Array.from({ length: recipes }, (_, recipe) => ({ recipe, taster: null })),
  sets: setsOf(rankings, (recipe) => recipe),
  sheets: marksOf(sheets, (recipe) => recipe),
});

/** Each recipe once for every taster who ranked or marked it. */
export function asTasters(
  rankings: readonly NumberedRanking[],
  sheets: readonly NumberedSheet[],
): TastedSets {
  const pairs = new Map<string, Tasted>();
  const keyOf = (recipe: number, taster: string): string => `${recipe} ${taster}`;
  const looked = [...rankings.map(({ taster, places }) => ({ taster, recipes: places.flat() })), ...sheets];
  for (const { taster, recipes } of looked)
    for (const recipe of recipes) pairs.set(keyOf(recipe, taster), { recipe, taster });
  const keys = [...pairs.keys()].toSorted();
  const placeOf = new Map(keys.map((key, at) => [key, at]));
  const at = (recipe: number, taster: string): number => placeOf.get(keyOf(recipe, taster)) as number;
  return {
    tasted: keys.map((key) => pairs.get(key) as Tasted),
    sets: setsOf(rankings, at),
    sheets: marksOf(sheets, at),
  };
}

function setsOf(
  rankings: readonly NumberedRanking[],
  at: (recipe: number, taster: string) => number,
): RankedSet[] {
  const sets = rankings.map(({ taster, places }): RankedSet => {
    const numbers = places.map((group) =>
      group.map((recipe) => at(recipe, taster)).toSorted((a, b) => a - b),
    );
    return {
      appeals: numbers.flat().map((number) => [[number, 1] as const]),
      sizes: places.map((group) => group.length),
      times: 1,
    };
  });
  const key = ({ appeals, sizes }: RankedSet): string => `${appeals.join(";")}|${sizes.join()}`;
  // Sums must not depend on the order of the evenings, not even in rounding.
  return sets.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
}
