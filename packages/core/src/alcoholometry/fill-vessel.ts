import { rootByBrent } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import type { DescribedLiquid, Liquid } from "./liquid.ts";
import type { OutOfReach } from "./out-of-reach.ts";

/** Gaps smaller than this share of the capacity are below the rounding noise of the volumes they come from. */
const NEGLIGIBLE = 1e-11;

export type FillVessel = {
  readonly ok: true;
  /** How much of the liquid to add, at 20 °C. */
  readonly addMl: Millilitres20;
  /** What is added, by its masses. */
  readonly added: Liquid;
  /** What the vessel then holds; its volume is the capacity. */
  readonly after: DescribedLiquid;
  /** capacity - volume held: the gap as seen, which contraction makes too little. */
  readonly naiveAddMl: number;
};

/**
 * How much of a liquid of strength `abv20` brings a vessel holding `ethanolG` and `waterG` to exactly `capacityMl` at
 * 20 °C, contraction counted.
 *
 * Accuracy: that of `density`; the volume afterwards is the capacity within 1e-9 of it. A vessel that already holds more
 * than its capacity is a "no": `vessel_over_capacity`.
 *
 * Domain: masses and capacity 0 or more, 0 to 100 % vol. Source: conservation of mass and of ethanol, with OIML R 22
 * densities. Cost: some ten density evaluations, below 5 µs.
 *
 * @throws RangeError when a mass, the capacity or the strength is outside its domain.
 * @example
 * const held = liquidOfVolume(millilitres20(350), abv20(62.4));
 * fillVessel({ ...held, capacityMl: millilitres20(700), abv20: abv20(46) }).addMl; // 350.62…
 */
export function fillVessel(ask: {
  readonly ethanolG: Grams;
  readonly waterG: Grams;
  readonly capacityMl: Millilitres20;
  readonly abv20: Abv20;
}): FillVessel | OutOfReach {
  const { ethanolG, waterG, capacityMl, abv20 } = ask;
  within("capacity", "mL", capacityMl, 0, Infinity);
  const held = describeLiquid({ ethanolG, waterG });
  const one = liquidOfVolume(1 as Millilitres20, abv20);
  const gapMl = capacityMl - held.volumeMl;
  // A vessel filled to the brim by this very sum may come back over by a rounding error.
  const rounding = capacityMl * 1e-9;
  if (gapMl < -rounding) {
    const message = `filling requires a vessel holding at most its ${capacityMl} mL, got ${held.volumeMl} mL`;
    return {
      ok: false,
      issue: { code: "vessel_over_capacity", limit: capacityMl, received: held.volumeMl, message },
    };
  }
  const after = (addMl: number): DescribedLiquid =>
    describeLiquid({
      ethanolG: (ethanolG + addMl * one.ethanolG) as Grams,
      waterG: (waterG + addMl * one.waterG) as Grams,
    });
  const addMl =
    gapMl <= NEGLIGIBLE * capacityMl
      ? Math.max(0, gapMl)
      : rootFrom((x) => after(x).volumeMl - capacityMl, gapMl, capacityMl);
  return {
    ok: true,
    addMl: addMl as Millilitres20,
    added: { ethanolG: (addMl * one.ethanolG) as Grams, waterG: (addMl * one.waterG) as Grams },
    after: after(addMl),
    naiveAddMl: Math.max(0, gapMl),
  };
}

/**
 * A drop of water in pure ethanol adds about 0.8 of its own volume, the least any drop adds to any mixture (at 20 °C, by
 * the formula), so one and a half times the gap is always too much and brackets the answer.
 */
function rootFrom(f: (x: number) => number, gapMl: number, capacityMl: number): number {
  return rootByBrent(f, 0, 1.5 * gapMl, capacityMl * 1e-14);
}
