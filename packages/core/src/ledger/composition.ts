import { type Contents, massesOf } from "./contents.ts";
import { ethanolOf, waterOf } from "./holding.ts";
import type { LiquidId } from "./liquid.ts";

export type Component = {
  readonly liquidId: LiquidId;
  readonly ethanolG: number;
  readonly waterG: number;
  /** Share of all the pure alcohol, by mass, that this liquid brought; 0 when there is no alcohol. */
  readonly shareOfAlcohol: number;
  /** Share of the total mass. */
  readonly shareOfMass: number;
};

/** The liquids of a mixture, the largest share of alcohol first, then of mass, then by id. */
export function compositionOf(contents: Contents): Component[] {
  const { ethanolG: allEthanol, waterG: allWater } = massesOf(contents);
  return [...contents]
    .map(([liquidId, holding]) => {
      const ethanolG = ethanolOf(holding);
      const waterG = waterOf(holding);
      return {
        liquidId,
        ethanolG,
        waterG,
        shareOfAlcohol: share(ethanolG, allEthanol),
        shareOfMass: share(ethanolG + waterG, allEthanol + allWater),
      };
    })
    .toSorted(
      (a, b) =>
        b.shareOfAlcohol - a.shareOfAlcohol ||
        b.shareOfMass - a.shareOfMass ||
        (a.liquidId < b.liquidId ? -1 : 1),
    );
}

const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);
