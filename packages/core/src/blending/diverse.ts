import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { sharesOf } from "./spread-of.ts";

/** How unlike two recipes are: the share of the glass that is different, 0 to 1. */
export function unlikeness(problem: Problem, a: FoundRecipe, b: FoundRecipe): number {
  const sharesB = sharesOf(problem, b);
  let common = 0;
  for (const [id, share] of sharesOf(problem, a)) common += Math.min(share, sharesB.get(id) ?? 0);
  return 1 - common;
}

/**
 * The best recipe of a list, then each next one that is at least `apart` unlike all those taken. From a proven list of the best N
 * it gives the best first, and after each the best of the N that is unlike enough; a longer list may give more.
 */
export function diverse(
  problem: Problem,
  recipes: readonly FoundRecipe[],
  apart: number,
): readonly FoundRecipe[] {
  const taken: FoundRecipe[] = [];
  for (const recipe of recipes)
    if (taken.every((other) => unlikeness(problem, recipe, other) >= apart - 1e-12)) taken.push(recipe);
  return taken;
}
