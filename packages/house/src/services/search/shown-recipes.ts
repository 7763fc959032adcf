import {
  cannotTellApart,
  expectedDistance,
  type FoundRecipe,
  type Problem,
  probabilityCloser,
} from "@partsproof/core/blending";
import type { SearchRecipe } from "../../protocol/index.ts";

/** Recipes of a list as the API gives them; `first` is what each of them is held against. */
export function shownRecipes(
  problem: Problem,
  recipes: readonly FoundRecipe[],
  first: FoundRecipe | undefined = recipes[0],
): SearchRecipe[] {
  const plain = isPlain(problem);
  return recipes.map((recipe) => ({
    parts: recipe.parts.map((line) => ({ ...line })),
    distance: recipe.distance,
    abv: recipe.abv20,
    pricePerLitre: recipe.pricePerLitre,
    ageYears: recipe.youngestYears,
    predicted: { ...recipe.predicted },
    // Equal where nothing is uncertain, but for the last bit: the sums are taken in different orders.
    expectedDistance: plain ? Math.max(recipe.distance, expectedDistance(problem, recipe)) : null,
    firstIsCloser:
      !plain || first === undefined || recipe === first ? null : probabilityCloser(problem, first, recipe),
  }));
}

/** The same for one recipe that may not be there. */
export const shownRecipe = (problem: Problem, recipe: FoundRecipe | null | undefined): SearchRecipe | null =>
  recipe ? (shownRecipes(problem, [recipe])[0] ?? null) : null;

/** How many of a list the first cannot be told from, itself counted. */
export const toldApart = (problem: Problem, recipes: readonly FoundRecipe[]): number =>
  isPlain(problem) ? cannotTellApart(problem, recipes).length : Math.min(1, recipes.length);

/** Core reckons with uncertainty where distances are squares. */
const isPlain = ({ distance }: Problem): boolean => distance !== "absolute";
