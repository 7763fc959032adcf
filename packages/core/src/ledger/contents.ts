import {
  addScaled,
  ethanolOf,
  type Holding,
  holdingOf,
  NOTHING,
  unpricedMassOf,
  waterOf,
} from "./holding.ts";
import type { LiquidId, Portion } from "./liquid.ts";

/** What an account holds, liquid by liquid. A vessel is taken to be well mixed. */
export type Contents = ReadonlyMap<LiquidId, Holding>;

export const EMPTY: Contents = new Map();

export function contentsOfPortion(liquidId: LiquidId, portion: Portion): Contents {
  return new Map([[liquidId, holdingOf(portion)]]);
}

/** `contents + sign * change`, liquid by liquid; `contents` itself is not touched. */
export function addContents(contents: Contents, change: Contents, sign: 1 | -1 = 1): Contents {
  const sum = new Map(contents);
  for (const [id, holding] of change) sum.set(id, addScaled(sum.get(id) ?? NOTHING, holding, sign));
  return sum;
}

/** Splits well-mixed contents: `taken` is `fraction` of every liquid, `rest` is what stays. */
export function splitContents(contents: Contents, fraction: number): { taken: Contents; rest: Contents } {
  if (fraction === 1) return { taken: contents, rest: EMPTY };
  const taken = new Map<LiquidId, Holding>();
  for (const [id, holding] of contents) taken.set(id, addScaled(NOTHING, holding, fraction));
  return { taken, rest: addContents(contents, taken, -1) };
}

/** Total grams of ethanol and of water, and how many of those grams carry no price. */
export function massesOf(contents: Contents): { ethanolG: number; waterG: number; unpricedG: number } {
  let ethanolG = 0;
  let waterG = 0;
  let unpricedG = 0;
  for (const holding of contents.values()) {
    ethanolG += ethanolOf(holding);
    waterG += waterOf(holding);
    unpricedG += unpricedMassOf(holding);
  }
  return { ethanolG, waterG, unpricedG };
}
