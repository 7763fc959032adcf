/** An exact non-negative fraction in lowest terms, the denominator above 0. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/**
 * A fraction in lowest terms.
 *
 * @throws RangeError when the numerator is negative or the denominator is not above 0
 * @example reduced(6n, 24n) // { numerator: 1n, denominator: 4n }
 */
export function reduced(numerator: bigint, denominator: bigint): Fraction {
  if (numerator < 0n) throw new RangeError(`reduced requires a numerator >= 0, got ${numerator}`);
  if (denominator <= 0n) throw new RangeError(`reduced requires a denominator > 0, got ${denominator}`);
  let [a, b] = [numerator, denominator];
  while (b > 0n) [a, b] = [b, a % b];
  return { numerator: numerator / a, denominator: denominator / a };
}
