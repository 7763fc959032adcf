import type { Abv20, Grams, Millilitres20 } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { describeLiquid } from "./liquid.ts";
import type { DescribedLiquid, Liquid } from "./liquid.ts";
import type { OutOfReachBut } from "./out-of-reach.ts";
import { T20 } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

export type AdjustedStrength = {
  readonly ok: true;
  /** How much to add, at 20 °C. */
  readonly addMl: Millilitres20;
  readonly addG: Grams;
  readonly added: Liquid;
  readonly after: DescribedLiquid;
};

/** `nearest` is the nearest strength to be had: the start's, or the added liquid's, which an endless amount comes close to. */
export type NotBetween = OutOfReachBut<"target_not_between" | "nothing_to_adjust", { readonly abv20: Abv20 }>;

/** Closer to the target than this, % vol, the start is there already: masses carry that much rounding. */
const NEGLIGIBLE = 1e-9;
/** Closer to the added liquid than this, % vol, only an endless amount of it comes: more than 10¹³ times the start. */
const ENDLESS = 1e-12;
const isEndless = (to: Abv20, add: Abv20): boolean => Math.abs(to - add) < ENDLESS;

/**
 * How much of one liquid takes another to a strength between the two: water or a weaker one reduces, a stronger one fortifies.
 * "How much of the second bottle lifts this one to 58 %?" Ethanol and mass add, so the answer is closed: with p for mass
 * fractions, add = mass (p - p_to) / (p_to - p_added).
 *
 * Domain: any amount, strengths 0 to 100 % vol. A target not between the two strengths is a "no" that names the bound and the
 * nearest strength; so is a target within 1e-12 % vol of the added liquid's. Several liquids: mix them first, a mixture is a liquid.
 *
 * Accuracy: that of `density`; the mixture's strength is the target within 1e-9 % vol. Cost: three inversions, a microsecond.
 *
 * Source: conservation of mass and of ethanol.
 *
 * @throws RangeError when a mass or strength is outside its domain.
 * @example
 * const bottle = liquidOfVolume(millilitres20(350), abv20(46));
 * adjustStrength({ start: bottle, to: abv20(58), add: abv20(62.4) }).addMl; // 942.87…
 */
export function adjustStrength(ask: {
  readonly start: Liquid;
  readonly to: Abv20;
  readonly add: Abv20;
}): AdjustedStrength | NotBetween {
  const { start, to, add } = ask;
  const before = describeLiquid(start);
  const pTo = massFractionFromAbv20(to);
  const pAdd = massFractionFromAbv20(add);
  if (before.massFraction === null || before.abv20 === null) return nothing(to);
  const there = Math.abs(to - before.abv20) < NEGLIGIBLE;
  const addG = there ? 0 : (before.massG * (before.massFraction - pTo)) / (pTo - pAdd);
  if ((!there && isEndless(to, add)) || !(addG >= 0 && addG < Infinity))
    return notBetween(before.abv20, to, add);
  const added = { ethanolG: (addG * pAdd) as Grams, waterG: (addG * (1 - pAdd)) as Grams };
  return {
    ok: true,
    addMl: ((addG / densityFormula(pAdd, T20)) * 1000) as Millilitres20,
    addG: addG as Grams,
    added,
    after: describeLiquid({
      ethanolG: (before.ethanolG + added.ethanolG) as Grams,
      waterG: (before.waterG + added.waterG) as Grams,
    }),
  };
}

function notBetween(from: Abv20, to: Abv20, add: Abv20): NotBetween {
  const nearest = Math.abs(to - from) < Math.abs(to - add) ? from : add;
  const endless = to !== add && isEndless(to, add) ? `, ${ENDLESS} or more from that` : "";
  const message = `target strength requires a value between the start's ${from} % vol and the added ${add} % vol${endless}, got ${to} % vol`;
  const issue = { code: "target_not_between", limit: nearest, received: to, message } as const;
  return { ok: false, issue, nearest: { abv20: nearest } };
}

function nothing(to: Abv20): NotBetween {
  const message = "adjusting the strength requires some liquid, got 0 g";
  const issue = { code: "nothing_to_adjust", limit: 0, received: 0, message } as const;
  return { ok: false, issue, nearest: { abv20: to } };
}
