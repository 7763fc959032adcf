import { density, describeLiquid, massFractionOfStrength } from "@partsproof/core/alcoholometry";
import { type Contents as Held, contentsOfPortion, type Holding, WATER } from "@partsproof/core/ledger";
import { celsius, grams, massFraction, printStrength } from "@partsproof/core/quantity";
import type { StatedStrength } from "../../protocol/index.ts";
import { strengthOf } from "./shelf.ts";

/** `factor` times as much of the same liquid. */
export function scaled(held: Held, factor: number): Held {
  return new Map([...held].map(([id, holding]) => [id, sum([[holding, factor]])]));
}

/** Several liquids in one vessel: masses and costs add. */
export function together(parts: readonly Held[]): Held {
  const all = new Map<string, Holding>();
  for (const part of parts) {
    for (const [id, holding] of part) {
      const before = all.get(id);
      all.set(
        id,
        before
          ? sum([
              [before, 1],
              [holding, 1],
            ])
          : holding,
      );
    }
  }
  return all;
}

const sum = (terms: readonly (readonly [Holding, number])[]): Holding => {
  const of = (key: keyof Holding) => terms.reduce((all, [holding, factor]) => all + factor * holding[key], 0);
  return {
    pricedEthanolG: of("pricedEthanolG"),
    pricedWaterG: of("pricedWaterG"),
    cost: of("cost"),
    unpricedEthanolG: of("unpricedEthanolG"),
    unpricedWaterG: of("unpricedWaterG"),
  };
};

/** Tap water, which costs nothing. */
export function waterOf(g: number): Held {
  return g > 0 ? contentsOfPortion(WATER, { ethanolG: 0, waterG: g, cost: 0 }) : new Map();
}

/** mL at 20 °C of so many grams of water. */
export function waterMl(g: number): number {
  return (g / density(massFraction(0), celsius(20))) * 1000;
}

export type Watering =
  | { readonly ok: true; readonly g: number; readonly ml: number }
  | {
      readonly ok: false;
      readonly code: "water_cannot_raise";
      readonly limit: string;
      readonly message: string;
    };

/** Strengths closer than this are one strength, so that rounding asks for no water and refuses none. */
const SAME_MASS_FRACTION = 1e-12;

/** Grams of water that take masses down to a stated strength. Water adds to the mass only, so this sum is exact. */
export function wateringTo(
  { ethanolG, waterG }: { readonly ethanolG: number; readonly waterG: number },
  target: StatedStrength,
): Watering {
  const wanted = massFractionOfStrength(strengthOf(target));
  const now = ethanolG / (ethanolG + waterG);
  if (wanted > now + SAME_MASS_FRACTION) {
    const mix = describeLiquid({ ethanolG: grams(ethanolG), waterG: grams(waterG) });
    const value = (target.basis === "abv20" ? mix.abv20 : mix.proof60F) ?? 0;
    const limit = `at most the mix's ${printStrength(strengthOf({ basis: target.basis, value }), 2)}`;
    const message = `water to a strength requires ${limit}, got ${printStrength(strengthOf(target), 2)}: water cannot raise it`;
    return { ok: false, code: "water_cannot_raise", limit, message };
  }
  const g = Math.max(0, ethanolG / wanted - ethanolG - waterG);
  return { ok: true, g, ml: waterMl(g) };
}
