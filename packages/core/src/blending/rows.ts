import { density, liquidOfVolume, massFractionOfStrength } from "../alcoholometry/index.ts";
import { abv20, celsius, millilitres20 } from "../quantity/index.ts";
import type { MassFraction } from "../quantity/index.ts";

import type { Rule } from "./rule.ts";
import { RULE_TOLERANCE as E } from "./rule.ts";
import type { ShelfWhiskey } from "./whiskey.ts";

/** A condition on a whole recipe: the sum of parts x row is 0 or more. */
export type Row = (whiskey: ShelfWhiskey) => number;

/** The mass fraction at a strength; a bound past either end of the scale is that end. */
const fractionAt = (percent: number): MassFraction =>
  massFractionOfStrength({ basis: "abv20", value: abv20(Math.min(100, Math.max(0, percent))) });

/** Grams of ethanol, and in all, in one part of 1 mL. */
export function massesOfPart(whiskey: ShelfWhiskey): { readonly ethanol: number; readonly all: number } {
  const { ethanolG, waterG } = liquidOfVolume(millilitres20(1), whiskey.abv20);
  return { ethanol: ethanolG, all: ethanolG + waterG };
}

/**
 * Strength by volume of a mix is not linear in its parts, but it rises with the mass fraction, and masses add: a bound on the one
 * is a bound on the other, and exactly linear.
 */
const atLeastStrength = (percent: number): Row => {
  const p = fractionAt(percent - E);
  return (whiskey) => massesOfPart(whiskey).ethanol - p * massesOfPart(whiskey).all;
};
const atMostStrength = (percent: number): Row => {
  const p = fractionAt(percent + E);
  return (whiskey) => p * massesOfPart(whiskey).all - massesOfPart(whiskey).ethanol;
};

const never: Row = () => -1;

const strengthRows = (rule: Rule & { readonly kind: "strength" }): readonly Row[] => {
  const { low, high, waterTo } = rule;
  if (waterTo === undefined) return [atLeastStrength(low), atMostStrength(high)];
  const within = low - E <= waterTo && waterTo <= high + E;
  return within ? [atLeastStrength(waterTo)] : [never];
};

const grainRows = (rule: Rule & { readonly kind: "grainShare" }): readonly Row[] => {
  const stated = (whiskey: ShelfWhiskey): number => whiskey.grains?.[rule.grain] ?? 0;
  const sum = (whiskey: ShelfWhiskey): number =>
    Object.values(whiskey.grains ?? {}).reduce((all, share) => all + share, 0);
  const atWorst = (whiskey: ShelfWhiskey): number => stated(whiskey) + Math.max(0, 1 - sum(whiskey));
  return [
    (whiskey) => massesOfPart(whiskey).ethanol * (stated(whiskey) - rule.low + E),
    (whiskey) => massesOfPart(whiskey).ethanol * (rule.high + E - atWorst(whiskey)),
  ];
};

/** Millilitres of finished bottle that one millilitre poured comes to after water, by the ethanol in it. */
const litresAfterWater = (whiskey: ShelfWhiskey, percent: number): number => {
  const p = fractionAt(percent);
  return massesOfPart(whiskey).ethanol / p / (density(p, celsius(20)) / 1000);
};

const bottlePriceRows = (rule: Rule & { readonly kind: "maxPricePerBottle" }): readonly Row[] => {
  const perLitre = (1000 * rule.price + E) / rule.bottleMl;
  const { waterTo } = rule;
  if (waterTo === undefined) return [(whiskey) => perLitre - (whiskey.pricePerLitre ?? Infinity)];
  return [
    (whiskey) => perLitre * litresAfterWater(whiskey, waterTo) - (whiskey.pricePerLitre ?? Infinity),
    atLeastStrength(waterTo),
  ];
};

/** A rule as rows; none for a rule that is not about sums over a recipe. */
export function rowsOf(rule: Rule): readonly Row[] {
  switch (rule.kind) {
    case "strength":
      return strengthRows(rule);
    case "grainShare":
      return grainRows(rule);
    case "tagShare": {
      const has = (whiskey: ShelfWhiskey): number => ((whiskey.tags ?? []).includes(rule.tag) ? 1 : 0);
      return [(whiskey) => has(whiskey) - rule.low + E, (whiskey) => rule.high + E - has(whiskey)];
    }
    case "maxPricePerLitre":
      return [(whiskey) => rule.price + E - (whiskey.pricePerLitre ?? Infinity)];
    case "maxPricePerBottle":
      return bottlePriceRows(rule);
    default:
      return [];
  }
}
