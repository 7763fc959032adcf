import { mixParts } from "../alcoholometry/index.ts";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { MOST_POINTS, PERCENT_PER_POINT, YEARS_PER_POINT } from "./fill-problem.ts";
import type { FillProblem } from "./fill-problem.ts";

/** What a filling is measured by: the attributes, then the strength where it counts; the age apart. */
export type Axes = {
  readonly attributes: readonly string[];
  /** By axis: what is wanted, and what a squared unit off it counts. */
  readonly target: Float64Array;
  readonly weight: Float64Array;
  /** Number of axes. The strength is the last of them, where `strength` is true. */
  readonly size: number;
  readonly strength: boolean;
  /** By how much the exact strength of a mix may lie below and above the mean by volume, % vol. */
  readonly below: number;
  readonly above: number;
  /** Only too weak counts, since water makes up for too strong. */
  readonly onlyWeak: boolean;
  readonly years: number | null;
  readonly yearsWeight: number;
  /** Sum of all weights, at least one of them above 0. */
  readonly total: number;
};

/** @throws RangeError when nothing is left to measure by */
export function axesOf({ whiskeys, original, weights, waterTo }: FillProblem): Axes {
  const weightOf = (name: string): number =>
    Object.hasOwn(weights?.profile ?? {}, name) ? weights!.profile![name]! : 1;
  const attributes = Object.keys(original.profile).filter((name) => weightOf(name) > 0);
  const wanted = waterTo ?? original.abv20;
  const onStrength = wanted === null ? 0 : (weights?.strength ?? 1);
  const onYears = original.youngestYears === null ? 0 : (weights?.age ?? 1);
  const counted = attributes.map(weightOf);
  const total = counted.reduce((sum, one) => sum + one, 0) + onStrength + onYears;
  if (!(total > 0))
    throw new RangeError("a filling requires a profile, a strength or an age to come close to, got none");
  const strength = onStrength > 0;
  const target = [...attributes.map((name) => original.profile[name]!), ...(strength ? [wanted!] : [])];
  const weight = [...counted, ...(strength ? [onStrength / PERCENT_PER_POINT ** 2] : [])];
  return {
    attributes,
    target: Float64Array.from(target),
    weight: Float64Array.from(weight),
    size: target.length,
    strength,
    ...contraction(whiskeys.map((whiskey) => whiskey.abv20)),
    onlyWeak: waterTo !== undefined,
    years: onYears > 0 ? original.youngestYears : null,
    yearsWeight: onYears,
    total,
  };
}

const GRID = 64;

/**
 * How far the exact strength of any mix of these strengths lies from their mean by volume. Density falls the faster the stronger
 * (it is a concave function of the strength), so of all mixes with one mean, the exact strength is greatest for the mix of the weakest and
 * the strongest alone, and least where all are alike, which is the mean. Tried on a grid, with half as much again and 0.02 % vol
 * for what lies between; `axes.test.ts` holds the bound against drawn mixes.
 */
function contraction(strengths: readonly number[]): { readonly below: number; readonly above: number } {
  const [low, high] = [Math.min(...strengths), Math.max(...strengths)];
  // No whiskeys, or all alike: nothing shrinks.
  if (!(low < high)) return { below: 0.02, above: 0.02 };
  let most = 0;
  for (let n = 1; n < GRID; n += 1) {
    const parts = [
      { parts: n, abv20: abv20(low) },
      { parts: GRID - n, abv20: abv20(high) },
    ];
    const mean = (n * low + (GRID - n) * high) / GRID;
    most = Math.max(most, mixParts(parts, millilitres20(1000)).abv20 - mean);
  }
  return { below: 0.02, above: 1.5 * most + 0.02 };
}

/** Points by which an age is off; an age that is not known is Infinity. */
export const yearsOff = (years: number, wanted: number): number =>
  Math.min(MOST_POINTS, Math.abs(years - wanted) / YEARS_PER_POINT);
