/** Powers of ten from the coarsest step down: of 5, then of 1, 0.5, 0.1 and so on, as far as the rule language reads digits. */
const DIGITS = [0, -1, -2, -3, -4, -5, -6] as const;

/**
 * The roundest number above `out` and up to `kept`, the nearest to `out` of those that are as round: a bound of "at least" that leaves the one
 * out and keeps the other. For "at most" give both with their signs turned.
 *
 * @returns null where no number of at most six decimals lies between
 * @example roundBound(43, 55) // 45
 */
export function roundBound(out: number, kept: number): number | null {
  for (const digits of DIGITS)
    for (const times of [5, 1]) {
      const step = times * 10 ** digits;
      // Whole steps counted, then divided by a whole number where it is a fraction: 0.3 is 3 / 10, not 3 × 0.1.
      const steps = Math.floor(out / step + 1e-9) + 1;
      const bound = digits < 0 ? (steps * times) / 10 ** -digits : steps * step;
      if (bound > out && bound <= kept) return bound === 0 ? 0 : bound;
    }
  return null;
}
