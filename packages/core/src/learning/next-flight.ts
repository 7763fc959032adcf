import { repeatableRng } from "../statistics/index.ts";
import { anyMix, drawMixes } from "./any-mix.ts";
import { type History, learnTaste, type Taste } from "./learn-taste.ts";
import { pourable } from "./pourable.ts";
import type { TasteShape } from "./prior.data.ts";
import { type Parts, sharesOf } from "./recipe.ts";
import { type StopAdvice, stopAdvice } from "./stop-advice.ts";
import { triedBeliefs } from "./tried-beliefs.ts";
import { whyAnchor, whyGlass } from "./why-glass.ts";

export interface FlightWanted {
  /** Glasses in the flight, the anchor counted in. */
  readonly glasses: number;
  /** Most whole parts a recipe may have together. */
  readonly maxParts: number;
  /** Where chance begins, 0 to 2³² − 1: the same gives the same flight. */
  readonly start: number;
  /** How the taste is believed to be shaped; chosen by the rankings where left out. */
  readonly shape?: TasteShape;
}

export interface NextFlight {
  /** The anchor first, where anything was tried. Fewer than wanted only where there are no more recipes. */
  readonly glasses: readonly { readonly parts: Parts; readonly why: string }[];
  /** Of everything tried, in the order given. */
  readonly posterior: readonly {
    readonly id: string;
    /** Log worth less the mean of all recipes tried. */
    readonly mean: number;
    readonly sd: number;
    /** Chance that nothing else tried is better; one recipe under two ids has it twice. */
    readonly pBest: number;
  }[];
  readonly stop: StopAdvice;
}

/** Draws the flight is chosen by. */
const DRAWS = 512;
/** Recipes looked at closely: the most promising, and some from all over. */
const PROMISING = 110;
const ALL_OVER = 50;
/** A recipe is as promising as its mean and so many sds. */
const HOPE = 1.5;
/** Tried recipes around which to look, and that may be poured once more. */
const AGAIN = 12;

/**
 * What to pour next: the anchor (of what was tried, what is believed the best), and then one glass after the other that adds most to
 * the best of the flight, as expected over draws of what the palate could be like. What is believed good and what is not known both
 * add; what is like another glass does not.
 *
 * Sources, from memory: expected improvement for batches, Ginsbourger et al. 2010; the best of a set for preferences, Lin et al.,
 * AISTATS 2022, and Astudillo et al., AISTATS 2023. Deterministic by start; the order of whiskeys, trials and rankings says nothing.
 *
 * @throws RangeError on fewer than 2 glasses, no whiskeys, parts that are not whole
 * @example nextFlight({ whiskeys, tried, rankings }, { glasses: 5, maxParts: 8, start: 1 }).glasses
 */
export function nextFlight(history: History, wanted: FlightWanted): NextFlight {
  const { glasses, maxParts, start, shape } = wanted;
  if (!(Number.isInteger(glasses) && glasses >= 2))
    throw new RangeError(`nextFlight requires 2 glasses or more, got ${glasses}`);
  const rng = repeatableRng(start);
  const taste = learnTaste(history, shape);
  const { mean, sd } = triedBeliefs(taste);
  const order = [...mean.keys()].toSorted((a, b) => (mean[b] as number) - (mean[a] as number) || a - b);
  const near = order.slice(0, AGAIN).map((at) => (taste.recipes[at] as Taste["recipes"][number]).whole);
  const pool = closely(taste, pourable(taste.ids, maxParts, near, rng));
  const mixes = together(taste, pool);
  const tried = taste.recipes.length;
  const draws = drawMixes(
    taste,
    mixes.map(({ placed }) => placed),
    DRAWS,
    rng,
  );
  const anchor = order[0];
  // What was tried and is not among the best stays out of the flight, and so does what has more parts than can be poured.
  const open = mixes.flatMap((mix, at) =>
    at === anchor || (at < tried && !(order.indexOf(at) < AGAIN && partsOf(mix.whole) <= maxParts))
      ? []
      : [at],
  );
  const { chosen, gain } = bestTogether(draws, anchor, open, glasses);
  const compared = (at: number): number =>
    anchor === undefined
      ? 0.5
      : draws.filter((draw) => (draw[at] as number) > (draw[anchor] as number)).length / draws.length;
  const places = history.tried.map(({ id }) => taste.recipeOf.get(id) as number);
  const best = chancesBest(draws, tried);
  const wholeOf = (at: number): readonly number[] => (mixes[at] as (typeof mixes)[number]).whole;
  const told = new Set(
    taste.recipes.flatMap(({ whole }) => taste.ids.filter((_, i) => (whole[i] as number) > 0)),
  );
  return {
    glasses: chosen.map((at) => ({
      parts: partsBy(taste.ids, wholeOf(at)),
      why:
        at === anchor
          ? whyAnchor(best[at] as number, tried)
          : whyGlass({
              ids: taste.ids,
              shares: sharesOf(wholeOf(at)),
              anchor: anchor === undefined ? null : sharesOf(wholeOf(anchor)),
              better: compared(at),
              again: at < tried,
              told,
            }),
    })),
    posterior: history.tried.map(({ id }, i) => {
      const at = places[i] as number;
      return { id, mean: mean[at] as number, sd: sd[at] as number, pBest: best[at] as number };
    }),
    stop: stopAdvice(gain, history.rankings.length, chosen.length),
  };
}

