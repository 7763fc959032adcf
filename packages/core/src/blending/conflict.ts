import { CanKeep, withOnly } from "./can-keep.ts";
import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { search } from "./search.ts";
import { subsetsOf } from "./subsets.ts";

export type Conflict = {
  /** A smallest set of rules that no recipe keeps together; every part of it can be kept. */
  readonly names: readonly string[];
  /** The recipe that breaks fewest rules, the closest of those, and which it breaks; null when the shelf has none at all. */
  readonly nearest: { readonly recipe: FoundRecipe; readonly breaks: readonly string[] } | null;
  /** False when some question took too long and was answered as "no recipe": the set may then be no conflict. */
  readonly proven: boolean;
};

/** Rules whose loss leaves the rest impossible are taken out one by one: what stays is a conflict that no rule can leave. */
function irreducible(names: readonly string[], can: CanKeep): readonly string[] {
  let left = names;
  for (const name of names) {
    const without = left.filter((other) => other !== name);
    if (!can.all(without)) left = without;
  }
  return left;
}

function smallest(names: readonly string[], can: CanKeep): readonly string[] {
  const found = irreducible(names, can);
  for (let size = 0; size < found.length; size += 1)
    for (const set of subsetsOf(names, size)) if (!can.all(set)) return set;
  return found;
}

function nearestOf(problem: Problem, can: CanKeep): Conflict["nearest"] {
  const names = problem.rules.map(({ name }) => name);
  for (let size = 1; size <= names.length; size += 1) {
    let best: Conflict["nearest"] = null;
    for (const breaks of subsetsOf(names, size)) {
      const kept = [...names.filter((name) => !breaks.includes(name)), "maxBottles", "maxParts"];
      if (!can.all(kept)) continue;
      const [recipe] = search(withOnly(problem, kept), 1).recipes;
      if (recipe !== undefined && (best === null || recipe.score < best.recipe.score))
        best = { recipe, breaks };
    }
    if (best !== null) return best;
  }
  return null;
}

/**
 * Why no recipe keeps the rules: a smallest set of them that cannot stand together, and the nearest recipe that breaks least. Null
 * when some recipe keeps them all.
 *
 * The bounds on bottles and parts count as rules named `maxBottles` and `maxParts`; to see whether they are to blame they are
 * widened to 8 bottles and 24 parts, not dropped. The set is empty when the shelf is.
 */
export function conflictOf(problem: Problem): Conflict | null {
  const can = new CanKeep(problem);
  const names = [...problem.rules.map(({ name }) => name), "maxBottles", "maxParts"];
  if (can.all(names)) return null;
  const set = smallest(names, can);
  return { names: set, nearest: nearestOf(problem, can), proven: can.certain };
}
