import { mixedBy } from "./mixed-by.ts";
import type { Problem } from "./problem.ts";
import { intensityOf } from "./profile-values.ts";
import type { FoundRecipe } from "./recipe.ts";
import { massesOfPart } from "./rows.ts";

/** Mean and spread of how far a recipe's intensities are from the target's, and the share each whiskey has. */
export type Off = {
  readonly weight: readonly number[];
  readonly mean: readonly number[];
  /** By whiskey: how far the mix moves on each attribute with that whiskey's own intensity; its share where profiles mix by the mean. */
  readonly slopes: ReadonlyMap<string, readonly number[]>;
};

/** The shares of a recipe's whiskeys, of the volume or of the alcohol as the problem says. */
export function sharesOf(problem: Problem, recipe: FoundRecipe): ReadonlyMap<string, number> {
  const whiskey = new Map(problem.whiskeys.map((one) => [one.id, one]));
  const amounts = recipe.parts.map(({ id, parts }) => ({
    id,
    amount: problem.shares === "alcohol" ? parts * massesOfPart(whiskey.get(id)!).ethanol : parts,
  }));
  const all = amounts.reduce((sum, { amount }) => sum + amount, 0);
  return new Map(amounts.map(({ id, amount }) => [id, amount / all]));
}

/**
 * How far off a recipe is on each attribute, in the mean. Where an attribute follows a power law the slope is that of the chord over one
 * spread to both sides: first order, not exact.
 */
export function offOf(problem: Problem, recipe: FoundRecipe): Off {
  const { profile, weights, exponents } = problem.target;
  const attributes = Object.keys(profile);
  const raw = attributes.map((name) => weights?.[name] ?? 1);
  const sum = raw.reduce((all, weight) => all + weight, 0);
  const whiskey = new Map(problem.whiskeys.map((one) => [one.id, one]));
  const lines = [...sharesOf(problem, recipe)].map(([id, share]) => ({ id, share, slopes: [] as number[] }));
  const shares = lines.map(({ share }) => share);
  const mean = attributes.map((name) => {
    const exponent = exponents?.[name] ?? 1;
    const levels = lines.map(({ id }) => intensityOf(whiskey.get(id)!, name));
    const values = levels.map(({ value }) => value);
    for (const [i, { share, slopes }] of lines.entries()) {
      const { value, sd } = levels[i]!;
      const [low, high] = [Math.max(0, value - sd), value + sd];
      const at = (level: number): number => mixedBy(exponent, shares, values.with(i, level));
      slopes.push(exponent === 1 ? share : sd === 0 ? 0 : (at(high) - at(low)) / (high - low));
    }
    return mixedBy(exponent, shares, values) - profile[name]!;
  });
  return {
    weight: raw.map((weight) => weight / sum),
    mean,
    slopes: new Map(lines.map(({ id, slopes }) => [id, slopes])),
  };
}

/** Covariance of two recipes' intensities on each attribute: what they have in common, errors of different whiskeys independent. */
export function covariance(problem: Problem, a: Off, b: Off): readonly number[] {
  const whiskey = new Map(problem.whiskeys.map((one) => [one.id, one]));
  return Object.keys(problem.target.profile).map((name, n) => {
    let sum = 0;
    for (const [id, slopes] of a.slopes) {
      const other = b.slopes.get(id)?.[n] ?? 0;
      if (other !== 0) sum += slopes[n]! * other * intensityOf(whiskey.get(id)!, name).sd ** 2;
    }
    return sum;
  });
}
