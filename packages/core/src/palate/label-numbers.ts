import type { LabelFacts } from "./label.ts";
import {
  EFFECT_SD,
  EFFECTS,
  MASH_OF_KIND,
  NEW_OAK_KINDS,
  USUAL,
  USUAL_ELSE,
  WINES,
} from "./label-prior.data.ts";
import { BELIEVED } from "./prior.data.ts";

const FACTS = Object.keys(EFFECTS);
/** How many numbers stand for a label: 1, and one a fact. */
export const LABEL_SIZE = FACTS.length + 1;

/**
 * A label as numbers: 1, then each fact in the order of `EFFECTS`, 0 where the label does not say.
 *
 * Age: ln(years / 10). Strength: per 10 % above 46. Casks: shares of them that are new wood, held wine, are European oak. Mash: shares.
 *
 * @example labelNumbers({ ageYears: 20, abv: 56, kind: "malt", grains: null, casks: null }) // [1, 0.69, 1, 0, 0, 0, 0, 0, 0]
 */
export function labelNumbers({ ageYears, abv, kind, grains, casks }: LabelFacts): Float64Array {
  const held = casks ?? [];
  const share = (is: (cask: (typeof held)[number]) => boolean): number =>
    held.length === 0 ? 0 : held.filter(is).length / held.length;
  const newOak = held.length === 0 && NEW_OAK_KINDS.has(kind) ? 1 : share((cask) => cask.held === "nothing");
  const sum = Object.values(grains ?? {}).reduce((all, part) => all + part, 0);
  const mash = (grain: string): number => {
    if (grains === null || sum <= 0) return MASH_OF_KIND[kind]?.[grain] ?? 0;
    const parts = Object.entries(grains).filter(([name]) => name.toLowerCase().includes(grain));
    return parts.reduce((all, [, part]) => all + part, 0) / sum;
  };
  const facts: Readonly<Record<string, number>> = {
    // Younger than a year says no more than a year does.
    age: ageYears === null ? 0 : Math.log(Math.max(1, ageYears) / 10),
    strength: (abv - 46) / 10,
    newOak,
    wineCask: share((cask) => WINES.test(cask.held)),
    europeanOak: share(({ species }) => species === "European oak"),
    rye: mash("rye"),
    wheat: mash("wheat"),
    corn: mash("corn"),
  };
  return Float64Array.of(1, ...FACTS.map((fact) => facts[fact] ?? 0));
}

/** Means of the usual level and of each effect, before any note. */
export const effectMeans = (attribute: string): Float64Array =>
  Float64Array.of(USUAL[attribute] ?? USUAL_ELSE, ...FACTS.map((fact) => EFFECTS[fact]?.[attribute] ?? 0));

/** How far each may be off, squared. */
export const EFFECT_VARIANCES = Float64Array.of(
  BELIEVED.usualSd ** 2,
  ...FACTS.map((fact) => (EFFECT_SD[fact] ?? 0) ** 2),
);
