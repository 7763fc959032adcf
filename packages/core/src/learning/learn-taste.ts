import type { Square } from "../numeric/index.ts";
import type { RankedSet } from "../statistics/index.ts";
import { type MixtureKernel, mixtureKernel, type PlacedMix } from "./mixture-kernel.ts";
import { SHAPES, type TasteShape, type WeighedShape } from "./prior.data.ts";
import { type KnownWhiskey, lowestTerms, sharesOf, type TriedRanking, type TriedRecipe } from "./recipe.ts";
import { type TastePosterior, tastePosterior } from "./taste-posterior.ts";

export interface History {
  readonly whiskeys: readonly KnownWhiskey[];
  readonly tried: readonly TriedRecipe[];
  readonly rankings: readonly TriedRanking[];
}

/** What is believed of a taste for mixes. Recipes are in a fixed order of their own, so that the order of the input says nothing. */
export interface Taste {
  /** In the order of their ids, as all whole parts are. */
  readonly ids: readonly string[];
  /** Each recipe once, in lowest terms. */
  readonly recipes: readonly { readonly whole: readonly number[]; readonly placed: PlacedMix }[];
  /** Which recipe each tried id is. */
  readonly recipeOf: ReadonlyMap<string, number>;
  readonly shape: TasteShape;
  readonly kernel: MixtureKernel;
  readonly posterior: TastePosterior;
}

/** Keeps two mixes that nearly agree apart in rounding: this share of the prior variance is a recipe's own. */
const OWN_NOISE = 1e-6;

/**
 * What a history of tried recipes and rankings says about the liking of any mix: a Gaussian process over mixtures (`mixtureKernel`)
 * with the Plackett-Luce likelihood of rankings, ties by Davidson and Luce (`rankingLogLikelihood`).
 *
 * The shape of the process is the one of `SHAPES` that makes the rankings likeliest, weight counted in; or as given.
 *
 * @throws RangeError on a recipe without parts, or a ranking of what was not tried
 * @example learnTaste({ whiskeys, tried, rankings }).posterior
 */
export function learnTaste(history: History, given?: TasteShape): Taste {
  const whiskeys = history.whiskeys.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const ids = whiskeys.map(({ id }) => id);
  const parts = history.tried.map((recipe) => ({ id: recipe.id, whole: lowestTerms(ids, recipe.parts) }));
  const keys = [...new Set(parts.map(({ whole }) => whole.join()))].toSorted();
  const kernel = mixtureKernel(whiskeys);
  const recipes = keys.map((key) => {
    const whole = key.split(",").map(Number);
    return { whole, placed: kernel.place(sharesOf(whole)) };
  });
  const recipeOf = new Map(parts.map(({ id, whole }) => [id, keys.indexOf(whole.join())]));
  const sets = setsOf(history.rankings, recipeOf);
  const fit = (shape: TasteShape, averaged: boolean): TastePosterior =>
    tastePosterior(
      Float64Array.from(recipes, ({ placed }) => kernel.mean(placed, shape)),
      covarianceOf(recipes, kernel, shape),
      sets,
      averaged,
    );
  const shape = given ?? likeliest((one) => fit(one, false).logEvidence, sets.length, recipes.length);
  return { ids, recipes, recipeOf, shape, kernel, posterior: fit(shape, true) };
}

/** Of so many recipes each look takes long: only shapes that differ from the best so far in one number are looked at. */
const MANY = 50;

function likeliest(
  logEvidence: (shape: TasteShape) => number,
  rankings: number,
  recipes: number,
): TasteShape {
  const [first] = SHAPES;
  if (first === undefined) throw new RangeError("learnTaste requires a shape to choose, got none");
  if (rankings === 0) return first;
  const looked = new Map<WeighedShape, number>();
  const valueOf = (one: WeighedShape): number => {
    const value = looked.get(one) ?? one.logWeight + logEvidence(one);
    looked.set(one, value);
    return value;
  };
  let best = first;
  const look = (among: readonly WeighedShape[]): void => {
    for (const one of among) if (valueOf(one) > valueOf(best)) best = one;
  };
  if (recipes <= MANY) look(SHAPES);
  else
    for (const free of ["scale", "length", "curve"] as const)
      look(
        SHAPES.filter((one) =>
          (["scale", "length", "curve"] as const).every((name) => name === free || one[name] === best[name]),
        ),
      );
  const { scale, length, curve } = best;
  return { scale, length, curve };
}

function covarianceOf(recipes: Taste["recipes"], kernel: MixtureKernel, shape: TasteShape): Square {
  const n = recipes.length;
  const square = new Float64Array(n * n);
  for (const [i, a] of recipes.entries())
    for (const [j, b] of recipes.entries())
      square[i * n + j] =
        kernel.covariance(a.placed, b.placed, shape) + (i === j ? OWN_NOISE * shape.scale ** 2 : 0);
  return square;
}

function setsOf(rankings: readonly TriedRanking[], recipeOf: ReadonlyMap<string, number>): RankedSet[] {
  const sets = rankings
    .map((ranking) => ranking.filter((group) => group.length > 0))
    .filter((ranking) => ranking.flat().length > 1)
    .map((ranking): RankedSet => {
      const places = ranking.map((group) =>
        group
          .map((id) => {
            const at = recipeOf.get(id);
            if (at === undefined)
              throw new RangeError(`learnTaste requires rankings of what was tried, got ${id}`);
            return at;
          })
          .toSorted((a, b) => a - b),
      );
      return {
        appeals: places.flat().map((at) => [[at, 1] as const]),
        sizes: places.map((group) => group.length),
        times: 1,
      };
    });
  const key = ({ appeals, sizes }: RankedSet): string => `${appeals.join(";")}|${sizes.join()}`;
  // Sums must not depend on the order of the evenings, not even in rounding.
  return sets.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
}
