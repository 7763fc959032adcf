import { runningSum } from "../numeric/index.ts";
import type { RunningSum } from "../numeric/index.ts";
import type { Abv20, Grams, MassFraction, Millilitres20, Proof60F } from "../quantity/index.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";

/** One liquid poured into a mixture: its volume at 20 °C and its strength. Water is 0 % vol. */
export type Pour = { readonly volumeMl: Millilitres20; readonly abv20: Abv20 };

/** The sums of one mixing, kept between mixings: a what-if makes hundreds, and nothing else runs while one is being made. */
let reused: Readonly<Record<"volume" | "ethanol" | "water" | "naive", RunningSum>> | undefined;

/** What a mixture comes to, at 20 °C. */
export type Mixture = {
  readonly massG: Grams;
  readonly ethanolG: Grams;
  readonly waterG: Grams;
  readonly volumeMl: Millilitres20;
  /** The sum of the poured volumes, before they shrink into each other. */
  readonly sumMl: Millilitres20;
  /** sumMl - volumeMl. Below 0 for some very weak mixtures, which swell; see SPEC.md. */
  readonly contractionMl: number;
  readonly massFraction: MassFraction;
  readonly abv20: Abv20;
  readonly proof60F: Proof60F;
  /** The average strength weighted by volume, as done in the head; it is a little too low when liquids shrink. */
  readonly naiveAbv20: Abv20;
};

/**
 * Mixes any number of liquids at 20 °C. Masses and ethanol add; volumes do not. The order of the pours does not change
 * one bit of the answer.
 *
 * Accuracy: that of `density`, for ethanol and water only. The mixture is taken to have come back to 20 °C.
 *
 * Domain: volumes 0 or more, 0 to 100 % vol, some liquid. Source: conservation of mass and of ethanol, with OIML R 22
 * densities. Cost: about 0.25 µs a pour.
 *
 * @throws RangeError when nothing is poured, or a volume or strength is outside its domain.
 * @example
 * // two parts at 62.4 % vol and one part at 46 % vol
 * const first = { volumeMl: millilitres20(500), abv20: abv20(62.4) };
 * const second = { volumeMl: millilitres20(250), abv20: abv20(46) };
 * mix([first, second]).abv20; // 56.97…
 */
export function mix(pours: readonly Pour[]): Mixture {
  const sums = (reused ??= {
    volume: runningSum(),
    ethanol: runningSum(),
    water: runningSum(),
    naive: runningSum(),
  });
  for (const sum of [sums.volume, sums.ethanol, sums.water, sums.naive]) sum.clear();
  for (const { volumeMl, abv20 } of pours) {
    const liquid = liquidOfVolume(volumeMl, abv20);
    sums.volume.add(volumeMl);
    sums.ethanol.add(liquid.ethanolG);
    sums.water.add(liquid.waterG);
    sums.naive.add(volumeMl * abv20);
  }
  const sumMl = sums.volume.total() as Millilitres20;
  const whole = describeLiquid({
    ethanolG: sums.ethanol.total() as Grams,
    waterG: sums.water.total() as Grams,
  });
  const { massFraction, abv20, proof60F } = whole;
  if (massFraction === null || abv20 === null || proof60F === null) {
    throw new RangeError(`mix requires some liquid, got ${sumMl} mL`);
  }
  const naive = sums.naive.total() / sumMl;
  return {
    massG: whole.massG,
    ethanolG: whole.ethanolG,
    waterG: whole.waterG,
    volumeMl: whole.volumeMl,
    sumMl,
    contractionMl: sumMl - whole.volumeMl,
    massFraction,
    abv20,
    proof60F,
    naiveAbv20: Math.min(100, naive) as Abv20,
  };
}
