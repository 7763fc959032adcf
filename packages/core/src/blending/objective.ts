import { flattestChord } from "./flattest-chord.ts";
import type { Problem } from "./problem.ts";
import { intensityOf } from "./profile-values.ts";
import { massesOfPart } from "./rows.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

/** The objective as numbers, over the whiskeys the rules let in. A share is parts x `each` over the sum of it. */
export type Objective = {
  readonly attributes: readonly string[];
  /** Weights that sum to 1, exponents, targets. */
  readonly weight: Float64Array;
  readonly exponent: Float64Array;
  readonly target: Float64Array;
  /** Intensities to their exponent (as they are where it is infinite), one row of `attributes.length` a whiskey. */
  readonly powers: Float64Array;
  /** Weighted square of the spread of each whiskey's profile; 0 unless the distance is the expected one. */
  readonly spread: Float64Array;
  readonly each: Float64Array;
  /** What one whole share of a whiskey adds to the score, goals only. */
  readonly goal: Float64Array;
  /** Rows like `powers`, moved and scaled: the length of their mean is the distance, or (power law) never more than it. */
  readonly offsets: Float64Array;
  readonly absolute: boolean;
};

const goalOf = ({ goals }: Problem, whiskey: ShelfWhiskey): number => {
  const { price = 0, age = 0, useUp } = goals ?? {};
  const low = useUp !== undefined && (whiskey.availableMl ?? Infinity) < useUp.belowMl ? useUp.weight : 0;
  return (
    (price === 0 ? 0 : price * (whiskey.pricePerLitre ?? Infinity)) - age * (whiskey.ageYears ?? 0) - low
  );
};

export function objectiveOf(problem: Problem, shelf: readonly ShelfWhiskey[]): Objective {
  const attributes = Object.keys(problem.target.profile);
  const d = attributes.length;
  const raw = attributes.map((name) => problem.target.weights?.[name] ?? 1);
  const sum = raw.reduce((all, weight) => all + weight, 0);
  const weight = Float64Array.from(raw, (one) => one / sum);
  const exponent = Float64Array.from(attributes, (name) => problem.target.exponents?.[name] ?? 1);
  const target = Float64Array.from(attributes, (name) => problem.target.profile[name]!);
  const powers = new Float64Array(shelf.length * d);
  const spread = new Float64Array(shelf.length);
  for (const [i, whiskey] of shelf.entries())
    for (let a = 0; a < d; a += 1) {
      const { value, sd } = intensityOf(whiskey, attributes[a]!);
      powers[i * d + a] = exponent[a] === Infinity ? value : value ** exponent[a]!;
      if (problem.distance === "expected") spread[i]! += weight[a]! * sd * sd;
    }
  const offsets = new Float64Array(powers.length);
  for (let a = 0; a < d; a += 1) {
    if (exponent[a] === Infinity) {
      // The strongest part is at least the mean, so what parts have above the target is never more than the strongest has.
      for (let at = a; at < powers.length; at += d)
        offsets[at] = Math.sqrt(weight[a]!) * Math.max(0, powers[at]! - target[a]!);
      continue;
    }
    const aim = target[a]! ** exponent[a]!;
    let low = Infinity;
    let high = -Infinity;
    for (let at = a; at < powers.length; at += d) {
      low = Math.min(low, powers[at]!);
      high = Math.max(high, powers[at]!);
    }
    const absolute = problem.distance === "absolute";
    const scale =
      (absolute ? weight[a]! : Math.sqrt(weight[a]!)) * flattestChord(exponent[a]!, aim, low, high);
    for (let at = a; at < powers.length; at += d) offsets[at] = scale * (powers[at]! - aim);
  }
  const each = Float64Array.from(shelf, (whiskey) =>
    problem.shares === "alcohol" ? massesOfPart(whiskey).ethanol : 1,
  );
  const goal = Float64Array.from(shelf, (whiskey) => goalOf(problem, whiskey));
  const absolute = problem.distance === "absolute";
  return { attributes, weight, exponent, target, powers, spread, each, goal, offsets, absolute };
}
