import { keepsRule } from "./keeps-rule.ts";
import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { startSearch } from "./search.ts";

/** The two bounds that every recipe has. Left out, they are this much wider. */
const BOUNDS = { maxBottles: 8, maxParts: 24 } as const;

const STEPS = 30_000;

/** A problem with only these rules; a bound that is not named is widened to `BOUNDS`. */
export function withOnly(problem: Problem, names: readonly string[]): Problem {
  const bound = (name: "maxBottles" | "maxParts"): number =>
    names.includes(name) ? problem[name] : Math.max(problem[name], BOUNDS[name]);
  return {
    ...problem,
    maxBottles: bound("maxBottles"),
    maxParts: bound("maxParts"),
    rules: problem.rules.filter(({ name }) => names.includes(name)),
  };
}

/** Answers which sets of rules some recipe keeps, and remembers the recipes it met. */
export class CanKeep {
  /** False once a question was given up after 30 000 steps and answered as "no recipe". */
  certain = true;
  readonly #problem: Problem;
  readonly #kept: ReadonlySet<string>[] = [];
  readonly #broken: (readonly string[])[] = [];

  constructor(problem: Problem) {
    this.#problem = problem;
  }

  #remember(recipe: FoundRecipe): void {
    const { rules, maxBottles, maxParts } = this.#problem;
    const kept = rules.filter((rule) => keepsRule(this.#problem, rule, recipe)).map(({ name }) => name);
    if (recipe.parts.length <= maxBottles) kept.push("maxBottles");
    if (recipe.parts.reduce((sum, { parts }) => sum + parts, 0) <= maxParts) kept.push("maxParts");
    this.#kept.push(new Set(kept));
  }

  all(names: readonly string[]): boolean {
    if (this.#kept.some((kept) => names.every((name) => kept.has(name)))) return true;
    if (this.#broken.some((set) => set.every((name) => names.includes(name)))) return false;
    const running = startSearch(withOnly(this.#problem, names), 1);
    let progress = running.step(1);
    for (let step = 0; step < STEPS && !progress.done && progress.recipes === 0; step += 10)
      progress = running.step(10);
    const [recipe] = running.result().recipes;
    if (recipe !== undefined) this.#remember(recipe);
    else this.#broken.push(names);
    if (recipe === undefined && !progress.done) this.certain = false;
    return recipe !== undefined;
  }
}
