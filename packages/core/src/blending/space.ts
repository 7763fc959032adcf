import { type CompiledRules, compileRules } from "./compile-rules.ts";
import { type Objective, objectiveOf } from "./objective.ts";
import type { Problem } from "./problem.ts";
import { known } from "./known.ts";

/** A problem as numbers: everything the search reads. */
export type Space = {
  readonly rules: CompiledRules;
  readonly objective: Objective;
  /** How many whiskeys the rules let in. */
  readonly n: number;
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

/** Compiles a problem. Whiskeys with an infinite goal (a price that is asked for and not known) are not let in. */
export function spaceOf(problem: Problem): Space {
  const { rules: asked, maxParts, maxBottles, goals } = problem;
  const priced = goals?.price === undefined || goals.price === 0;
  const whiskeys = problem.whiskeys.filter(({ pricePerLitre }) => priced || known(pricePerLitre));
  const rules = compileRules(whiskeys, asked, maxParts);
  const n = rules.shelf.length;
  const objective = objectiveOf(problem, rules.shelf);
  const required = [...rules.least.keys()].filter((at) => rules.least[at]! > 0);
  return { rules, objective, n, gram: gramOf(objective, n), maxBottles, maxParts, required };
}
