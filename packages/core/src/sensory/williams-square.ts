/** The most glasses in one flight that a serving design is made for. */
export const MAX_GLASSES = 12;

/**
 * Orders of n things balanced for position and for what comes straight before: over all rows every thing stands
 * equally often at every position and follows every other equally often (once for even n, twice for odd n).
 *
 * n rows for even n, 2n for odd n; things are 0 … n − 1. The first row zigzags 0, 1, n−1, 2, n−2, …, the next
 * add 1 modulo n; for odd n the mirror image of those rows follows, so each half is by itself a Latin square.
 *
 * Source: Williams, Aust. J. Sci. Res. A 2 (1949) 149.
 *
 * @param n whole number, 2 to 12
 * @throws RangeError outside that range
 * @example williamsSquare(4) // [[0, 1, 3, 2], [1, 2, 0, 3], [2, 3, 1, 0], [3, 0, 2, 1]]
 */
export function williamsSquare(n: number): number[][] {
  if (!Number.isInteger(n) || n < 2 || n > MAX_GLASSES) {
    throw new RangeError(`williamsSquare requires a whole n from 2 to ${MAX_GLASSES}, got ${n}`);
  }
  const zigzag = Array.from({ length: n }, (_, i) => (i % 2 === 1 ? (i + 1) / 2 : (n - i / 2) % n));
  const square = Array.from({ length: n }, (_, shift) => zigzag.map((thing) => (thing + shift) % n));
  return n % 2 === 0 ? square : [...square, ...square.map((row) => row.toReversed())];
}
