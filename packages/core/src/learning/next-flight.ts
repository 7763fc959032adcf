import { repeatableRng } from "../statistics/index.ts";
import { drawMixes } from "./any-mix.ts";
import { bestTogether } from "./best-together.ts";
import { type History, learnTaste, type Taste } from "./learn-taste.ts";
import { pourable } from "./pourable.ts";
import type { TasteShape } from "./prior.data.ts";
import { type Parts, partsBy, sharesOf } from "./recipe.ts";
import { larderOf, type ShelfLeft } from "./shelf-left.ts";
import { shortlist } from "./shortlist.ts";
import { type StopAdvice, stopAdvice } from "./stop-advice.ts";
import { triedBeliefs } from "./tried-beliefs.ts";
import { WHY_TARGET, whyAnchor, whyGlass } from "./why-glass.ts";

export interface FlightWanted {
  /** Glasses in the flight, the anchor and the target counted in. */
  readonly glasses: number;
  /** Most whole parts a recipe may have together. */
  readonly maxParts: number;
  /** Where chance begins, 0 to 2³² − 1: the same gives the same flight. */
  readonly start: number;
  /** How the taste is believed to be shaped; chosen by the rankings where left out. */
  readonly shape?: TasteShape;
  /** Whether a recipe may be mixed: rules, and what is on the shelf. All may where left out. */
  readonly keeps?: (parts: Parts) => boolean;
  /** Ids of the whiskeys that may be mixed: what is on the shelf. All may where left out. */
  readonly mixes?: ReadonlySet<string>;
  /** Ids of what was tried and still stands ready, whether or not it may be mixed anew. */
  readonly ready?: ReadonlySet<string>;
  /** Id of what was tried and all is to come close to: stands in every flight and is no anchor. */
  readonly target?: string;
  /** What is left of the whiskeys: all glasses of the flight together take no more. There is enough of all where left out. */
  readonly shelf?: ShelfLeft;
}

export interface NextGlass {
  readonly kind: "anchor" | "target" | "again" | "new";
  readonly parts: Parts;
  readonly why: string;
  /** Chance that it is better than the anchor; one half of the anchor itself, and where there is none. */
  readonly better: number;
}

export interface NextFlight {
  /** The anchor first, where anything was tried, then the target. Fewer than wanted only where there are no more recipes. */
  readonly glasses: readonly NextGlass[];
  /** Of everything tried, in the order given. */
  readonly posterior: readonly {
    readonly id: string;
    /** Log worth less the mean of all recipes tried. */
    readonly mean: number;
    readonly sd: number;
    /** Chance that nothing else tried is better; one recipe under two ids has it twice. */
    readonly pBest: number;
  }[];
  /** What can be mixed and is believed the best, tried or not; null where nothing can be. */
  readonly favourite: { readonly parts: Parts; readonly tried: boolean } | null;
  readonly stop: StopAdvice;
  /** Of what one taster likes, the share of the variance that is their own; 0 where all are taken for one palate. */
  readonly ownShare: number;
  /** Whiskeys of which too little is left: some mixes were not looked at, or not chosen, for them. */
  readonly scarce: readonly string[];
  /** What all of it rests on: rankings and marks that say something. */
  readonly counted: { readonly rankings: number; readonly marks: number };
}

/** Draws the flight is chosen by. */
const DRAWS = 512;
/** Where so many recipes were tried, half as many draws: they cost the more. */
const MANY = 60;
/** Tried recipes around which to look, and that may be poured once more. */
const AGAIN = 12;

/**
 * What to pour next: the anchor (of what was tried and can be poured, what is believed the best), the target, and then one glass after
 * the other that adds most to the best of the flight, as expected over draws of what the palate could be like. What is believed good
 * and what is not known both add; what is like another glass does not.
 *
 * Sources, from memory: expected improvement for batches, Ginsbourger et al. 2010; the best of a set for preferences, Lin et al.,
 * AISTATS 2022, and Astudillo et al., AISTATS 2023. Deterministic by start; the order of whiskeys, trials and rankings says nothing.
 *
 * @param taste what the history says, where that is known already
 * @throws RangeError on fewer than 2 glasses, no whiskeys, parts that are not whole, a target that was not tried
 * @example nextFlight({ whiskeys, tried, rankings }, { glasses: 5, maxParts: 8, start: 1 }).glasses
 */
