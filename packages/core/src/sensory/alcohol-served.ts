import { ETHANOL_G_PER_ML, UK_UNIT_G, US_STANDARD_DRINK_G } from "./standard-drink.data.ts";

export interface PouredGlass {
  /** Millilitres at 20 °C. */
  readonly volumeMl: number;
  /** Grams of ethanol in it. */
  readonly ethanolG: number;
}

export interface AlcoholServed {
  readonly volumeMl: number;
  readonly grams: number;
  /** US standard drinks, 14 g each. */
  readonly usStandardDrinks: number;
  /** UK units, 8 g each. */
  readonly ukUnits: number;
}

/**
 * How much alcohol a set of glasses holds if all of it is drunk. It says nothing about anybody's blood, and must
 * not be used to decide whether somebody may drive.
 *
 * Accuracy: that of the volumes and ethanol masses given; the sums add no rounding beyond 1 part in 10¹³.
 *
 * @throws RangeError when an amount is negative or not finite, or a glass holds more ethanol than its volume can
 * (0.78924 g/mL at 20 °C, with 1 part in 1000 for rounding)
 * @example alcoholServed([{ volumeMl: 15, ethanolG: 5.5 }, { volumeMl: 15, ethanolG: 5.7 }])
 * // { volumeMl: 30, grams: 11.2, usStandardDrinks: 0.8, ukUnits: 1.4 }
 */
export function alcoholServed(glasses: readonly PouredGlass[]): AlcoholServed {
  for (const [index, { volumeMl, ethanolG }] of glasses.entries()) {
    if (!(volumeMl >= 0 && volumeMl < Infinity)) {
      throw new RangeError(`glass ${index} requires a volume of 0 mL or more, got ${volumeMl} mL`);
    }
    const most = volumeMl * ETHANOL_G_PER_ML;
    if (!(ethanolG >= 0 && ethanolG <= most * 1.001)) {
      throw new RangeError(`glass ${index} requires 0 to ${most.toFixed(2)} g of ethanol, got ${ethanolG} g`);
    }
  }
  const volumeMl = glasses.reduce((sum, glass) => sum + glass.volumeMl, 0);
  const grams = glasses.reduce((sum, glass) => sum + glass.ethanolG, 0);
  return { volumeMl, grams, usStandardDrinks: grams / US_STANDARD_DRINK_G, ukUnits: grams / UK_UNIT_G };
}
