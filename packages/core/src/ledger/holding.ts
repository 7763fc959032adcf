import type { Portion } from "./liquid.ts";

/**
 * How much of one liquid an account holds. What was bought at a known price and what was not are kept apart,
 * so that a mixture of both still knows which share of it is priced. Five conserved quantities: four masses
 * in grams, and a cost in minor currency units that travels with the priced masses.
 */
export type Holding = {
  readonly pricedEthanolG: number;
  readonly pricedWaterG: number;
  readonly cost: number;
  readonly unpricedEthanolG: number;
  readonly unpricedWaterG: number;
};

export const NOTHING: Holding = {
  pricedEthanolG: 0,
  pricedWaterG: 0,
  cost: 0,
  unpricedEthanolG: 0,
  unpricedWaterG: 0,
};

/** The names of the five conserved quantities, in the order they are reported. */
export const QUANTITIES = [
  "pricedEthanolG",
  "pricedWaterG",
  "cost",
  "unpricedEthanolG",
  "unpricedWaterG",
] as const satisfies readonly (keyof Holding)[];

export function holdingOf({ ethanolG, waterG, cost }: Portion): Holding {
  return cost === null
    ? { ...NOTHING, unpricedEthanolG: ethanolG, unpricedWaterG: waterG }
    : { ...NOTHING, pricedEthanolG: ethanolG, pricedWaterG: waterG, cost };
}

/** `a + factor * b`, quantity by quantity. */
export function addScaled(a: Holding, b: Holding, factor: number): Holding {
  return {
    pricedEthanolG: a.pricedEthanolG + factor * b.pricedEthanolG,
    pricedWaterG: a.pricedWaterG + factor * b.pricedWaterG,
    cost: a.cost + factor * b.cost,
    unpricedEthanolG: a.unpricedEthanolG + factor * b.unpricedEthanolG,
    unpricedWaterG: a.unpricedWaterG + factor * b.unpricedWaterG,
  };
}

export const ethanolOf = (h: Holding): number => h.pricedEthanolG + h.unpricedEthanolG;
export const waterOf = (h: Holding): number => h.pricedWaterG + h.unpricedWaterG;
export const unpricedMassOf = (h: Holding): number => h.unpricedEthanolG + h.unpricedWaterG;
