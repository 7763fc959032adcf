import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { liquidOfVolume } from "./liquid.ts";
import type { OutOfReach } from "./out-of-reach.ts";

/** What a level and a strength say of a vessel, at 20 °C. */
export type LevelAndStrength = { readonly volumeMl: Millilitres20; readonly abv20: Abv20 };

/** What has gone. Less than 0 of water means that water came in. */
export type Evaporated = {
  readonly ok: true;
  readonly ethanolG: Grams;
  readonly waterG: number;
  readonly massG: number;
  /** By how much the level fell, mL at 20 °C. */
  readonly volumeMl: number;
  /** Of what there was, 0 to 1. */
  readonly ethanolShare: number;
  /** Mass fraction of ethanol in what has gone; null when nothing has, or water came in. */
  readonly massFractionGone: number | null;
};

/**
 * How much ethanol and how much water left a vessel, from its level and strength before and after.
 *
 * Through wood or a loose cork both leave at their own rate: a dry room takes more water and the rest grows stronger, a damp
 * one takes more ethanol, and a very damp one gives water (then `waterG` is below 0). More ethanol than before is a "no": something
 * was poured in, or a reading is wrong.
 *
 * Domain: volumes 0 mL or more at 20 °C, 0 to 100 % vol. Accuracy: a small difference of large numbers, so the readings'
 * errors grow: 0.3 % vol in 700 mL is 1.7 g of ethanol. See `propagate` in the room uncertainty.
 *
 * Source: conservation of mass and of ethanol, with OIML R 22 densities. Cost: a third of a microsecond.
 *
 * @throws RangeError when a volume or strength is outside its domain.
 * @example
 * const before = { volumeMl: millilitres20(700), abv20: abv20(62.4) };
 * evaporated(before, { volumeMl: millilitres20(650), abv20: abv20(61) }).ethanolG; // 31.8…
 */
export function evaporated(
  before: LevelAndStrength,
  after: LevelAndStrength,
): Evaporated | OutOfReach<"more_ethanol_than_before"> {
  const was = liquidOfVolume(before.volumeMl, before.abv20);
  const is = liquidOfVolume(after.volumeMl, after.abv20);
  const ethanolG = was.ethanolG - is.ethanolG;
  const waterG = was.waterG - is.waterG;
  if (ethanolG < 0) {
    const message = `ethanol left requires at most the ${was.ethanolG} g that were there, got ${is.ethanolG} g`;
    return {
      ok: false,
      issue: { code: "more_ethanol_than_before", limit: was.ethanolG, received: is.ethanolG, message },
    };
  }
  const massG = ethanolG + waterG;
  return {
    ok: true,
    ethanolG: ethanolG as Grams,
    waterG,
    massG,
    volumeMl: before.volumeMl - after.volumeMl,
    ethanolShare: was.ethanolG === 0 ? 0 : ethanolG / was.ethanolG,
    massFractionGone: waterG < 0 || massG === 0 ? null : ethanolG / massG,
  };
}
