import { AbsoluteBound } from "./absolute-bound.ts";
import { absoluteBranch } from "./absolute-walk.ts";
import { frameOf } from "./frame.ts";
import { improve } from "./improve.ts";
import { Levels } from "./level.ts";
import { groupsOf } from "./groups.ts";
import { scanRoomOf } from "./scan-room.ts";
import { openBound } from "./open-bound.ts";
import { relaxation } from "./relaxation.ts";
import type { Space } from "./space.ts";
import { TopList } from "./top-list.ts";
import { branch, part, type Walk } from "./walk.ts";

const STARTS = 32;
/** Whiskeys in a group, about. */
const GROUP = 16;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Recipes to begin with: starts spread over the shelf, the same every time, bettered by exchanges. */
function* begin(space: Space, list: TopList): Generator<void, void, void> {
  const { n, maxBottles, maxParts } = space;
  const size = Math.min(n, maxBottles, maxParts);
  if (n === 0) return;
  for (let start = 0; start < STARTS; start += 1) {
    const places = new Set<number>(space.required);
    for (let turn = 1; places.size < size; turn += 1)
      places.add(Math.floor((((start * 7 + turn) * GOLDEN * turn) % 1) * n));
    const support = [...places].slice(0, Math.max(size, space.required.length));
    yield;
    improve(
      space,
      list,
      support,
      support.map(() => 1),
    );
  }
}

const padded = (threshold: number): number => threshold + 1e-9 * (1 + Math.abs(threshold));

/** A search that goes on in steps. Its list is proven once `done`. */
export class Engine {
  readonly space: Space;
  readonly list: TopList;
  done = false;
  readonly #walk: Walk;
  readonly #run: Generator<void, void, void>;
  readonly #root: number;
  readonly #absolute: AbsoluteBound | null;
  /** Every recipe that scores below this has been dealt with. */
  #settled = -Infinity;
  #ceiling = Infinity;

  constructor(space: Space, top: number) {
    const { n, gram, rules, objective } = space;
    this.space = space;
    this.list = new TopList(top);
    const all = Int32Array.from({ length: n }, (_, i) => i);
    const d = objective.attributes.length;
    this.#absolute = objective.absolute ? new AbsoluteBound(objective.offsets, objective.goal, d) : null;
    const relaxed = relaxation(gram, objective.each, n);
    const leastGoal = objective.goal.reduce((least, goal) => Math.min(least, goal), Infinity);
    this.#root =
      n === 0 ? Infinity : (this.#absolute?.of(all, 0, Infinity, 500) ?? relaxed.bound + leastGoal);
    const pairs = gram.slice();
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j < n; j += 1)
        if (i === j || (rules.group !== null && rules.group[i] !== rules.group[j]))
          pairs[i * n + j] = Number.NaN;
    const cosine = (k: number, l: number): number =>
      gram[k * n + l]! / Math.sqrt(gram[k * n + k]! * gram[l * n + l]! + 1e-12);
    const groups = groupsOf(n, Math.ceil(n / GROUP), cosine);
    this.#walk = {
      space,
      list: this.list,
      pairs,
      threshold: () => padded(Math.min(this.list.threshold, this.#ceiling)),
      slack: (threshold) =>
        relaxed.length < 1e-9
          ? null
          : objective.each.map(
              (each, i) => each * (relaxed.along[i]! - relaxed.length * (threshold - objective.goal[i]!)),
            ),
      levels: new Levels(n),
      room: scanRoomOf(n),
      groups,
      found: [],
      nodes: 0,
      open: null,
    };
    this.#run = this.#rounds();
  }

  get nodes(): number {
    return this.#walk.nodes;
  }

  /** No recipe outside the list scores below this. */
  get bound(): number {
    if (this.done) return Infinity;
    const sure = Math.max(this.#root, this.#settled);
    const { open } = this.#walk;
    const high = Math.min(this.list.threshold, this.#ceiling);
    return open === null || !open.frame.rising || high <= sure
      ? sure
      : openBound(this.space, open, sure, high);
  }

  /** Goes on for so many steps: one recipe to begin with, one pair of whiskeys or one way to give out parts each. */
  step(steps: number): void {
    for (let left = steps; left > 0 && !this.done; left -= 1) this.done = this.#run.next().done === true;
  }

  *#rounds(): Generator<void, void, void> {
    const { space, list } = this;
    const { n, gram, objective, required, maxBottles, rules } = space;
    if (n === 0 || !rules.possible || required.length > maxBottles) return;
    yield* begin(space, list);
    yield;
    if (this.#absolute !== null) {
      yield* absoluteBranch(this.#walk, this.#absolute);
      return;
    }
    let reach = 0;
    for (let i = 0; i < n; i += 1) reach = Math.max(reach, Math.sqrt(gram[i * n + i]!) / objective.each[i]!);
    reach += objective.goal.reduce((most, goal) => Math.max(most, goal), -Infinity);
    let ceiling = list.threshold;
    if (ceiling === Infinity) ceiling = this.#root + 0.1 * (reach - this.#root);
    const among = this.#walk.groups.order;
    for (;;) {
      this.#ceiling = Math.min(reach, ceiling);
      const frame = frameOf(space, [], [], 0);
      if (required.length === 0) yield* branch(this.#walk, frame, among, maxBottles, true);
      else {
        const others = among.filter((i) => !required.includes(i));
        yield* part(this.#walk, frame, required, others, maxBottles - required.length);
      }
      this.#settled = this.#ceiling;
      if (list.threshold <= this.#ceiling || this.#ceiling >= reach) return;
      ceiling += 0.5 * (ceiling - this.#root) + 1e-3 * (reach - this.#root);
    }
  }
}
