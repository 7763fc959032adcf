import type { Problem, Target } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { search } from "./search.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

export type Purchase = {
  readonly id: string;
  /** How much lower the best score becomes, summed over the targets; 0 when it would not be used in any best recipe. */
  readonly gain: number;
  /** By target: the best recipe that uses it, where that beats the shelf's own best. */
  readonly recipes: readonly (FoundRecipe | null)[];
};

/** A target that no recipe reaches yet counts as this far off, the length of the scale. */
const OUT_OF_REACH = 10;

/**
 * Which one more whiskey helps most, for one target or several: for each candidate and target the proven best recipe that uses it,
 * against the proven best of the shelf. The greatest gain first; among equals in the order given.
 *
 * @throws RangeError when a candidate's id is on the shelf
 */
export function whatToBuy(
  problem: Problem,
  targets: readonly Target[],
  candidates: readonly ShelfWhiskey[],
): readonly Purchase[] {
  const own = targets.map((target) => search({ ...problem, target }, 1).recipes[0]?.score ?? OUT_OF_REACH);
  return candidates
    .map((candidate) => {
      const recipes = targets.map((target, t) => {
        const whiskeys = [...problem.whiskeys, candidate];
        const must = { name: "(the candidate)", kind: "mustUse", ids: [candidate.id] } as const;
        const [best = null] = search(
          { ...problem, target, whiskeys, rules: [...problem.rules, must] },
          1,
        ).recipes;
        return best !== null && best.score < own[t]! ? best : null;
      });
      const gain = recipes.reduce(
        (sum, recipe, t) => sum + (recipe === null ? 0 : own[t]! - recipe.score),
        0,
      );
      return { id: candidate.id, gain, recipes };
    })
    .toSorted((a, b) => b.gain - a.gain);
}

/**
 * The whiskeys of the shelf in none of the `top` best recipes for any of the targets: taking any one of them, or all, off the shelf
 * changes nothing of those lists. Proven, as the lists are.
 */
export function neverNeeded(problem: Problem, targets: readonly Target[], top: number): readonly string[] {
  const used = new Set(
    targets.flatMap((target) =>
      search({ ...problem, target }, top).recipes.flatMap(({ parts }) => parts.map(({ id }) => id)),
    ),
  );
  return problem.whiskeys.map(({ id }) => id).filter((id) => !used.has(id));
}