export function nextFlight(
  history: History,
  wanted: FlightWanted,
  taste = learnTaste(history, { shape: wanted.shape }),
): NextFlight {
  const { glasses, maxParts, start, mixes: some } = wanted;
  const mayMix = (id: string): boolean => some?.has(id) ?? true;
  const shelf = wanted.shelf && larderOf(wanted.shelf);
  const scarce = new Set<string>();
  const isShort = (parts: Parts, stands: boolean): boolean => {
    const short = shelf?.short(parts, stands) ?? [];
    for (const id of short) scarce.add(id);
    return short.length > 0;
  };
  const keeps = (whole: readonly number[]): boolean => {
    const parts = partsBy(ids, whole);
    return Object.keys(parts).every(mayMix) && (wanted.keeps?.(parts) ?? true) && !isShort(parts, false);
  };
  if (!(Number.isInteger(glasses) && glasses >= 2))
    throw new RangeError(`nextFlight requires 2 glasses or more, got ${glasses}`);
  const rng = repeatableRng(start);
  const { ids, recipes } = taste;
  const target = wanted.target === undefined ? -1 : triedAt(taste, wanted.target);
  const ready = new Set([...(wanted.ready ?? [])].map((id) => triedAt(taste, id)));
  const may = new Set(ready);
  for (const [at, { whole }] of recipes.entries()) if (keeps(whole)) may.add(at);
  const { mean, sd } = triedBeliefs(taste);
  const order = [...mean.keys()].toSorted((a, b) => (mean[b] as number) - (mean[a] as number) || a - b);
  const near = order.slice(0, AGAIN).map((at) => (recipes[at] as Taste["recipes"][number]).whole);
  const pool = pourable(ids, maxParts, near, rng, keeps, mayMix);
  const { mixes, favourite } = shortlist(taste, pool);
  const draws = drawMixes(
    taste,
    mixes.map(({ placed }) => placed),
    recipes.length > MANY ? DRAWS / 2 : DRAWS,
    rng,
    recipes.length,
  );
  const wholeOf = (at: number): readonly number[] => (mixes[at] as (typeof mixes)[number]).whole;
  const glassOf = (at: number): [Parts, boolean] => [partsBy(ids, wholeOf(at)), ready.has(at)];
  if (target >= 0) shelf?.take(...glassOf(target));
  const anchor = order.find(
    (at) => at !== target && may.has(at) && (ready.has(at) || !isShort(...glassOf(at))),
  );
  if (anchor !== undefined) shelf?.take(...glassOf(anchor));
  const again = new Set(order.slice(0, AGAIN).filter((at) => may.has(at)));
  // What was tried and is not among the best stays out of the flight, and so does what has more parts than can be poured.
  const open = mixes.flatMap(({ whole }, at) => {
    if (at === anchor || at === target) return [];
    return at < recipes.length && !(again.has(at) && partsOf(whole) <= maxParts) ? [] : [at];
  });
  const { chosen, gain } = bestTogether(
    draws,
    anchor,
    open,
    glasses - (target < 0 ? 0 : 1),
    shelf && {
      allows: (at) => shelf.short(...glassOf(at)).length === 0,
      take: (at) => shelf.take(...glassOf(at)),
      missed: (at) => void isShort(...glassOf(at)),
    },
  );
  const better = (at: number): number =>
    anchor === undefined || at === anchor
      ? 0.5
      : draws.filter((draw) => (draw[at] as number) > (draw[anchor] as number)).length / draws.length;
  const best = chancesBest(draws, recipes.length);
  const told = new Set(recipes.flatMap(({ whole }) => ids.filter((_, i) => (whole[i] as number) > 0)));
  const whyNew = (at: number): string =>
    whyGlass({
      ids,
      shares: sharesOf(wholeOf(at)),
      anchor: anchor === undefined ? null : sharesOf(wholeOf(anchor)),
      better: better(at),
      again: at < recipes.length,
      told,
    });
  const glass = (at: number, kind: NextGlass["kind"], why: string): NextGlass => ({
    kind,
    parts: partsBy(ids, wholeOf(at)),
    why,
    better: better(at),
  });
  const fresh = chosen.filter((at) => at !== anchor);
  return {
    glasses: [
      ...(anchor === undefined
        ? []
        : [glass(anchor, "anchor", whyAnchor(best[anchor] as number, recipes.length))]),
      ...(target < 0 ? [] : [glass(target, "target", WHY_TARGET)]),
      ...fresh.map((at) => glass(at, at < recipes.length ? "again" : "new", whyNew(at))),
    ],
    posterior: history.tried.map(({ id }) => {
      const at = triedAt(taste, id);
      return { id, mean: mean[at] as number, sd: sd[at] as number, pBest: best[at] as number };
    }),
    favourite: favourite && {
      parts: partsBy(ids, favourite.whole),
      tried: recipes.some(({ whole }) => whole.join() === favourite.whole.join()),
    },
    stop: stopAdvice(
      gain,
      history.rankings.length + (history.marks?.length ?? 0),
      fresh.length,
      scarce.size > 0,
    ),
    ownShare: taste.ownShare,
    scarce: ids.filter((id) => scarce.has(id)),
    counted: taste.counted,
  };
}

function triedAt(taste: Taste, id: string): number {
  const at = taste.recipeOf.get(id);
  if (at === undefined) throw new RangeError(`nextFlight requires what was tried, got ${id}`);
  return at;
}

const partsOf = (whole: readonly number[]): number => whole.reduce((sum, part) => sum + part, 0);

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
