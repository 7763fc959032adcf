import type { Space } from "./space.ts";
import { TopList } from "./top-list.ts";
import { Wing } from "./wing.ts";

/** A search that goes on in steps, space after space. Its list is proven once `done`. */
export class Engine {
  readonly list: TopList;
  done = false;
  readonly #wings: readonly Wing[];
  readonly #run: Generator<void, void, void>;

  constructor(spaces: readonly Space[], top: number) {
    this.list = new TopList(top);
    this.#wings = spaces.map((space) => new Wing(space, this.list));
    this.#run = this.#all();
  }

  *#all(): Generator<void, void, void> {
    for (const wing of this.#wings) yield* wing.run();
  }

  get nodes(): number {
    return this.#wings.reduce((sum, { nodes }) => sum + nodes, 0);
  }

  /** No recipe outside the list scores below this. */
  get bound(): number {
    return this.done ? Infinity : this.#wings.reduce((least, { bound }) => Math.min(least, bound), Infinity);
  }

  /** Goes on for so many steps: one recipe to begin with, one pair of whiskeys or one way to give out parts each. */
  step(steps: number): void {
    for (let left = steps; left > 0 && !this.done; left -= 1) this.done = this.#run.next().done === true;
  }
}
