import type { Fraction } from "../statistics/index.ts";

export type DifferenceTest = "triangle" | "duo_trio" | "two_afc" | "three_afc" | "tetrad" | "two_out_of_five";

const half: Fraction = { numerator: 1n, denominator: 2n };
const third: Fraction = { numerator: 1n, denominator: 3n };
const tenth: Fraction = { numerator: 1n, denominator: 10n };

/**
 * The chance of a right answer when nothing can be told: triangle, ISO 4120; duo-trio, ISO 10399; two_afc (the directional
 * paired comparison), ISO 5495; three_afc, ISO 13301; tetrad (2 and 2, no quality named), ASTM E3009; two_out_of_five, ISO
 * 6658. From counting: 3 glasses, 2, 2, 3, 3 ways to sort four into two pairs, 10 ways to pick two of five.
 */
export const CHANCE_RIGHT: Readonly<Record<DifferenceTest, Fraction>> = {
  triangle: third,
  duo_trio: half,
  two_afc: half,
  three_afc: third,
  tetrad: third,
  two_out_of_five: tenth,
};
