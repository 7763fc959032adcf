import { describeLiquid } from "../alcoholometry/index.ts";
import { grams } from "../quantity/index.ts";
import { type CaskShares, caskSharesOf } from "./cask-shares.ts";
import { type Component, compositionOf } from "./composition.ts";
import { type Contents, massesOf } from "./contents.ts";
import { type Cost, costOf } from "./cost.ts";
import type { Facts } from "./facts.ts";
import { type GrainShares, grainSharesOf } from "./grain-shares.ts";
import { type YoungestAge, youngestAge } from "./youngest-age.ts";

/** Everything that can be said of a mixture from what went in. Strengths are null when it is empty. */
export type Description = ReturnType<typeof describeLiquid> &
  GrainShares &
  CaskShares & {
    readonly composition: readonly Component[];
    readonly cost: Cost;
    readonly youngestAge: YoungestAge;
  };

/**
 * Describes well-mixed contents: masses in g, volume in mL at 20 °C with contraction counted, strength by
 * volume at 20 °C (%), US proof at 60 °F, and where the alcohol came from. Shares of grain and cask are by
 * mass of pure alcohol contributed (common practice, no source). Accuracy is that of the density formula
 * (OIML R 22); sugar and extract of the cask are taken to be nil.
 *
 * @throws {RangeError} when a grain bill in `facts` is not one.
 */
export function describeContents(contents: Contents, facts: Facts): Description {
  const { ethanolG, waterG } = massesOf(contents);
  const liquid = describeLiquid({ ethanolG: grams(ethanolG), waterG: grams(waterG) });
  const composition = compositionOf(contents);
  return {
    ...liquid,
    composition,
    cost: costOf(contents, liquid.volumeMl),
    youngestAge: youngestAge(composition, facts),
    ...grainSharesOf(composition, facts),
    ...caskSharesOf(composition, facts),
  };
}
