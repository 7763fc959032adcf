import { admits } from "./admits.ts";
import { compileRules, keepsRules } from "./compile-rules.ts";
import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import type { Rule } from "./rule.ts";

/** Whether a recipe keeps one rule. */
export function keepsRule(problem: Problem, rule: Rule, recipe: FoundRecipe): boolean {
  const lines = recipe.parts.map(({ id, parts }) => ({
    whiskey: problem.whiskeys.find((whiskey) => whiskey.id === id)!,
    parts,
  }));
  if (!lines.every(({ whiskey }) => admits(rule, whiskey))) return false;
  if (rule.kind === "oneGroup") return new Set(lines.map(({ whiskey }) => whiskey.group)).size === 1;
  const parts = lines.map((line) => line.parts);
  const most = parts.reduce((sum, one) => sum + one, 0);
  const shelf = lines.map(({ whiskey }) => whiskey);
  const rules = compileRules(shelf, [rule], most);
  return rules.possible && keepsRules(rules, [...parts.keys()], parts, parts.length);
}
