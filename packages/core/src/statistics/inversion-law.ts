import { type CountLaw, countLaw } from "./count-law.ts";
import type { Fraction } from "./fraction.ts";
import { polynomialProduct } from "./rook-polynomial.ts";

/**
 * The exact law of how many of the n(n−1)/2 pairs two orders of the same n things put the other way round (Kendall's
 * count of discordant pairs, no ties).
 *
 * `again` is the chance that two things which stand side by side in the first order keep that order in the second: 1/2
 * makes every order equally likely (luck), more is Mallows' model, P(order) proportional to ((1−again)/again)^discordant.
 *
 * Sources: the generating function Π (1 + q + … + q^(i−1)) of the Mahonian numbers (OEIS A008302); Mallows, Biometrika 44
 * (1957) 114. Accuracy: exact whole-number weights. Domain: n 1 to 12, again from 1/2 to below 1.
 *
 * @throws RangeError outside that domain
 * @example inversionLaw(3).exactly // [1n, 2n, 2n, 1n]
 */
export function inversionLaw(n: number, again: Fraction = { numerator: 1n, denominator: 2n }): CountLaw {
  if (!Number.isInteger(n) || n < 1 || n > 12) {
    throw new RangeError(`inversionLaw requires a whole n from 1 to 12, got ${n}`);
  }
  const kept = again.numerator;
  const turned = again.denominator - again.numerator;
  if (turned <= 0n || kept < turned) {
    throw new RangeError(
      `inversionLaw requires a chance from 1/2 to below 1, got ${kept}/${again.denominator}`,
    );
  }
  // One factor a thing: to insert thing i at distance d from the end turns d pairs round.
  const factors = Array.from({ length: n }, (_, i) =>
    Array.from({ length: i + 1 }, (_, d) => turned ** BigInt(d) * kept ** BigInt(i - d)),
  );
  return countLaw(factors.reduce<readonly bigint[]>(polynomialProduct, [1n]));
}
