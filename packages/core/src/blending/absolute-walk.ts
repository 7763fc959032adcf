import type { AbsoluteBound } from "./absolute-bound.ts";
import { absoluteFill } from "./absolute-fill.ts";
import type { Walk } from "./walk.ts";

const STEPS = 24;

/** What the descent is given all the way down. */
type Descent = {
  readonly walk: Walk;
  readonly bound: AbsoluteBound;
  /** No whiskey of a recipe has a smaller share than this. */
  readonly least: number;
  /** The whiskeys in question, what each brings along the signs that bound all means together, and the least of that. */
  readonly places: Int32Array;
  readonly value: Float64Array;
  readonly lowest: number;
};

/**
 * Deals with the support and all that come of it by adding up to `more` whiskeys from `from` on. It is gone through part by part
 * unless a bound of its means rules it out. Whoever joins must leave it within reach along the signs of the whole shelf (`sum` is
 * what the support brings along those); the last one must also bring the bound down along the signs that kept the others above it.
 */
function descend(given: Descent, support: number[], sum: number, from: number, more: number): void {
  const { walk, bound, least, places, value, lowest } = given;
  walk.nodes += 1;
  const size = support.length;
  const open = bound.of(support, least, walk.threshold(), STEPS) <= walk.threshold();
  if (open) absoluteFill(walk, support);
  if (more === 0) return;
  const signs = more === 1 && !open ? bound.best.slice() : null;
  let own = 0;
  let low = Infinity;
  if (signs !== null)
    for (const place of support) {
      const along = bound.along(signs, place);
      own += along;
      low = Math.min(low, along);
    }
  const threshold = walk.threshold();
  const rest = 1 - (size + 1) * least;
  for (let x = from; x < places.length; x += 1) {
    if (least * (sum + value[x]!) + rest * lowest > threshold) continue;
    const k = places[x]!;
    if (signs !== null) {
      const along = bound.along(signs, k);
      if (least * (own + along) + rest * Math.min(low, along) > threshold) continue;
    }
    support.push(k);
    descend(given, support, sum + value[x]!, x + 1, more - 1);
    support.pop();
  }
}

/** Every support in the order of the shelf; a step for each first whiskey and each pair. */
export function* absoluteBranch(walk: Walk, bound: AbsoluteBound): Generator<void, void, void> {
  const { n, objective, maxParts, maxBottles } = walk.space;
  const least = Math.min(...objective.each) / Math.max(...objective.each) / maxParts;
  const places = Int32Array.from({ length: n }, (_, i) => i);
  bound.of(places, 0, Infinity, 1000);
  const value = Float64Array.from(places, (i) => bound.along(bound.best, i));
  const lowest = Math.min(...value);
  const given = { walk, bound, least, places, value, lowest };
  for (let i = 0; i < n; i += 1) {
    descend(given, [i], value[i]!, n, 0);
    yield;
    if (maxBottles === 1 || least * value[i]! + (1 - least) * lowest > walk.threshold()) continue;
    for (let j = i + 1; j < n; j += 1) {
      const sum = value[i]! + value[j]!;
      if (least * sum + (1 - 2 * least) * lowest > walk.threshold()) continue;
      descend(given, [i, j], sum, j + 1, maxBottles - 2);
      yield;
    }
  }
}
