import type { Rng } from "../statistics/index.ts";
import { inLowestTerms } from "./recipe.ts";

/** Up to so many recipes all are looked at; above, so many are drawn. */
const MOST = 3000;
const DRAWN = 500;
/** Where rules leave few, drawing ends after so many. */
const MOST_DRAWN = 20_000;
/** One part away is looked at around the best, as long as they are together no more than this. */
const NEAR = 500;
/** A recipe that is drawn mixes so many whiskeys at most. */
const MOST_MIXED = 4;

type Whole = readonly number[];

/** Number of ways to share out up to `parts` whole parts. */
function ways(q: number, parts: number): number {
  let count = 1;
  for (let i = 1; i <= q; i += 1) count = (count * (parts + i)) / i;
  return count;
}

/**
 * Recipes of some of the whiskeys in whole parts, in lowest terms and each once: all of them where they are few (3 000 with multiples), else every whiskey
 * alone, those one part away from the best of `near`, and some drawn at random of up to four whiskeys.
 *
 * @param near recipes around which to look, best first
 * @param keeps whether a recipe, in lowest terms, keeps the rules
 * @param mixes whether a whiskey may stand in a recipe
 * @throws RangeError without whiskeys or parts
 * @example pourable(["malt", "rye"], 3, [], rng).length // 5: 1:0, 0:1, 1:1, 2:1, 1:2
 */
export function pourable(
  all: readonly string[],
  maxParts: number,
  near: readonly Whole[],
  rng: Rng,
  keeps: (whole: Whole) => boolean = () => true,
  mixes: (id: string) => boolean = () => true,
): number[][] {
  const ids = all.filter(mixes);
  const q = ids.length;
  if (q === 0 && all.length > 0) return [];
  const places = ids.map((id) => all.indexOf(id));
  const spread = (low: Whole): number[] => {
    const whole = all.map(() => 0);
    for (let i = 0; i < q; i += 1) whole[places[i] as number] = low[i] as number;
    return whole;
  };
  if (q === 0 || maxParts < 1)
    throw new RangeError(`pourable requires whiskeys and parts, got ${q}, ${maxParts}`);
  const found = new Map<string, number[]>();
  const take = (whole: Whole): void => {
    const low = inLowestTerms(whole);
    if (low === null || low.reduce((total, part) => total + part, 0) > maxParts) return;
    const there = spread(low);
    if (keeps(there)) found.set(there.join(), there);
  };
  if (ways(q, maxParts) <= MOST) {
    for (const whole of sharedOut(q, maxParts)) take(whole);
  } else {
    for (const i of ids.keys()) take(ids.map((_, j) => Number(i === j)));
    for (const whole of near) {
      if (found.size > NEAR) break;
      const own = whole.filter((_, i) => mixes(all[i] as string));
      // Around what holds something that is not mixed any more there is nothing to look at.
      if (whole.every((part, i) => part === 0 || mixes(all[i] as string)))
        for (const next of onePartAway(own)) take(next);
    }
    const wanted = found.size + DRAWN;
    for (let n = 0; n < MOST_DRAWN && found.size < wanted; n += 1) take(drawn(q, maxParts, rng));
  }
  return [...found].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, whole]) => whole);
}

function sharedOut(q: number, parts: number): number[][] {
  if (q === 0) return [[]];
  return Array.from({ length: parts + 1 }, (_, first) => first).flatMap((first) =>
    sharedOut(q - 1, parts - first).map((rest) => [first, ...rest]),
  );
}

/** One part more, one less, or one moved. */
function onePartAway(whole: Whole): number[][] {
  const moved: number[][] = [];
  for (const i of [...whole.keys(), -1]) {
    for (const j of [...whole.keys(), -1]) {
      if (i === j || (i >= 0 && whole[i] === 0)) continue;
      moved.push(whole.map((part, k) => part - Number(k === i) + Number(k === j)));
    }
  }
  return moved;
}

function drawn(q: number, maxParts: number, rng: Rng): number[] {
  const whole = Array.from({ length: q }, () => 0);
  const mixed = 1 + rng.below(Math.min(MOST_MIXED, q, maxParts));
  const chosen = Array.from({ length: mixed }, () => rng.below(q));
  const parts = mixed + rng.below(maxParts - mixed + 1);
  for (let n = 0; n < parts; n += 1) {
    const at = n < mixed ? chosen[n] : chosen[rng.below(mixed)];
    whole[at ?? 0] = (whole[at ?? 0] as number) + 1;
  }
  return whole;
}
