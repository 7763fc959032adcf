import {
  cannotTellApart,
  expectedDistance,
  type Problem,
  type Search,
  startSearch,
} from "@partsproof/core/blending";
import type { Found, Shown } from "./messages.ts";

/** Steps between two looks at the clock; each is mostly well below a millisecond. */
const STEPS = 8;

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
    const shown = recipes.map(
      (recipe): Shown => ({
        ...recipe,
        key: recipe.parts.map(({ id, parts }) => `${parts} ${id}`).join(" "),
        expected: expectedDistance(this.#problem, recipe),
      }),
    );
    const alike = this.done ? likeFirst(this.#problem, shown) : 0;
    this.#took += this.#now() - began;
    return {
      turn: this.#turn,
      done: this.done,
      recipes: shown,
      gap,
      nodes,
      unknown,
      alike,
      tookMs: this.#took,
    };
  }
}

/** How many from the first on, without a break, the first cannot be told from. */
function likeFirst(problem: Problem, recipes: readonly Shown[]): number {
  const alike = new Set(cannotTellApart(problem, recipes).map((recipe) => recipe));
  const other = recipes.findIndex((recipe) => !alike.has(recipe));
  return other === -1 ? recipes.length : other;
}
