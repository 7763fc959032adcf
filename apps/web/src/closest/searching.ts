import {
  cannotTellApart,
  diverse,
  expectedDistance,
  type FoundRecipe,
  type Problem,
  type Search,
  startSearch,
} from "@partsproof/core/blending";
import type { Found, Shown } from "./messages.ts";

/** Steps between two looks at the clock; each is mostly well below a millisecond. */
const STEPS = 8;
/** Share of the glass in which two recipes differ before they are called unlike. */
const APART = 0.25;

/** One search, run slice by slice, so that whoever hosts it hears new wishes in between. */
export class Searching {
  readonly #turn: number;
  readonly #problem: Problem;
  readonly #search: Search;
  readonly #now: () => number;
  #took = 0;
  done = false;

  /** @throws RangeError when the problem makes no sense */
  constructor(turn: number, problem: Problem, top: number, now: () => number) {
    const began = now();
    this.#turn = turn;
    this.#problem = problem;
    this.#search = startSearch(problem, top);
    this.#now = now;
    this.#took = now() - began;
  }

  /** Goes on for about so many milliseconds, at least one step. */
  slice(ms: number): Found {
    const began = this.#now();
    do this.done = this.#search.step(STEPS).done;
    while (!this.done && this.#now() - began < ms);
    const { recipes, gap, nodes, unknown } = this.#search.result();
    const attributes = Object.keys(this.#problem.target.profile);
    const shown = recipes.map(
      (recipe): Shown => ({
        ...recipe,
        predicted: Float64Array.from(attributes, (attribute) => recipe.predicted[attribute] ?? Number.NaN),
        key: recipe.parts.map(({ id, parts }) => `${parts} ${id}`).join(" "),
        expected: expectedDistance(this.#problem, recipe),
      }),
    );
    const keysOf = (some: readonly FoundRecipe[]): readonly string[] =>
      shown.filter((_, place) => some.includes(recipes[place] as FoundRecipe)).map(({ key }) => key);
    const alike = this.done ? keysOf(cannotTellApart(this.#problem, recipes)) : [];
    const unlike = keysOf(diverse(this.#problem, recipes, APART));
    this.#took += this.#now() - began;
    return {
      turn: this.#turn,
      done: this.done,
      recipes: shown,
      gap,
      nodes,
      unknown,
      alike,
      unlike,
      tookMs: this.#took,
    };
  }
}
