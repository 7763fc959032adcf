import { type Rng, rngFromUint32 } from "./rng.ts";

/**
 * A source of chance that gives the same numbers for the same start: for simulations that must come out the same again. Never for
 * drawing codes or keys, which must not be guessed.
 *
 * The generator sfc32 (Doty-Humphrey, PractRand; public domain, from memory): 128 bits of state, period 2^32 or more from any start.
 *
 * @param start a whole number from 0 to 2³² − 1
 * @throws RangeError outside that range
 * @example repeatableRng(6).below(6)
 */
export function repeatableRng(start: number): Rng {
  if (!Number.isInteger(start) || start < 0 || start >= 2 ** 32) {
    throw new RangeError(`repeatableRng requires a whole start from 0 to ${2 ** 32 - 1}, got ${start}`);
  }
  let [a, b, c, counter] = [start | 0, 0x9e3779b9 | 0, 0x243f6a88, 1];
  const next = (): number => {
    const out = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + out;
    return out >>> 0;
  };
  for (let i = 0; i < 20; i += 1) next();
  return rngFromUint32(next);
}
