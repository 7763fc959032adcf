import { type Frame, frameOf, setThreshold } from "./frame.ts";
import { type Level, levelBelow, type Levels, rootLevel, setDiagonal, takeOut } from "./level.ts";
import type { Groups } from "./groups.ts";
import { offerIfClose } from "./offer.ts";
import { scanPairs } from "./pair-scan.ts";
import type { Open } from "./open-bound.ts";
import { opposedTo } from "./opposed.ts";
import { inReach, reachOf } from "./reach.ts";
import { eachParts } from "./parts.ts";
import { PairsFound } from "./pairs-found.ts";
import type { ScanRoom } from "./scan-room.ts";
import type { Space } from "./space.ts";
import type { TopList } from "./top-list.ts";

/** A support this close to reaching the threshold whatever its parts is gone through part by part. */
const HOT = 1e-6;

/** What the walk shares down all its branches. */
export type Walk = {
  readonly space: Space;
  /** Multiples of the rules' rows: see `Frame`. */
  readonly tilt: Float64Array;
  readonly list: TopList;
  /** G off the diagonal; NaN for pairs that may not stand together, or whose every support has been dealt with. */
  readonly pairs: Float64Array;
  /** The threshold asked for, with room for rounding. */
  readonly threshold: () => number;
  /** A recipe reaches the threshold only if its sum of parts x this is 0 or more. */
  readonly closeness: (threshold: number) => Float64Array;
  readonly levels: Levels;
  readonly room: ScanRoom;
  readonly groups: Groups;
  /** Lists of pairs that are free to be used again. */
  readonly found: PairsFound[];
  nodes: number;
  open: Open | null;
};

type Branch = Generator<void, void, void>;

/** What must come to 0 or more over a recipe: the rules' rows, and closeness to the relaxation. */
const rowsOf = (walk: Walk, frame: Frame): readonly Float64Array[] => [
  walk.closeness(frame.threshold),
  ...walk.space.rules.rows,
];

/** Deals with every recipe that holds the prefix, the frame's fixed lines, and up to `more` of the others. */
export function* part(
  walk: Walk,
  frame: Frame,
  prefix: readonly number[],
  others: Int32Array,
  more: number,
): Branch {
  const { space, list } = walk;
  const any = frame.left === 0;
  const most = any ? space.maxParts : frame.left;
  const support = [...frame.support, ...prefix];
  const reach = more > 0 && others.length > 0 ? reachOf(rowsOf(walk, frame), others) : null;
  const ways: { readonly parts: readonly number[]; readonly left: number }[] = [];
  eachParts(prefix.length, most, (parts, sum) => {
    const all = [...frame.parts, ...parts];
    if (any || sum === most) {
      walk.nodes += 1;
      offerIfClose(space, list, support, all);
    }
    if (reach === null) return;
    for (let left = any ? 1 : most - sum; left > 0 && left <= most - sum; left += 1)
      if (inReach(reach, support, all, left)) ways.push({ parts: all, left });
  });
  for (const { parts, left } of ways) {
    yield* branch(walk, frameOf(space, support, parts, left), others, more, false);
    yield;
  }
}

/** The whiskeys that can still be in a recipe with the frame's fixed lines. */
function allowed(walk: Walk, frame: Frame, among: Int32Array): Int32Array {
  const left = frame.left === 0 ? walk.space.maxParts : frame.left;
  let candidates = among;
  for (const { row, most } of reachOf(rowsOf(walk, frame), among)) {
    let fixed = 0;
    for (const [x, i] of frame.support.entries()) fixed += frame.parts[x]! * row[i]!;
    const others = (left - 1) * (frame.left === 0 ? Math.max(0, most) : most);
    candidates = candidates.filter((k) => fixed + row[k]! + others >= 0);
  }
  return candidates;
}

