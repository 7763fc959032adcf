import { conflictOf, type Problem } from "@partsproof/core/blending";
import type { SearchAnswer } from "../../protocol/index.ts";
import { fieldOfRule } from "./core-rules.ts";
import { shownRecipe } from "./shown-recipes.ts";

const fieldsOf = (names: readonly string[]): string[] => [...new Set(names.map(fieldOfRule))];

/** Why no recipe keeps the rules, by the fields they stand in. */
export function toldConflict(
  problem: Problem,
): Pick<SearchAnswer, "conflict" | "conflictProven" | "nearest"> {
  const why = conflictOf(problem);
  if (why === null) return {};
  const recipe = shownRecipe(problem, why.nearest?.recipe);
  return {
    conflict: fieldsOf(why.names),
    conflictProven: why.proven,
    nearest:
      recipe === null || why.nearest === null ? null : { recipe, breaks: fieldsOf(why.nearest.breaks) },
  };
}
