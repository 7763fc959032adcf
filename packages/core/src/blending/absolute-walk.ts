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
 * Every support in the order of the shelf. A support is gone through part by part unless a bound of its means rules it out; one
 * more whiskey is tried only if it, or one after it, can bring the bound down.
 */
export function* absoluteBranch(
  walk: Walk,
  bound: AbsoluteBound,
  support: readonly number[],
  among: readonly number[],
  more: number,
): Generator<void, void, void> {
  walk.nodes += 1;
  const { space } = walk;
  const { each } = space.objective;
  const least = Math.min(...each) / Math.max(...each) / space.maxParts;
  let signs: Float64Array | null = null;
  if (support.length > 0) {
    const own = bound.of(support, least, walk.threshold(), STEPS);
    if (own <= walk.threshold()) fill(walk, support);
    else signs = bound.best.slice();
  }
  if (more === 0) return;
  const group = space.rules.group;
  for (const [x, k] of among.entries()) {
    if (group !== null && support.length > 0 && group[support[0]!] !== group[k]) continue;
    // The last one to join must bring the bound down along signs that keep the others above the threshold.
    if (more === 1 && signs !== null && bound.given(signs, [...support, k], least) > walk.threshold())
      continue;
    yield* absoluteBranch(walk, bound, [...support, k], among.slice(x + 1), more - 1);
    if (support.length === 0) yield;
  }
}
