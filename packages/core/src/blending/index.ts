export type { FoundRecipe, Progress, SearchResult } from "./recipe.ts";
export type { Goals, Problem, Target } from "./problem.ts";
export { RULE_TOLERANCE } from "./rule.ts";
export type { Rule, RuleKind } from "./rule.ts";
export { search, startSearch } from "./search.ts";
export type { Search } from "./search.ts";
export type { Intensity, ShelfWhiskey } from "./whiskey.ts";
