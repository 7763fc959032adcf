import { repeatableRng } from "../statistics/index.ts";
import { drawMixes } from "./any-mix.ts";
import type { Taste } from "./learn-taste.ts";
import { lowestTerms, type Parts, sharesOf } from "./recipe.ts";

export interface WhatIf {
  /** Log worth less that of the recipe it is held against; 0.69 more is two to one in a pair. */
  readonly mean: number;
  readonly sd: number;
  /** Chance that it is better. */
  readonly better: number;
  /** Chance that it is put first of the two at one tasting, chance on the tongue counted in, ties left out. */
  readonly first: number;
}

const DRAWS = 400;

/**
 * What is believed of any mixes, each held against one recipe: the map of mixes, and what would come of a glass of one's own.
 *
 * @param against what they are held against, as a rule the anchor; where left out, the middle of all whiskeys
 * @throws RangeError on parts that are not whole
 * @example whatIf(learnTaste(history), [{ malt: 2, rye: 1 }], { malt: 1 })[0].better
 */
export function whatIf(taste: Taste, mixes: readonly Parts[], against?: Parts): readonly WhatIf[] {
  const { ids, kernel } = taste;
  const middle = Object.fromEntries(ids.map((id) => [id, 1]));
  const wholes = [against ?? middle, ...mixes].map((parts) => lowestTerms(ids, parts));
  const keys = wholes.map((whole) => whole.join());
  const unlike = [...new Set(keys)];
  const draws = drawMixes(
    taste,
    unlike.map((key) => kernel.place(sharesOf(key.split(",").map(Number)))),
    DRAWS,
    repeatableRng(1),
  );
  return keys.slice(1).map((key) => {
    const at = unlike.indexOf(key);
    let [sum, squares, better, first] = [0, 0, 0, 0];
    for (const draw of draws) {
      const by = (draw[at] as number) - (draw[0] as number);
      sum += by;
      squares += by * by;
      better += by > 0 ? 1 : by === 0 ? 0.5 : 0;
      first += 1 / (1 + Math.exp(-by));
    }
    const mean = sum / DRAWS;
    return {
      mean,
      sd: Math.sqrt(Math.max(0, squares / DRAWS - mean ** 2)),
      better: better / DRAWS,
      first: first / DRAWS,
    };
  });
}
