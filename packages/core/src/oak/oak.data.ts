/**
 * What is taken of oak, each with where it is from. "From memory" and "taken" mean that no document was read for it.
 */

/** A range that is known, and how. */
export interface Known {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly how: string;
}

/**
 * Contact area of a 200 L cask, cm² of wood a litre. Geometry: a sphere of 200 L has 82.7, the best closed cylinder 94.7; a cask lies
 * between and its staves are not smooth. The half width of 5 is compiled for this project.
 */
export const CASK: Known & { readonly litres: number } = {
  litres: 200,
  low: 87,
  likely: 92,
  high: 97,
  how: "200 L cask, 92 ± 5 cm²/L: by geometry, between a sphere (82.7) and the best closed cylinder (94.7)",
};

/** Seasoned American and European oak, g/cm³. */
export const OAK_DENSITY: Known = {
  low: 0.6,
  likely: 0.68,
  high: 0.77,
  how: "density of seasoned oak, g/cm³: from memory, toasting not counted; weigh the piece to know",
};

/** Millilitres of spirit a gram of dry oak holds once it is soaked. Void volume: (1 − 0.68 / 1.5) / 0.68 = 0.80 mL/g. */
export const SOAKED_ML_PER_G: Known = {
  low: 0.5,
  likely: 0.75,
  high: 1,
  how: "soaked through: calculated from the voids of oak (0.80 mL/g), rounded to a range; no measured value was read",
};

/** The same in the first days, before the middle of the wood is wet. */
export const SOAKED_FIRST_DAYS_ML_PER_G: Known = {
  low: 0.2,
  likely: 0.35,
  high: 0.5,
  how: "in the first days: taken, no source",
};

/** Share of the dry mass that 40 to 60 % vol can take out of oak at most: Q. alba 5.3 to 5.4 %, Q. robur 3.8 to 6.1 % extractives. */
export const EXTRACT_AT_MOST: Known = {
  low: 0.02,
  likely: 0.04,
  high: 0.06,
  how: "extractives of oak, 2 to 6 % of its dry mass as the most that spirit removes: compiled, toasting not counted",
};