const partsOf = (whole: readonly number[]): number => whole.reduce((sum, part) => sum + part, 0);

const partsBy = (ids: readonly string[], whole: readonly number[]): Parts =>
  Object.fromEntries(ids.flatMap((id, i) => ((whole[i] as number) > 0 ? [[id, whole[i] as number]] : [])));

/** The recipes worth a closer look. */
function closely(taste: Taste, pool: readonly (readonly number[])[]): (readonly number[])[] {
  if (pool.length <= PROMISING + ALL_OVER) return [...pool];
  const hoped = pool.map((whole) => {
    const { mean, sd } = anyMix(taste, taste.kernel.place(sharesOf(whole)));
    return { whole, hope: mean + HOPE * sd };
  });
  const sorted = hoped.toSorted((a, b) => b.hope - a.hope).map(({ whole }) => whole);
  const others = sorted.slice(PROMISING);
  const step = others.length / ALL_OVER;
  return [
    ...sorted.slice(0, PROMISING),
    ...Array.from({ length: ALL_OVER }, (_, n) => others[Math.floor(n * step)] as readonly number[]),
  ];
}

/** What was tried, in its order, and then the rest of the pool. */
function together(taste: Taste, pool: readonly (readonly number[])[]) {
  const known = new Set(taste.recipes.map(({ whole }) => whole.join()));
  return [
    ...taste.recipes,
    ...pool
      .filter((whole) => !known.has(whole.join()))
      .map((whole) => ({ whole, placed: taste.kernel.place(sharesOf(whole)) })),
  ];
}

/** How often each of the first `tried` is the best of them. */
function chancesBest(draws: readonly Float64Array[], tried: number): number[] {
  const best = Array.from({ length: tried }, () => 0);
  for (const draw of draws) {
    let top = 0;
    for (let i = 1; i < tried; i += 1) if ((draw[i] as number) > (draw[top] as number)) top = i;
    if (tried > 0) best[top] = (best[top] as number) + 1 / draws.length;
  }
  return best;
}

/** Glass by glass what adds most to the expected best; what all of them add to the anchor alone. */
function bestTogether(
  draws: readonly Float64Array[],
  anchor: number | undefined,
  open: readonly number[],
  glasses: number,
): { readonly chosen: readonly number[]; readonly gain: number } {
  const chosen = anchor === undefined ? [] : [anchor];
  // Without an anchor a glass is held against an unknown mix, worth 0.
  const top = Float64Array.from(draws, (draw) => (anchor === undefined ? 0 : (draw[anchor] as number)));
  const left = new Set(open);
  let gain = 0;
  while (chosen.length < glasses && left.size > 0) {
    let best: { readonly at: number; readonly added: number } | undefined;
    for (const at of left) {
      let added = 0;
      for (let d = 0; d < draws.length; d += 1)
        added += Math.max(0, ((draws[d] as Float64Array)[at] as number) - (top[d] as number));
      if (best === undefined || added > best.added) best = { at, added };
    }
    if (best === undefined) break;
    const { at, added } = best;
    chosen.push(at);
    left.delete(at);
    gain += added / draws.length;
    for (let d = 0; d < draws.length; d += 1)
      top[d] = Math.max(top[d] as number, (draws[d] as Float64Array)[at] as number);
  }
  return { chosen, gain };
}
