import { type Contents, massesOf } from "./contents.ts";

export type Cost = {
  /** Cost of the priced share, in minor units of the household's currency, not rounded. */
  readonly known: number;
  /** Share of the mass that carries no price; 0 when all of it does. */
  readonly unpricedShareOfMass: number;
  /** Cost of a litre at 20 °C; null when empty or when any of it carries no price. */
  readonly perLitre: number | null;
};

export function costOf(contents: Contents, volumeMl: number): Cost {
  const { ethanolG, waterG, unpricedG } = massesOf(contents);
  const known = [...contents.values()].reduce((sum, { cost }) => sum + cost, 0);
  return {
    known,
    unpricedShareOfMass: unpricedG > 0 ? unpricedG / (ethanolG + waterG) : 0,
    perLitre: unpricedG > 0 || !(volumeMl > 0) ? null : (known / volumeMl) * 1000,
  };
}
