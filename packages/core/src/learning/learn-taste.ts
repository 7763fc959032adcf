import type { Square } from "../numeric/index.ts";
import { type MarkSheet, numberedSheets } from "./marks.ts";
import { type MixtureKernel, mixtureKernel, type PlacedMix } from "./mixture-kernel.ts";
import {
  MARK_NOISES,
  MOST_TASTED,
  OWN_SHARES,
  SHAPES,
  type TasteShape,
  type WeighedShape,
} from "./prior.data.ts";
import { type KnownWhiskey, lowestTerms, sharesOf, type TriedRanking, type TriedRecipe } from "./recipe.ts";
import { asOnePalate, asTasters, numbered, type Tasted, type TastedSets } from "./tasted.ts";
import { type TastePosterior, tastePosterior } from "./taste-posterior.ts";

export interface History {
  readonly whiskeys: readonly KnownWhiskey[];
  readonly tried: readonly TriedRecipe[];
  readonly rankings: readonly TriedRanking[];
  /** Who made each ranking, in their order; null where that is not said. All are taken for one palate where left out. */
  readonly tasters?: readonly (string | null)[];
  /** Marks, sheet by sheet. What stands in a ranking and on a sheet counts as tasted twice. */
  readonly marks?: readonly MarkSheet[];
}

/** What is not chosen by what was said, but given. */
interface Given {
  readonly shape?: TasteShape | undefined;
  /** Of the variance of one taster's liking, the share that is their own. */
  readonly ownShare?: number;
  /** How much chance is in everybody's marks, against that in a ranking. */
  readonly noise?: number;
}

interface Palates {
  readonly shape: TasteShape;
  /** Of the variance of one taster's liking, the share that is their own; the rest is common to all. */
  readonly ownShare: number;
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
  /** Of the variance of one taster's liking, the share that is their own. */
  readonly ownShare: number;
  /** How many rankings and marks say something: of two glasses or more. */
  readonly counted: { readonly rankings: number; readonly marks: number };
  readonly kernel: MixtureKernel;
  /** What the posterior's log worths are of: each recipe, or, where tasters are told apart, each as one of them finds it. */
  readonly tasted: readonly Tasted[];
  readonly posterior: TastePosterior;
}

/** Keeps two mixes that nearly agree apart in rounding: this share of the prior variance is a recipe's own. */
const OWN_NOISE = 1e-6;

/**
 * What a history of tried recipes, rankings and marks says about the liking of any mix: a Gaussian process over mixtures
 * (`mixtureKernel`) with the Plackett-Luce likelihood of rankings, ties by Davidson and Luce (`rankingLogLikelihood`), and marks as
 * rounded images of what was felt (`markLikelihood`).
 *
 * The shape of the process is the one of `SHAPES` that makes all that was said likeliest, weight counted in; or as given. Where it is
 * said who ranked and marked, tasters may differ: what one likes is what all like and what is their own, two processes of one shape; the
 * share of the own one is of `OWN_SHARES`, chosen likewise, and so is, for all who mark together, how much chance is in a mark, of
 * `MARK_NOISES`: the few marks of one taster do not tell.
 *
 * @throws RangeError on a recipe without parts, or a ranking or mark of what was not tried
 * @example learnTaste({ whiskeys, tried, rankings }).posterior
 */
