import { within } from "../quantity/index.ts";
import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { fillVessel } from "./fill-vessel.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import type { DescribedLiquid, Liquid } from "./liquid.ts";
import type { OutOfReachBut } from "./out-of-reach.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

/** How much of each of the two liquids to add, and what there is then. */
export type MadeUp = {
  readonly ok: true;
  readonly addMl: readonly [Millilitres20, Millilitres20];
  readonly addG: readonly [Grams, Grams];
  readonly after: DescribedLiquid;
};

/** `nearest` reaches the final amount with the strength that comes nearest; null when there is too much already. */
export type NotMadeUp = OutOfReachBut<"strength_not_reachable" | "more_than_final_already", MadeUp | null>;

/** The final amount, by volume at 20 °C or by mass. */
export type FinalAmount = { readonly ml: Millilitres20 } | { readonly g: Grams };

/** An added amount below 0 by less than this share of the whole is rounding. */
const ROUNDING = 1e-12;

/**
 * How much of two liquids (a second whiskey and water, say) brings what a vessel holds to a final amount and a strength, both
 * exactly. An empty vessel is one that holds 0 g: "how much 62 % and how much water make 700 mL of 46 %?"
 *
 * Domain: any amount, strengths 0 to 100 % vol, the two added ones not the same. What the final amount holds of ethanol and
 * water is known, so the two amounts are the closed answer of two linear equations. An amount below 0 is a "no" that names
 * the strengths that can be reached and gives the nearest; so is a vessel that holds more than the final amount already.
 *
 * Accuracy: that of `density`; final amount within 1e-9 of itself, strength within 1e-9 % vol. Cost: a few microseconds.
 *
 * Source: conservation of mass and of ethanol.
 *
 * @throws RangeError when a mass, amount or strength is outside its domain, or the two liquids are of one strength.
 * @example
 * const held = { ethanolG: grams(0), waterG: grams(0) };
 * makeUp({ held, add: [abv20(62.4), abv20(0)], to: abv20(46), final: { ml: millilitres20(700) } }).addMl; // [516.0…, 190.42…]
 */
export function makeUp(ask: {
  readonly held: Liquid;
  readonly add: readonly [Abv20, Abv20];
  readonly to: Abv20;
  readonly final: FinalAmount;
}): MadeUp | NotMadeUp {
  const { held, add, to, final } = ask;
  const pTo = massFractionFromAbv20(to);
  const [p0, p1] = [massFractionFromAbv20(add[0]), massFractionFromAbv20(add[1])];
  if (p0 === p1)
    throw new RangeError(`makeUp requires two liquids of different strength, got ${add[0]} % vol twice`);
  const before = describeLiquid(held);
  const over = moreThanFinal(before, final);
  if (over !== null) return over;
  const finalG = "g" in final ? final.g : (final.ml * densityFormula(pTo, T20)) / 1000;
  const addG = finalG - before.massG;
  const ethanolG = finalG * pTo - before.ethanolG;
  const first = (ethanolG - addG * p1) / (p0 - p1);
  const second = addG - first;
  if (Math.min(first, second) < -ROUNDING * finalG) return notReachable(ask, before);
  return madeUp(before, add, [Math.max(0, first), Math.max(0, second)]);
}

function madeUp(before: Liquid, add: readonly [Abv20, Abv20], addG: readonly [number, number]): MadeUp {
  const p = [massFractionFromAbv20(add[0]), massFractionFromAbv20(add[1])] as const;
  const ml = (n: 0 | 1): Millilitres20 => ((addG[n] / densityFormula(p[n], T20)) * 1000) as Millilitres20;
  return {
    ok: true,
    addMl: [ml(0), ml(1)],
    addG: [addG[0] as Grams, addG[1] as Grams],
    after: describeLiquid({
      ethanolG: (before.ethanolG + addG[0] * p[0] + addG[1] * p[1]) as Grams,
      waterG: (before.waterG + addG[0] * (1 - p[0]) + addG[1] * (1 - p[1])) as Grams,
    }),
  };
}

function moreThanFinal(before: DescribedLiquid, final: FinalAmount): NotMadeUp | null {
  const [limit, received, unit] =
    "g" in final ? [final.g, before.massG, "g"] : [final.ml, before.volumeMl, "mL"];
  within("final amount", unit, limit, 0, Infinity);
  if (received <= limit) return null;
  const message = `making up requires a vessel holding at most the final ${limit} ${unit}, got ${received} ${unit}`;
  return { ok: false, issue: { code: "more_than_final_already", limit, received, message }, nearest: null };
}

/** Only one of the two liquids, up to the final amount: the end of what can be reached on the target's side. */
function notReachable(ask: Parameters<typeof makeUp>[0], before: DescribedLiquid): NotMadeUp {
  const ends = ([0, 1] as const).map((n) => upTo(ask.final, before, ask.add, n));
  const miss = (end: MadeUp): number => Math.abs((end.after.abv20 ?? 0) - ask.to);
  const [one, other] = ends as [MadeUp, MadeUp];
  const nearest = miss(one) <= miss(other) ? one : other;
  const limit = nearest.after.abv20 ?? 0;
  const message = `target strength requires a value from ${Math.min(strengthOf(one), strengthOf(other))} to ${Math.max(strengthOf(one), strengthOf(other))} % vol with these liquids and this final amount, got ${ask.to} % vol`;
  return { ok: false, issue: { code: "strength_not_reachable", limit, received: ask.to, message }, nearest };
}

const strengthOf = (made: MadeUp): number => made.after.abv20 ?? 0;

function upTo(final: FinalAmount, before: DescribedLiquid, add: readonly [Abv20, Abv20], n: 0 | 1): MadeUp {
  const addG = "g" in final ? final.g - before.massG : gramsToFill(before, final.ml, add[n]);
  return madeUp(before, add, n === 0 ? [addG, 0] : [0, addG]);
}

function gramsToFill(before: DescribedLiquid, capacityMl: Millilitres20, abv20: Abv20): number {
  const filled = fillVessel({ ...before, capacityMl, abv20 });
  const added = filled.ok ? filled.added : liquidOfVolume(0 as Millilitres20, abv20);
  return added.ethanolG + added.waterG;
}
