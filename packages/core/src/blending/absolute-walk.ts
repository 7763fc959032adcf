import type { AbsoluteBound } from "./absolute-bound.ts";
import { offer } from "./offer.ts";
import { eachParts } from "./parts.ts";
import type { Walk } from "./walk.ts";

const STEPS = 24;

/** Offers every recipe of exactly these whiskeys that its absolute distance does not rule out. */
function fill(walk: Walk, support: readonly number[]): void {
  const { space, list, threshold } = walk;
  const { offsets, each, goal, weight } = space.objective;
  const d = weight.length;
  const sums = new Float64Array(d);
  eachParts(support.length, space.maxParts, (parts) => {
    walk.nodes += 1;
    sums.fill(0);
    let all = 0;
    let goals = 0;
    for (let x = 0; x < support.length; x += 1) {
      const amount = parts[x]! * each[support[x]!]!;
      all += amount;
      goals += amount * goal[support[x]!]!;
      for (let a = 0, at = support[x]! * d; a < d; a += 1, at += 1) sums[a]! += amount * offsets[at]!;
    }
    let length = goals;
    for (let a = 0; a < d; a += 1) length += Math.abs(sums[a]!);
    if (length <= threshold() * all) offer(space, list, support, parts, parts.length);
  });
}

/**
 * Deals with the support and all that come of it by adding up to `more` whiskeys from place `from` on. It is gone through part by
 * part unless a bound of its means rules it out. The last whiskey to join must bring the bound down along the signs that kept the
 * others above the threshold, which is quickly seen.
 */
function descend(
  walk: Walk,
  bound: AbsoluteBound,
  least: number,
  support: number[],
  from: number,
  more: number,
): void {
  walk.nodes += 1;
  const { n } = walk.space;
  const size = support.length;
  const own = bound.of(support, least, walk.threshold(), STEPS);
  const open = own <= walk.threshold();
  if (open) fill(walk, support);
  if (more === 0) return;
  const signs = more === 1 && !open ? bound.best.slice() : null;
  let sum = 0;
  let low = Infinity;
  if (signs !== null)
    for (const place of support) {
      const value = bound.along(signs, place);
      sum += value;
      low = Math.min(low, value);
    }
  for (let k = from; k < n; k += 1) {
    if (signs !== null) {
      const value = bound.along(signs, k);
      if (least * (sum + value) + (1 - (size + 1) * least) * Math.min(low, value) > walk.threshold())
        continue;
    }
    support.push(k);
    descend(walk, bound, least, support, k + 1, more - 1);
    support.pop();
  }
}

/** Every support in the order of the shelf; a step for each first whiskey and each pair. */
export function* absoluteBranch(walk: Walk, bound: AbsoluteBound): Generator<void, void, void> {
  const { n, objective, maxParts, maxBottles } = walk.space;
  const least = Math.min(...objective.each) / Math.max(...objective.each) / maxParts;
  for (let i = 0; i < n; i += 1) {
    descend(walk, bound, least, [i], n, 0);
    yield;
    if (maxBottles === 1) continue;
    for (let j = i + 1; j < n; j += 1) {
      descend(walk, bound, least, [i, j], j + 1, maxBottles - 2);
      yield;
    }
  }
}
