import {
  expectedDistance,
  type FoundRecipe,
  type Problem,
  probabilityCloser,
} from "@partsproof/core/blending";
import type { SearchRecipe } from "../../protocol/index.ts";

/** Recipes of a list as the API gives them. */
export function shownRecipes(problem: Problem, recipes: readonly FoundRecipe[]): SearchRecipe[] {
  const [first] = recipes;
  return recipes.map((recipe) => ({
    parts: recipe.parts.map((line) => ({ ...line })),
    distance: recipe.distance,
    abv: recipe.abv20,
    pricePerLitre: recipe.pricePerLitre,
    ageYears: recipe.youngestYears,
    predicted: { ...recipe.predicted },
    // Equal where nothing is uncertain, but for the last bit: the sums are taken in different orders.
    expectedDistance: Math.max(recipe.distance, expectedDistance(problem, recipe)),
    firstIsCloser: first === undefined || recipe === first ? null : probabilityCloser(problem, first, recipe),
  }));
}
