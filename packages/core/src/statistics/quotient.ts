const bits = (x: bigint): number => x.toString(2).length;

/**
 * numerator / denominator as the nearest double, however large the two are (each may be far above 1.8e308).
 *
 * Accuracy: correctly rounded while the result is a normal double (2.3e-308 to 1.8e308); below that it loses
 * digits as doubles do and ends at 0.
 *
 * @param numerator 0 or more
 * @param denominator above 0
 * @throws RangeError outside that domain
 * @example quotient(1n, 8n) // 0.125
 */
export function quotient(numerator: bigint, denominator: bigint): number {
  if (numerator < 0n) throw new RangeError(`quotient requires a numerator >= 0, got ${numerator}`);
  if (denominator <= 0n) throw new RangeError(`quotient requires a denominator > 0, got ${denominator}`);
  if (numerator === 0n) return 0;
  // Scale so that the whole-number quotient has at least 64 bits, then keep a sticky bit for the rest:
  // Number() rounds to nearest, and the sticky bit stops a false tie.
  const shift = 65 + bits(denominator) - bits(numerator);
  const top = shift > 0 ? numerator << BigInt(shift) : numerator;
  const bottom = shift < 0 ? denominator << BigInt(-shift) : denominator;
  const whole = top / bottom;
  const sticky = top % bottom === 0n ? whole : whole | 1n;
  // Two steps, so that 2 ** -shift itself never runs out of exponent.
  const half = Math.trunc(-shift / 2);
  return Number(sticky) * 2 ** half * 2 ** (-shift - half);
}
