import { type CountLaw, countLaw } from "./count-law.ts";
import { polynomialProduct } from "./rook-polynomial.ts";

/**
 * The exact law of the sum of independent counts: the total number right over several sheets.
 *
 * Independence is the caller's to know: sheets filled by people who compared answers are not independent.
 *
 * @param laws any number; none gives the law that is surely 0
 * @example poolLaws([law, law]).pAtLeast(2)
 */
export function poolLaws(laws: readonly CountLaw[]): CountLaw {
  return countLaw(laws.map((law) => law.exactly).reduce<readonly bigint[]>(polynomialProduct, [1n]));
}
