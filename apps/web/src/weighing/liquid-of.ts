import { type Liquid, liquidOfVolume } from "@partsproof/core/alcoholometry";
import { abv20, grams, millilitres20 } from "@partsproof/core/quantity";
import type { Poured, Pouring } from "./pouring.ts";

/**
 * The parts at these amounts (mL at 20 °C), water left out: what is poured, each bottle at its own strength, and what is still
 * missing at the strength of the part.
 */
export function liquidOf(pouring: Pouring, amounts: readonly number[], poured: readonly Poured[]): Liquid {
  let ethanolG = 0;
  let waterG = 0;
  for (const [part, amount] of amounts.entries()) {
    if (!(amount > 0)) continue;
    const one = liquidOfVolume(millilitres20(amount), abv20(strengthOfPart(pouring, part, poured)));
    ethanolG += one.ethanolG;
    waterG += one.waterG;
  }
  return { ethanolG: grams(ethanolG), waterG: grams(waterG) };
}

/** The strength of what is poured of a part, or of its first bottle: bottles of one whiskey differ a little. */
export function strengthOfPart(pouring: Pouring, part: number, poured: readonly Poured[]): number {
  const of = poured.filter((one) => pouring.sources[one.source]?.part === part && one.ml20 > 0);
  const ml = of.reduce((sum, one) => sum + one.ml20, 0);
  if (ml > 0)
    return of.reduce((sum, one) => sum + (one.ml20 * (pouring.sources[one.source]?.abv20 ?? 0)) / ml, 0);
  return pouring.sources.find((source) => source.part === part)?.abv20 ?? 0;
}