/** Deals with every recipe that holds the frame's fixed lines and up to `more` of `among`. */
export function* branch(
  walk: Walk,
  frame: Frame,
  among: Int32Array,
  more: number,
  outermost: boolean,
): Branch {
  setThreshold(walk.space, walk.tilt, frame, walk.threshold());
  const candidates = allowed(walk, frame, among);
  if (candidates.length === 0) return;
  const level = rootLevel(frame, walk.space.gram, candidates, walk.levels);
  yield* within(walk, frame, level, more, outermost);
  walk.levels.give(level);
}

const othersOf = (walk: Walk, level: Level, chosen: readonly number[]): Int32Array => {
  const n = walk.space.n;
  return level.place
    .subarray(0, level.size)
    .filter((k) => chosen.every((c) => k !== c && !Number.isNaN(walk.pairs[c * n + k]!)));
};

/** Takes a threshold that has fallen into account, where that can only raise M. True when it did. */
function lower(walk: Walk, frame: Frame): boolean {
  const was = frame.threshold;
  const now = walk.threshold();
  if (!frame.rising || now >= was) return false;
  setThreshold(walk.space, walk.tilt, frame, now);
  if (frame.rising) return true;
  setThreshold(walk.space, walk.tilt, frame, was);
  return false;
}

/**
 * Deals with every recipe that holds the level's prefix and up to `more` of its whiskeys. If k vectors have no pair with a cosine
 * of -1 / (k - 1) or less, no sum of them with positive shares vanishes: so of `more` that together reach the threshold, two have
 * such a cosine in what is left of M. Those two are chosen, the others follow a level below.
 */
function* within(walk: Walk, frame: Frame, level: Level, more: number, outermost: boolean): Branch {
  walk.nodes += 1;
  const { pairs, space } = walk;
  const n = space.n;
  for (let x = level.size - 1; x >= 0; x -= 1) {
    if (level.rest[x]! > HOT * Math.max(1e-3, level.whole[x]!)) continue;
    const k = level.place[x]!;
    takeOut(level, x);
    yield* part(walk, frame, [...level.prefix, k], othersOf(walk, level, [k]), more - 1);
    if (outermost) yield;
  }
  if (more < 2) return;
  const most = more === 2 ? -1 + HOT : -1 / (more - 1) + 1e-9;
  const found = walk.found.pop() ?? new PairsFound();
  scanPairs(frame, pairs, level, most, walk.groups, walk.room, found);
  const order = found.order();
  const isRoot = level.prefix.length === 0;
  if (outermost && frame.rising) frame.opposed = opposedTo(frame, pairs, space.gram, walk.groups);
  if (outermost) walk.open = { frame, level, found, order, most, next: 0 };
  const done: number[] = [];
  for (const [turn, at] of order.entries()) {
    const x = found.x[at]!;
    const y = found.y[at]!;
    const i = level.place[x]!;
    const j = level.place[y]!;
    let cosine = found.cosine[at]!;
    if (isRoot) {
      frame.floor = frame.rising && more > 2 ? cosine - 1e-9 : -1;
      if (lower(walk, frame)) setDiagonal(frame, space.gram, level);
      const ij = space.gram[i * n + j]! - frame.beta[i]! * frame.beta[j]! + frame.alpha[i]! + frame.alpha[j]!;
      cosine = ij / Math.sqrt(level.rest[x]! * level.rest[y]!);
      if (cosine > most) continue;
    }
    if (cosine <= -1 + HOT || more === 2)
      yield* part(walk, frame, [...level.prefix, i, j], othersOf(walk, level, [i, j]), more - 2);
    else {
      const below = levelBelow(frame, pairs, level, x, y, more - 2, walk.levels);
      yield* within(walk, frame, below, more - 2, false);
      walk.levels.give(below);
    }
    pairs[i * n + j] = pairs[j * n + i] = Number.NaN;
    done.push(i * n + j, j * n + i);
    if (outermost) walk.open!.next = turn + 1;
    // A pair with three bottles or more still to be chosen can take seconds: whoever steps is asked after each pair below it, too.
    if (outermost || more > 2) yield;
  }
  for (const at of done) pairs[at] = space.gram[at]!;
  if (outermost) walk.open = null;
  walk.found.push(found);
}
