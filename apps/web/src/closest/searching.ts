import {
  cannotTellApart,
  diverse,
  expectedDistance,
  type FoundRecipe,
  type Problem,
  type Search,
  startSearch,
} from "@partsproof/core/blending";
import type { Found, Shown, Told } from "./messages.ts";

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
  slice(ms: number): void {
    const began = this.#now();
    do this.done = this.#search.step(STEPS).done;
    while (!this.done && this.#now() - began < ms);
    this.#took += this.#now() - began;
  }

  told(): Told {
    const { recipes, gap, nodes } = this.#search.result();
    const best = recipes[0];
    return {
      turn: this.#turn,
      done: this.done,
      best: best === undefined ? null : this.#shown(best),
      gap,
      nodes,
      tookMs: this.#took,
    };
  }

  found(): Found {
    const { recipes, unknown } = this.#search.result();
    const keysOf = (some: readonly FoundRecipe[]): readonly string[] =>
      recipes.filter((one) => some.includes(one)).map(keyOf);
    return {
      ...this.told(),
      recipes: recipes.map((recipe) => this.#shown(recipe)),
      unknown,
      alike: this.done ? keysOf(cannotTellApart(this.#problem, recipes)) : [],
      unlike: keysOf(diverse(this.#problem, recipes, APART)),
    };
  }

  #shown(recipe: FoundRecipe): Shown {
    return {
      ...recipe,
      predicted: Float64Array.from(
        Object.keys(this.#problem.target.profile),
        (attribute) => recipe.predicted[attribute] ?? Number.NaN,
      ),
      key: keyOf(recipe),
      expected: expectedDistance(this.#problem, recipe),
    };
  }
}

const keyOf = ({ parts }: FoundRecipe): string => parts.map(({ id, parts: of }) => `${of} ${id}`).join(" ");
