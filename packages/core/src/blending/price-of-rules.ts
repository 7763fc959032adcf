import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { search } from "./search.ts";

export type PriceOfRule = {
  readonly name: string;
  /** How much closer the best would be without the rule: 0 or more; null when no recipe keeps them all, and this rule is why or not. */
  readonly costs: number | null;
  /** The best without the rule; null when there is none even then. */
  readonly without: FoundRecipe | null;
};

/** What each rule costs: the proven best score with all rules less the proven best without that one. */
export function priceOfRules(problem: Problem): readonly PriceOfRule[] {
  const [best] = search(problem, 1).recipes;
  return problem.rules.map(({ name }) => {
    const rules = problem.rules.filter((rule) => rule.name !== name);
    const [without = null] = search({ ...problem, rules }, 1).recipes;
    // The search without the rule has more to choose from; what is left of rounding is not a gain.
    const costs = best === undefined || without === null ? null : Math.max(0, best.score - without.score);
    return { name, costs, without };
  });
}
