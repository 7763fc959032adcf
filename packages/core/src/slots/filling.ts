import { mixParts, waterToStrength } from "../alcoholometry/index.ts";
import { known } from "../blending/index.ts";
import { millilitres20 } from "../quantity/index.ts";
import { axesOf, yearsOff } from "./axes.ts";
import type { Axes } from "./axes.ts";
import { addsOf, type Adds } from "./adds.ts";
import { PERCENT_PER_POINT } from "./fill-problem.ts";
import type { FillProblem } from "./fill-problem.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";

/** How far off one thing is, in points of 10: most where facts are missing, and least; the same where all is known. */
export type Off = {
  /** An attribute's id, "strength" or "age". */
  readonly what: string;
  readonly original: number;
  /** What it comes to, between these; `high` null where it may be any age. */
  readonly low: number;
  readonly high: number | null;
  readonly most: number;
  readonly least: number;
};

export type Filling = {
  /** By slot of the problem measured. */
  readonly ids: readonly string[];
  /**
   * sqrt(sum w off² / sum w) over attributes, strength and age, in points of 10: at most this, whatever the missing facts turn out to be,
   * and at least `least`.
   */
  readonly distance: number;
  readonly least: number;
  readonly off: readonly Off[];
  /** Of the exact mix before water, % vol. */
  readonly abv20: number;
  /** Water for a litre of the mix, to the strength asked for; null where none is, or the mix is weaker already. */
  readonly waterMl: number | null;
  /** Null where an age is not known. */
  readonly youngestYears: number | null;
  /** Of a litre poured; null where a price is not known. */
  readonly pricePerLitre: number | null;
};

/** Measures one filling: by slot the whiskey that stands in it. */
export function measureFilling(
  problem: FillProblem,
  picked: readonly RuledWhiskey[],
  axes: Axes = axesOf(problem),
): Filling {
  const { slots, waterTo } = problem;
  const all = slots.reduce((sum, { parts }) => sum + parts, 0);
  const adds = picked.map((whiskey, s) => addsOf(axes, whiskey, slots[s]!.parts / all));
  const lines = picked.map((whiskey, s) => ({ parts: slots[s]!.parts, abv20: whiskey.abv20 }));
  const strength = mixParts(lines, millilitres20(1000)).abv20;
  const off: Off[] = axes.attributes.map((what, a) => {
    const low = adds.reduce((sum, one) => sum + one.low[a]!, 0);
    const high = adds.reduce((sum, one) => sum + one.high[a]!, 0);
    const original = axes.target[a]!;
    const most = Math.max(original - low, high - original);
    return { what, original, low, high, most, least: Math.max(0, original - high, low - original) };
  });
  const weights = axes.attributes.map((_, a) => axes.weight[a]!);
  if (axes.strength) {
    off.push(strengthOff(axes, strength));
    weights.push(axes.weight[axes.size - 1]! * PERCENT_PER_POINT ** 2);
  }
  if (axes.years !== null) {
    off.push(ageOff(axes.years, adds));
    weights.push(axes.yearsWeight);
  }
  const root = (of: "most" | "least"): number =>
    Math.sqrt(off.reduce((sum, one, n) => sum + weights[n]! * one[of] ** 2, 0) / axes.total);
  const water =
    waterTo === undefined
      ? null
      : waterToStrength({ volumeMl: millilitres20(1000), from: strength, to: waterTo });
  const ages = picked.map(({ ageYears }) => ageYears);
  const prices = picked.map(({ pricePerLitre }) => pricePerLitre);
  return {
    ids: picked.map(({ id }) => id),
    distance: root("most"),
    least: root("least"),
    off,
    abv20: strength,
    waterMl: water?.ok === true ? water.waterMl : null,
    youngestYears: ages.every(known) ? Math.min(...ages) : null,
    pricePerLitre: prices.every(known)
      ? prices.reduce((sum, price, s) => sum + (slots[s]!.parts / all) * price, 0)
      : null,
  };
}

function strengthOff({ target, size, onlyWeak }: Axes, strength: number): Off {
  const original = target[size - 1]!;
  const off =
    (onlyWeak ? Math.max(0, original - strength) : Math.abs(strength - original)) / PERCENT_PER_POINT;
  return { what: "strength", original, low: strength, high: strength, most: off, least: off };
}

function ageOff(wanted: number, adds: readonly Adds[]): Off {
  const low = Math.min(...adds.map((one) => one.youngestLow));
  const high = Math.min(...adds.map((one) => one.youngestHigh));
  const ends = [yearsOff(low, wanted), yearsOff(high, wanted)];
  return {
    what: "age",
    original: wanted,
    low,
    high: Number.isFinite(high) ? high : null,
    most: Math.max(...ends),
    least: low <= wanted && wanted <= high ? 0 : Math.min(...ends),
  };
}
