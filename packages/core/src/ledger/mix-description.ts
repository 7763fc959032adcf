import { liquidOfVolume } from "../alcoholometry/index.ts";
import { abv20 as abv20Of, millilitres20 } from "../quantity/index.ts";
import { addContents, type Contents, contentsOfPortion, EMPTY } from "./contents.ts";
import { type Description, describeContents } from "./describe-contents.ts";
import type { Facts } from "./facts.ts";
import { type LiquidId, WATER } from "./liquid.ts";

/** A measure of one liquid: mL and % vol, both at 20 °C; `cost` is that of this measure, null if not known. */
export type Measure = {
  readonly liquidId: LiquidId;
  readonly volumeMl: number;
  readonly abv20: number;
  readonly cost: number | null;
};

/**
 * Describes a mixture that nobody has poured yet, by the same code as a vessel of the ledger.
 * Measures of 0 mL are left out.
 *
 * @throws {RangeError} on a volume or cost below 0, a strength outside 0 to 100, or water with strength.
 * @example
 * mixDescription([{ liquidId: "harbour-rye", volumeMl: 100, abv20: 50, cost: null }], new Map()).abv20; // 50
 */
export function mixDescription(pours: readonly Measure[], facts: Facts): Description {
  return describeContents(contentsOfMeasures(pours), facts);
}

/** The contents that the measures make together. */
export function contentsOfMeasures(pours: readonly Measure[]): Contents {
  let contents = EMPTY;
  for (const { liquidId, volumeMl, abv20, cost } of pours) {
    if (liquidId === WATER && abv20 !== 0)
      throw new RangeError(`strength of water requires 0, got ${abv20} % vol`);
    if (cost !== null && !(cost >= 0 && cost < Infinity))
      throw new RangeError(`cost of ${liquidId} requires a finite number of 0 or more, got ${cost}`);
    const masses = liquidOfVolume(millilitres20(volumeMl), abv20Of(abv20));
    if (volumeMl > 0) contents = addContents(contents, contentsOfPortion(liquidId, { ...masses, cost }));
  }
  return contents;
}