export function learnTaste(history: History, given: Given = {}): Taste {
  const whiskeys = history.whiskeys.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const ids = whiskeys.map(({ id }) => id);
  const parts = history.tried.map((recipe) => ({ id: recipe.id, whole: lowestTerms(ids, recipe.parts) }));
  const keys = [...new Set(parts.map(({ whole }) => whole.join()))].toSorted();
  const kernel = mixtureKernel(whiskeys);
  const recipes = keys.map((key) => {
    const whole = key.split(",").map(Number);
    return { whole, placed: kernel.place(sharesOf(whole)) };
  });
  const covariances = kernel.covariances(recipes.map(({ placed }) => placed));
  const recipeOf = new Map(parts.map(({ id, whole }) => [id, keys.indexOf(whole.join())]));
  const rankings = numbered(history.rankings, history.tasters ?? [], recipeOf);
  const { sheets, scorers } = numberedSheets(history.marks ?? [], recipeOf);
  const one = asOnePalate(rankings, sheets, recipes.length);
  const usual = given.noise ?? MARK_NOISES[0];
  // A mode lies near that of the shape looked at before.
  const near = new Map<readonly Tasted[], Float64Array>();
  const fit = (
    { tasted, sets, sheets: marked }: TastedSets,
    palates: Palates,
    noise: number,
    averaged: boolean,
  ): TastePosterior => {
    const posterior = tastePosterior(
      Float64Array.from(tasted, ({ recipe }) => kernel.mean(placedAt(recipes, recipe), palates.shape)),
      covarianceOf(covariances(palates.shape), recipes.length, tasted, palates),
      {
        sets,
        sheets: marked,
        noises: Array.from({ length: scorers }, () => noise),
        differences: palates.shape.scale,
      },
      { averaged, near: near.get(tasted) },
    );
    near.set(tasted, posterior.mode);
    return posterior;
  };
  const likely = (shape: TasteShape): Palates => ({ shape, ownShare: 0 });
  const said = one.sets.length + one.sheets.length;
  const same = likely(
    given.shape ??
      likeliest((shape) => fit(one, likely(shape), usual, false).logEvidence, said, recipes.length),
  );
  const apart = asTasters(rankings, sheets);
  const palates = tellTasters(
    same,
    given.ownShare,
    given.shape === undefined,
    new Set([...rankings, ...sheets].map(({ taster }) => taster)).size > 1 &&
      apart.tasted.length <= MOST_TASTED,
    (some) => fit(some.ownShare === 0 ? one : apart, some, usual, false).logEvidence,
  );
  const seen = palates.ownShare === 0 ? one : apart;
  const noise =
    given.noise === undefined && scorers > 0
      ? likeliestOf<number>(MARK_NOISES, (some) => fit(seen, palates, some, false).logEvidence)
      : usual;
  const posterior = fit(seen, palates, noise, true);
  const counted = {
    rankings: rankings.length,
    marks: sheets.reduce((sum, { given: own }) => sum + own, 0),
  };
  return { ids, recipes, recipeOf, ...palates, counted, kernel, tasted: seen.tasted, posterior };
}

function likeliestOf<One>(some: readonly One[], logEvidence: (one: One) => number): One {
  const weighed = some.map((one) => ({ one, value: logEvidence(one) }));
  return weighed.reduce((best, next) => (next.value > best.value ? next : best)).one;
}

/** Whether tasters differ: the share of their own that makes the rankings likeliest, at either scale where the shape is not given. */
function tellTasters(
  same: Palates,
  given: number | undefined,
  anyScale: boolean,
  may: boolean,
  logEvidence: (palates: Palates) => number,
): Palates {
  if (!may) return same;
  if (given !== undefined) return { shape: same.shape, ownShare: given };
  const scales = anyScale ? [...new Set(SHAPES.map(({ scale }) => scale))] : [same.shape.scale];
  const some = OWN_SHARES.flatMap(({ share, weight }) =>
    (share === 0 ? [same.shape.scale] : scales).map((scale) => ({
      palates: { shape: { ...same.shape, scale }, ownShare: share },
      weight,
    })),
  );
  return likeliestOf(some, ({ palates, weight }) => Math.log(weight) + logEvidence(palates)).palates;
}

/** Of so many recipes each look takes long: only shapes that differ from the best so far in one number are looked at. */
const MANY = 50;

function likeliest(logEvidence: (shape: TasteShape) => number, said: number, recipes: number): TasteShape {
  const [first] = SHAPES;
  if (first === undefined) throw new RangeError("learnTaste requires a shape to choose, got none");
  if (said === 0) return first;
  const looked = new Map<WeighedShape, number>();
  const valueOf = (one: WeighedShape): number => {
    const value = looked.get(one) ?? one.logWeight + logEvidence(one);
    looked.set(one, value);
    return value;
  };
  let best = first;
  const look = (among: readonly WeighedShape[]): void => {
    // Small differences first: their mode is found in fewer steps, and is where the next looks from.
    for (const one of among.toSorted((a, b) => a.scale - b.scale))
      if (valueOf(one) > valueOf(best)) best = one;
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

/** Two tasters of one recipe share what is not their own. */
function covarianceOf(
  common: Square,
  recipes: number,
  tasted: readonly Tasted[],
  { shape, ownShare }: Palates,
): Square {
  const n = tasted.length;
  const square = new Float64Array(n * n);
  for (const [i, a] of tasted.entries()) {
    for (let j = 0; j < n; j += 1) {
      const b = tasted[j] as Tasted;
      square[i * n + j] =
        (a.taster === b.taster ? 1 : 1 - ownShare) * (common[a.recipe * recipes + b.recipe] as number);
    }
    square[i * (n + 1)] = (square[i * (n + 1)] as number) + OWN_NOISE * shape.scale ** 2;
  }
  return square;
}

const placedAt = (recipes: Taste["recipes"], at: number): PlacedMix =>
  (recipes[at] as Taste["recipes"][number]).placed;
