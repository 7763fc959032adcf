import { AbsoluteBound } from "./absolute-bound.ts";
import { absoluteBranch } from "./absolute-walk.ts";
import { begin } from "./begin.ts";
import { frameOf } from "./frame.ts";
import { groupsOf } from "./groups.ts";
import { Levels } from "./level.ts";
import { openBound } from "./open-bound.ts";
import { type Relaxation, relaxation } from "./relaxation.ts";
import { scanRoomOf } from "./scan-room.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";
import { branch, part, type Walk } from "./walk.ts";

const padded = (threshold: number): number => threshold + 1e-9 * (1 + Math.abs(threshold));

function walkOf(space: Space, list: TopList, relaxed: Relaxation, ceiling: () => number): Walk {
  const { n, gram, objective } = space;
  const { each, goal } = objective;
  const pairs = gram.slice();
  for (let i = 0; i < n; i += 1) pairs[i * n + i] = Number.NaN;
  const cosine = (k: number, l: number): number =>
    gram[k * n + l]! / Math.sqrt(gram[k * n + k]! * gram[l * n + l]! + 1e-12);
  const { along, length, tilt } = relaxed;
  const close = new Float64Array(n);
  let at = Number.NaN;
  return {
    space,
    tilt,
    list,
    pairs,
    threshold: () => padded(Math.min(list.threshold, ceiling())),
    closeness: (threshold) => {
      if (threshold !== at) {
        at = threshold;
        // Along the relaxation's mean no recipe gets further than its length times that mean's.
        for (let i = 0; i < n; i += 1)
          close[i] = 1e-9 + tilt[i]! / 2 - each[i]! * (along[i]! - length * (threshold - goal[i]!));
      }
      return close;
    },
    levels: new Levels(n),
    room: scanRoomOf(n),
    groups: groupsOf(n, Math.ceil(Math.sqrt(n)), cosine),
    found: [],
    nodes: 0,
    open: null,
  };
}

/** Whether bottles, parts and what is left in the bottles can make any recipe at all, whatever else the rules say. */
function canFill({ rules, required, maxBottles, maxParts }: Space): boolean {
  const must = rules.least.reduce((sum, parts) => sum + parts, 0);
  const largest = rules.shareMost.toSorted((a, b) => b - a).slice(0, maxBottles);
  const share = largest.reduce((sum, one) => sum + one, 0);
  return rules.possible && required.length <= maxBottles && must <= maxParts && share >= 1 - 1e-9;
}

/** The search of one space, in steps, into a list that other wings may share. */
export class Wing {
  readonly #walk: Walk;
  readonly #root: number;
  readonly #absolute: AbsoluteBound | null;
  /** Every recipe that scores below this has been dealt with. */
  #settled = -Infinity;
  #ceiling = Infinity;

  constructor(space: Space, list: TopList) {
    const { n, gram, rules, objective } = space;
    const { each, goal, offsets, attributes } = objective;
    const relaxed = relaxation(gram, each, n, rules.rows);
    this.#absolute = objective.absolute ? new AbsoluteBound(offsets, goal, attributes.length) : null;
    const leastGoal = goal.reduce((least, one) => Math.min(least, one), Infinity);
    const all = Int32Array.from({ length: n }, (_, i) => i);
    const impossible = !canFill(space);
    if (n === 0 || impossible || relaxed.bound === Infinity) this.#root = Infinity;
    else this.#root = this.#absolute?.of(all, 0, Infinity, 500) ?? relaxed.bound + leastGoal;
    this.#walk = walkOf(space, list, relaxed, () => this.#ceiling);
  }

  get nodes(): number {
    return this.#walk.nodes;
  }

  /** No recipe of this space that is not in the list scores below this. */
  get bound(): number {
    const { open, space, list, tilt } = this.#walk;
    const sure = Math.max(this.#root, this.#settled);
    const high = Math.min(list.threshold, this.#ceiling);
    if (open === null || !open.frame.rising || high <= sure) return sure;
    return openBound(space, tilt, open, sure, high);
  }

  *run(): Generator<void, void, void> {
    const { space, list, groups } = this.#walk;
    const { n, gram, objective, required, maxBottles } = space;
    if (this.#root === Infinity) return;
    yield* begin(space, list);
    yield;
    if (this.#absolute !== null) {
      yield* absoluteBranch(this.#walk, this.#absolute);
      this.#settled = Infinity;
      return;
    }
    let reach = 0;
    for (let i = 0; i < n; i += 1) reach = Math.max(reach, Math.sqrt(gram[i * n + i]!) / objective.each[i]!);
    reach += objective.goal.reduce((most, goal) => Math.max(most, goal), -Infinity);
    let ceiling = list.threshold;
    if (ceiling === Infinity) ceiling = this.#root + 0.1 * Math.max(0, reach - this.#root);
    for (;;) {
      this.#ceiling = Math.min(reach, ceiling);
      if (this.#root > this.#ceiling && this.#ceiling === reach) break;
      const frame = frameOf(space, [], [], 0);
      if (required.length === 0) yield* branch(this.#walk, frame, groups.order, maxBottles, true);
      else {
        const others = groups.order.filter((i) => !required.includes(i));
        yield* part(this.#walk, frame, required, others, maxBottles - required.length);
      }
      this.#settled = this.#ceiling;
      if (list.threshold <= this.#ceiling || this.#ceiling >= reach) break;
      ceiling += 0.5 * Math.max(0, ceiling - this.#root) + 1e-3 * Math.max(0.1, reach - this.#root);
    }
    this.#settled = Infinity;
  }
}
