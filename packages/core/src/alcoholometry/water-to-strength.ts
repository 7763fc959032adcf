import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { liquidOfVolume } from "./liquid.ts";
import type { OutOfReach } from "./out-of-reach.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";
import { targetOutOfReach } from "./target-strength.ts";

export type WaterToStrength = {
  readonly ok: true;
  readonly waterMl: Millilitres20;
  readonly waterG: Grams;
  /** Volume after mixing, at 20 °C: below liquid plus water. */
  readonly finalMl: Millilitres20;
  /** volumeMl × (from / to - 1), as done in the head; too little, since the mixture shrinks. */
  readonly naiveWaterMl: number;
};

/**
 * Water that takes `volumeMl` of a liquid from strength `from` down to strength `to`, all at 20 °C.
 *
 * Accuracy: that of `density`. A "no" names the bound: `target_above_start` or `target_without_alcohol`.
 *
 * Domain: 0 mL or more, 0 to 100 % vol. Source: conservation of mass and of ethanol, with OIML R 22 densities. Cost: below
 * a microsecond.
 *
 * @throws RangeError when a volume or strength is outside its domain.
 * @example
 * waterToStrength({ volumeMl: millilitres20(700), from: abv20(60), to: abv20(43) });
 * // { ok: true, waterMl: 285.25…, waterG: 284.74…, finalMl: 976.74…, naiveWaterMl: 276.74… }
 */
export function waterToStrength(ask: {
  readonly volumeMl: Millilitres20;
  readonly from: Abv20;
  readonly to: Abv20;
}): WaterToStrength | OutOfReach {
  const { volumeMl, from, to } = ask;
  const start = liquidOfVolume(volumeMl, from);
  const pTo = massFractionFromAbv20(to);
  const no = targetOutOfReach(from, to);
  if (no !== null) return no;
  if (from === to || volumeMl === 0) {
    return { ok: true, waterMl: 0 as Millilitres20, waterG: 0 as Grams, finalMl: volumeMl, naiveWaterMl: 0 };
  }
  const finalG = start.ethanolG / pTo;
  const waterG = Math.max(0, finalG - start.ethanolG - start.waterG);
  return {
    ok: true,
    waterMl: ((waterG / densityFormula(0, T20)) * 1000) as Millilitres20,
    waterG: waterG as Grams,
    finalMl: ((finalG / densityFormula(pTo, T20)) * 1000) as Millilitres20,
    naiveWaterMl: volumeMl * (from / to - 1),
  };
}
