import { chiSquareUpperTail } from "../statistics/index.ts";
import type { Problem } from "./problem.ts";
import type { FoundRecipe } from "./recipe.ts";
import { covariance, offOf } from "./spread-of.ts";

const RELATIVE = 1e-12;

/** P(Z <= z), standard normal. */
const normalCdf = (z: number): number => {
  const tail = Math.abs(z) > 38 ? 0 : chiSquareUpperTail(z * z, 1) / 2;
  return z > 0 ? 1 - tail : tail;
};

function requireSquares({ distance }: Problem): void {
  if (distance === "absolute")
    throw new RangeError("expectation requires a root mean square distance, got absolute");
}

/**
 * The root of a recipe's expected squared distance: the true profiles lie about the stated ones with the stated spreads, errors of
 * different whiskeys and attributes independent. Exact where profiles mix by the mean: the squared distance of the means plus the
 * mean's variance. Where an attribute follows a power law that variance is of first order. Never below the plain distance.
 *
 * @throws RangeError for an absolute distance
 * @example expectedDistance(problem, recipe)
 */
export function expectedDistance(problem: Problem, recipe: FoundRecipe): number {
  requireSquares(problem);
  const off = offOf(problem, recipe);
  const variance = covariance(problem, off, off);
  return Math.sqrt(off.weight.reduce((sum, w, a) => sum + w * (off.mean[a]! ** 2 + variance[a]!), 0));
}

/**
 * The probability that recipe `a` is truly closer to the target than `b`, under errors as in `expectedDistance`.
 *
 * Method: the difference of the squared distances has its exact mean and variance (normal errors; whiskeys in both recipes count
 * once), and is taken to be normal. Accuracy: within 0.03 of 100 000 draws on random problems with six or more attributes; with
 * fewer it is rougher. 0.5 when nothing is uncertain and both are equally far; 0 or 1 when nothing is uncertain and they are not.
 *
 * @throws RangeError for an absolute distance
 * @example probabilityCloser(problem, first, second)
 */
export function probabilityCloser(problem: Problem, a: FoundRecipe, b: FoundRecipe): number {
  requireSquares(problem);
  const offA = offOf(problem, a);
  const offB = offOf(problem, b);
  const varianceA = covariance(problem, offA, offA);
  const varianceB = covariance(problem, offB, offB);
  const both = covariance(problem, offA, offB);
  let mean = 0;
  let variance = 0;
  let scale = 0;
  for (const [n, w] of offA.weight.entries()) {
    const x = offA.mean[n]!;
    const y = offB.mean[n]!;
    const u = varianceA[n]!;
    const v = varianceB[n]!;
    const c = both[n]!;
    mean += w * (x * x + u - y * y - v);
    scale += w * (x * x + u + y * y + v);
    // Var(X²) = 4 x² u + 2 u², Cov(X², Y²) = 4 x y c + 2 c² for normal X and Y.
    variance += w * w * (4 * x * x * u + 2 * u * u + 4 * y * y * v + 2 * v * v - 8 * x * y * c - 4 * c * c);
  }
  if (variance > RELATIVE * scale * scale) return normalCdf(-mean / Math.sqrt(variance));
  if (Math.abs(mean) <= RELATIVE * scale) return 0.5;
  return mean < 0 ? 1 : 0;
}

/**
 * The recipes of a list that the first cannot be told from on what is known: those it beats with less than `sure`. The list's order
 * is kept; the first is always in it. Two or more: try them in one flight.
 */
export function cannotTellApart(
  problem: Problem,
  recipes: readonly FoundRecipe[],
  sure = 0.9,
): readonly FoundRecipe[] {
  const [first] = recipes;
  if (first === undefined) return [];
  return recipes.filter((other) => other === first || probabilityCloser(problem, first, other) < sure);
}
