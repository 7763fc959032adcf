import type { Problem } from "./problem.ts";
import { intensityOf } from "./profile-values.ts";
import type { FoundRecipe } from "./recipe.ts";
import { massesOfPart } from "./rows.ts";

/** Mean and spread of how far a recipe's intensities are from the target's, and the share each whiskey has. */
export type Off = {
  readonly weight: readonly number[];
  readonly mean: readonly number[];
  readonly shares: ReadonlyMap<string, number>;
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

/** How far off a recipe is on each attribute, in the mean, by the linear model. */
export function offOf(problem: Problem, recipe: FoundRecipe): Off {
  const { profile, weights } = problem.target;
  const attributes = Object.keys(profile);
  const raw = attributes.map((name) => weights?.[name] ?? 1);
  const sum = raw.reduce((all, weight) => all + weight, 0);
  const shares = sharesOf(problem, recipe);
  const whiskey = new Map(problem.whiskeys.map((one) => [one.id, one]));
  const mean = attributes.map((name) => {
    let mixed = -profile[name]!;
    for (const [id, share] of shares) mixed += share * intensityOf(whiskey.get(id)!, name).value;
    return mixed;
  });
  return { weight: raw.map((weight) => weight / sum), mean, shares };
}

/** Covariance of two recipes' intensities on each attribute: what they have in common, errors of different whiskeys independent. */
export function covariance(problem: Problem, a: Off, b: Off): readonly number[] {
  const whiskey = new Map(problem.whiskeys.map((one) => [one.id, one]));
  return Object.keys(problem.target.profile).map((name) => {
    let sum = 0;
    for (const [id, share] of a.shares) {
      const other = b.shares.get(id) ?? 0;
      if (other > 0) sum += share * other * intensityOf(whiskey.get(id)!, name).sd ** 2;
    }
    return sum;
  });
}
