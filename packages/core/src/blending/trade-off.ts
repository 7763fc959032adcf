import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { search } from "./search.ts";
import type { Rule } from "./rule.ts";

/** What closeness is traded against: the mean price of a litre, bottles, parts, or the youngest whiskey's age. */
export type Traded = "price" | "bottles" | "parts" | "age";

export type TradeOff = {
  /** Closest first; each next one is better in the other measure and no other recipe is both as close and as good in it. */
  readonly points: readonly FoundRecipe[];
  /** False when `limit` was reached: the points are right, but there are more. */
  readonly complete: boolean;
};

const valueOf = (traded: Traded, recipe: FoundRecipe): number => {
  if (traded === "price") return recipe.pricePerLitre ?? Infinity;
  if (traded === "bottles") return recipe.parts.length;
  if (traded === "parts") return recipe.parts.reduce((sum, { parts }) => sum + parts, 0);
  return -(recipe.youngestYears ?? -1);
};

/** What a next point must keep besides the rules: strictly better than `value`. */
function tightened(problem: Problem, traded: Traded, value: number): Problem | null {
  const add = (rule: Rule): Problem => ({ ...problem, rules: [...problem.rules, rule] });
  if (traded === "bottles") return value <= 1 ? null : { ...problem, maxBottles: value - 1 };
  if (traded === "parts") return value <= 1 ? null : { ...problem, maxParts: value - 1 };
  // The least steps that count: a millionth of a currency unit, a thousandth of a year; above the rules' own tolerance.
  if (traded === "price")
    return add({ name: "(cheaper than the last)", kind: "maxPricePerLitre", price: value - 1e-6 });
  return add({ name: "(older than the last)", kind: "minAge", years: -value + 1e-3 });
}

/**
 * The exact set of recipes for which nothing is both closer and better in the other measure (Pareto), by one proven search for
 * each: the closest, then the closest of those better than the last, until none is left. Of recipes equally close the list's order
 * decides, so a point can be as close as the one before it; those are left out.
 *
 * With "price" whiskeys without a price are out, with "age" those without an age: nothing can be said of them.
 */
export function tradeOff(problem: Problem, traded: Traded, limit = 200): TradeOff {
  const base = { ...problem, goals: {} };
  const points: FoundRecipe[] = [];
  let next: Problem | null = base;
  if (traded === "price") next = tightened(base, traded, 1e12);
  if (traded === "age") next = tightened(base, traded, 1e-3);
  while (next !== null) {
    const [closest] = search(next, 1).recipes;
    if (closest === undefined) break;
    const last = points.at(-1);
    if (last !== undefined && closest.distance <= last.distance + 1e-11) points.pop();
    points.push(closest);
    if (points.length > limit) return { points: points.slice(0, limit), complete: false };
    next = tightened(base, traded, valueOf(traded, closest));
  }
  return { points, complete: true };
}
