import { mixParts } from "../alcoholometry/index.ts";
import { millilitres20 } from "../quantity/index.ts";
import { checkProblem } from "./check-problem.ts";
import { Engine } from "./engine.ts";
import type { Problem } from "./problem.ts";
import { unknownValues } from "./profile-values.ts";
import type { FoundRecipe, Progress, SearchResult } from "./recipe.ts";
import { spacesOf } from "./space.ts";
import type { Entry } from "./top-list.ts";
import { known } from "./known.ts";

/** An entry of a list as a recipe. */
function recipeOf(problem: Problem, entry: Entry): FoundRecipe {
  const lines = entry.support.map((place, x) => ({
    whiskey: problem.whiskeys[place]!,
    parts: entry.parts[x]!,
  }));
  const all = lines.reduce((sum, { parts }) => sum + parts, 0);
  const { distance, score, predicted } = entry;
  const mixed = mixParts(
    lines.map(({ whiskey, parts }) => ({ parts, abv20: whiskey.abv20 })),
    millilitres20(1000),
  );
  const priced = lines.every(({ whiskey }) => known(whiskey.pricePerLitre));
  const aged = lines.every(({ whiskey }) => known(whiskey.ageYears));
  return {
    parts: lines.map(({ whiskey, parts }) => ({ id: whiskey.id, parts })),
    distance,
    score,
    abv20: mixed.abv20,
    pricePerLitre: priced
      ? lines.reduce((sum, { whiskey, parts }) => sum + parts * whiskey.pricePerLitre!, 0) / all
      : null,
    youngestYears: aged ? Math.min(...lines.map(({ whiskey }) => whiskey.ageYears!)) : null,
    predicted: Object.fromEntries(
      Object.keys(problem.target.profile).map((name, a) => [name, predicted[a]!]),
    ),
  };
}

export type Search = {
  /** Goes on for so many steps, each mostly below a millisecond, and says how far it is. */
  step(steps: number): Progress;
  /** What is known now; the whole answer once `done`. */
  result(): SearchResult;
};

const DEFAULT_TOP = 20;

/**
 * Starts a search for the `top` best recipes. Nothing is looked at until the first `step`; the caller stops it by not calling
 * again, and reads the best so far with the proven gap.
 *
 * @throws RangeError when the problem makes no sense.
 */
export function startSearch(problem: Problem, top = DEFAULT_TOP): Search {
  checkProblem(problem);
  const engine = new Engine(spacesOf(problem), top);
  const unknown = unknownValues(problem.whiskeys, Object.keys(problem.target.profile));
  const best = (): number | null => engine.list.entries[0]?.score ?? null;
  const bound = (): number =>
    engine.done ? (best() ?? Infinity) : Math.min(engine.bound, best() ?? Infinity);
  const gap = (): number => (engine.done ? 0 : (best() ?? Infinity) - bound());
  return {
    step(steps) {
      engine.step(steps);
      const { done, nodes: visited } = engine;
      return {
        done,
        recipes: engine.list.entries.length,
        best: best(),
        bound: bound(),
        gap: gap(),
        nodes: visited,
      };
    },
    result: () => ({
      recipes: engine.list.entries.map((entry) => recipeOf(problem, entry)),
      provenOptimal: engine.done,
      bound: bound(),
      gap: gap(),
      nodes: engine.nodes,
      unknown,
    }),
  };
}

/** The `top` best recipes, proven. It takes as long as it takes; see `startSearch` to stop it. */
export function search(problem: Problem, top = DEFAULT_TOP): SearchResult {
  const running = startSearch(problem, top);
  while (!running.step(1000).done);
  return running.result();
}
