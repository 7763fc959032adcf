import { known } from "./known.ts";
import { type CompiledRules, compileRules } from "./compile-rules.ts";
import { type Objective, objectiveOf } from "./objective.ts";
import type { Problem } from "./problem.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

/** A problem as numbers: everything the search reads. */
export type Space = {
  readonly rules: CompiledRules;
  readonly objective: Objective;
  /** How many whiskeys the rules let in. */
  readonly n: number;
  /** Where each stands on the problem's shelf. */
  readonly global: Int32Array;
  /** Scalar products of the offsets per part, spread squared on the diagonal: p'Gp is (distance x sum of p x each) squared. */
  readonly gram: Float64Array;
  readonly maxBottles: number;
  readonly maxParts: number;
  /** Whiskeys that must be in, by place. */
  readonly required: readonly number[];
};

function gramOf({ offsets, spread, each, weight }: Objective, n: number): Float64Array {
  const d = weight.length;
  const gram = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = i; j < n; j += 1) {
      let sum = i === j ? spread[i]! : 0;
      for (let a = 0, x = i * d, y = j * d; a < d; a += 1, x += 1, y += 1) sum += offsets[x]! * offsets[y]!;
      gram[i * n + j] = gram[j * n + i] = sum * each[i]! * each[j]!;
    }
  return gram;
}

function spaceOf(problem: Problem, whiskeys: readonly ShelfWhiskey[]): Space {
  const { rules: asked, maxParts, maxBottles } = problem;
  const rules = compileRules(whiskeys, asked, maxParts);
  const n = rules.shelf.length;
  const objective = objectiveOf(problem, rules.shelf);
  const required = [...rules.least.keys()].filter((at) => rules.least[at]! > 0);
  const at = new Map(problem.whiskeys.map((whiskey, place) => [whiskey, place]));
  const global = Int32Array.from(rules.shelf, (whiskey) => at.get(whiskey)!);
  return { rules, objective, n, global, gram: gramOf(objective, n), maxBottles, maxParts, required };
}

/**
 * Compiles a problem: one space or, when all must be of one group, one for each group. Whiskeys whose price is a goal and not known
 * are not let in.
 */
export function spacesOf(problem: Problem): readonly Space[] {
  const { rules, goals, whiskeys } = problem;
  const priced = goals?.price === undefined || goals.price === 0;
  const shelf = whiskeys.filter(({ pricePerLitre }) => priced || known(pricePerLitre));
  if (!rules.some(({ kind }) => kind === "oneGroup")) return [spaceOf(problem, shelf)];
  const groups = new Set(shelf.map(({ group }) => group).filter(known));
  return [...groups].map((name) =>
    spaceOf(
      problem,
      shelf.filter(({ group }) => group === name),
    ),
  );
}
