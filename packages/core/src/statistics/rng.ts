/** A source of chance: `below(n)` is a whole number from 0 to n − 1, each as likely as the others. */
export interface Rng {
  below(n: number): number;
}

const WORDS = 2 ** 32;

/**
 * An unbiased `Rng` from a source of uniform 32-bit words (`crypto.getRandomValues`, or a seeded generator in a
 * test). Words that would favour the small numbers are thrown away and drawn again.
 *
 * @param uint32 gives a whole number from 0 to 2³² − 1
 * @throws RangeError (from `below`) unless n is whole and 1 to 2³²
 * @example rngFromUint32(() => crypto.getRandomValues(new Uint32Array(1))[0]!).below(6)
 */
export function rngFromUint32(uint32: () => number): Rng {
  return {
    below(n) {
      if (!Number.isInteger(n) || n < 1 || n > WORDS) {
        throw new RangeError(`below requires a whole n from 1 to ${WORDS}, got ${n}`);
      }
      const fair = WORDS - (WORDS % n);
      let word = uint32();
      while (word >= fair) word = uint32();
      return word % n;
    },
  };
}
