import { liquidOfVolume } from "../alcoholometry/index.ts";
import type { Abv20, Millilitres20 } from "../quantity/index.ts";
import { type AlcoholServed, alcoholServed } from "./alcohol-served.ts";
import { POUR_LESS_G } from "./standard-drink.data.ts";

export interface AlcoholPerTaster extends AlcoholServed {
  /** Above `POUR_LESS_G`: spit, or pour less. */
  readonly pourLess: boolean;
  /** What is in the glasses, what to do about it and why, in plain sentences. */
  readonly said: readonly string[];
}

/** One figure after the point, and never a 0.0 for something. */
const one = (x: number): string => (x > 0 && x < 0.05 ? "less than 0.1" : x.toFixed(1));

/**
 * How much alcohol one taster's glasses hold as poured, water included, and whether to pour less.
 *
 * It counts what is on the table. It works out nothing about anybody's blood and never says that anyone is fit to drive.
 * Accuracy: ethanol by the OIML R 22 densities, far better than any pour.
 *
 * @throws RangeError when a volume or strength is outside its domain
 * @example alcoholPerTaster([{ volumeMl: millilitres20(15), abv20: abv20(60) }]).grams // 7.103…
 */
export function alcoholPerTaster(
  glasses: readonly { readonly volumeMl: Millilitres20; readonly abv20: Abv20 }[],
): AlcoholPerTaster {
  const served = alcoholServed(
    glasses.map(({ volumeMl, abv20 }) => ({ volumeMl, ethanolG: liquidOfVolume(volumeMl, abv20).ethanolG })),
  );
  // A nanogram of rounding is not more than two drinks.
  const pourLess = served.grams > POUR_LESS_G + 1e-9;
  const { grams, usStandardDrinks, ukUnits } = served;
  const said = [
    `${one(grams)} g of alcohol for each taster: ${one(usStandardDrinks)} US standard drinks or ${one(ukUnits)} UK units.`,
    ...(pourLess
      ? [
          `That is more than ${POUR_LESS_G} g, two US standard drinks, the most a day that US guidelines name for a man (one for a woman). Spit, or pour less.`,
        ]
      : []),
    "Drink water between the glasses and take your time. After tasting, do not drive, spat or not.",
  ];
  return { ...served, pourLess, said };
}
