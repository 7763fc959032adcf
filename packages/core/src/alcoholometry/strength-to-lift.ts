import { rootByBrent } from "../numeric/index.ts";
import { within } from "../quantity/index.ts";
import type { Abv20, MassFraction, Millilitres20 } from "../quantity/index.ts";
import { densityFormula } from "./density-formula.ts";
import { describeLiquid } from "./liquid.ts";
import type { Liquid } from "./liquid.ts";
import type { OutOfReachBut } from "./out-of-reach.ts";
import { T20 } from "./reference-temperatures.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";

export type StrengthToLift = { readonly ok: true; readonly abv20: Abv20 };

/** `nearest` is the strength that the whole comes to with pure ethanol, or with water. */
export type NotLifted = OutOfReachBut<"amount_too_small", { readonly abv20: Abv20 }>;

/** Ethanol missing or over by less than this share of the whole is rounding. */
const ROUNDING = 1e-12;

/**
 * How strong a second liquid must be so that `addMl` of it takes the first to a strength: "I have 200 mL of room; what would I
 * need to buy?" Above what pure ethanol does, or below what water does, is a "no" with the strength those come to.
 *
 * Domain: added volume above 0 at 20 °C, target 0 to 100 % vol. Accuracy: that of `density`; `mix` of the two is the target within
 * 1e-9 % vol. Method: the ethanol brought over what the target needs rises with the added strength, so Brent brackets it.
 *
 * Source: conservation of mass and of ethanol, with OIML R 22 densities. Cost: some ten densities, below 5 µs.
 *
 * @throws RangeError when a mass, volume or strength is outside its domain.
 * @example
 * const start = liquidOfVolume(millilitres20(500), abv20(46));
 * strengthToLift({ start, addMl: millilitres20(200), to: abv20(50) }).abv20; // 59.90…
 */
export function strengthToLift(ask: {
  readonly start: Liquid;
  readonly addMl: Millilitres20;
  readonly to: Abv20;
}): StrengthToLift | NotLifted {
  const { start, addMl, to } = ask;
  within("added volume", "mL", addMl, Number.MIN_VALUE, Infinity);
  const pTo = massFractionFromAbv20(to);
  const { ethanolG, massG } = describeLiquid(start);
  /** Ethanol over what the target strength needs, when the addition has mass fraction p. */
  const surplus = (p: number): number => {
    const addG = (addMl * densityFormula(p, T20)) / 1000;
    return ethanolG + addG * p - pTo * (massG + addG);
  };
  const rounding = ROUNDING * (massG + addMl);
  if (surplus(0) > rounding) return notLifted(ask, 0);
  if (surplus(1) < -rounding) return notLifted(ask, 1);
  if (surplus(0) >= 0) return { ok: true, abv20: 0 as Abv20 };
  if (surplus(1) <= 0) return { ok: true, abv20: 100 as Abv20 };
  return { ok: true, abv20: abv20FromMassFraction(rootByBrent(surplus, 0, 1) as MassFraction) };
}

function notLifted({ start, addMl, to }: Parameters<typeof strengthToLift>[0], p: 0 | 1): NotLifted {
  const addG = (addMl * densityFormula(p, T20)) / 1000;
  const whole = (start.ethanolG + addG * p) / (start.ethanolG + start.waterG + addG);
  const nearest = abv20FromMassFraction(whole as MassFraction);
  const bound = p === 0 ? "at least" : "at most";
  const message = `target strength requires ${bound} the ${nearest} % vol that ${addMl} mL of ${p === 0 ? "water" : "ethanol"} makes, got ${to} % vol`;
  const issue = { code: "amount_too_small", limit: nearest, received: to, message } as const;
  return { ok: false, issue, nearest: { abv20: nearest } };
}
