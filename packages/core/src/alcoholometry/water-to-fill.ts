import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { liquidOfVolume } from "./liquid.ts";
import type { OutOfReach } from "./out-of-reach.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";
import { targetOutOfReach } from "./target-strength.ts";

export type WaterToFill = {
  readonly ok: true;
  readonly liquidMl: Millilitres20;
  readonly waterMl: Millilitres20;
  readonly waterG: Grams;
  readonly finalMl: Millilitres20;
  /** finalMl × (1 - to / from), as done in the head; with it the mixture falls short of the volume. */
  readonly naiveWaterMl: number;
};

/**
 * How much of a liquid of strength `from` and how much water give exactly `finalMl` of strength `to`, all at 20 °C.
 *
 * Accuracy: that of `density`. A "no" names the bound: `target_above_start` or `target_without_alcohol`.
 *
 * Domain: 0 mL or more, 0 to 100 % vol. Source: conservation of mass and of ethanol, with OIML R 22 densities. Cost: below
 * a microsecond.
 *
 * @throws RangeError when a volume or strength is outside its domain.
 * @example
 * waterToFill({ finalMl: millilitres20(700), from: abv20(60), to: abv20(43) });
 * // { ok: true, liquidMl: 501.66…, waterMl: 204.43…, waterG: 204.06…, finalMl: 700, naiveWaterMl: 198.33… }
 */
export function waterToFill(ask: {
  readonly finalMl: Millilitres20;
  readonly from: Abv20;
  readonly to: Abv20;
}): WaterToFill | OutOfReach {
  const { finalMl, from, to } = ask;
  const final = liquidOfVolume(finalMl, to);
  const pFrom = massFractionFromAbv20(from);
  const no = targetOutOfReach(from, to);
  if (no !== null) return no;
  if (from === to) {
    return {
      ok: true,
      liquidMl: finalMl,
      waterMl: 0 as Millilitres20,
      waterG: 0 as Grams,
      finalMl,
      naiveWaterMl: 0,
    };
  }
  const liquidG = final.ethanolG / pFrom;
  const waterG = Math.max(0, final.ethanolG + final.waterG - liquidG);
  return {
    ok: true,
    liquidMl: ((liquidG / densityFormula(pFrom, T20)) * 1000) as Millilitres20,
    waterMl: ((waterG / densityFormula(0, T20)) * 1000) as Millilitres20,
    waterG: waterG as Grams,
    finalMl,
    naiveWaterMl: finalMl * (1 - to / from),
  };
}
