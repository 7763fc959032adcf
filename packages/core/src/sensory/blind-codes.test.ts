import fc from "fast-check";
import { expect, test } from "vitest";
import { type Rng, rngFromUint32 } from "../statistics/index.ts";
import { BLIND_CODES, drawCodes } from "./index.ts";

const rngOf = (words: readonly number[]): Rng => {
  let i = 0;
  return rngFromUint32(() => words[i++ % words.length] ?? 0);
};
const rngs = fc.array(fc.nat(2 ** 31), { minLength: 30, maxLength: 30 }).map(rngOf);

test("B1 codes are three digits, different, not avoided and give no hint", () => {
  fc.assert(
    fc.property(rngs, fc.nat(30), fc.uniqueArray(fc.constantFrom(...BLIND_CODES)), (rng, count, avoided) => {
      const codes = drawCodes(count, rng, new Set(avoided));
      expect(new Set(codes).size).toBe(count);
      for (const code of codes) {
        expect(code).toMatch(/^[1-9]\d\d$/);
        expect(avoided).not.toContain(code);
      }
    }),
  );
});

test("B1 867 codes: 900 less 9 of equal digits, 15 runs and 9 whole hundreds", () => {
  expect(BLIND_CODES.length).toBe(900 - 9 - 15 - 9);
  for (const hint of ["111", "777", "123", "321", "210", "789", "100", "500"]) {
    expect(BLIND_CODES).not.toContain(hint);
  }
  for (const fine of ["101", "120", "121", "135", "998"]) expect(BLIND_CODES).toContain(fine);
});

test("B1 all codes can be drawn, one more throws, and so do halves and negative counts", () => {
  const rng = rngOf([7, 99, 12345]);
  expect(drawCodes(867, rng).toSorted()).toEqual(BLIND_CODES);
  expect(() => drawCodes(868, rng)).toThrow("drawCodes requires a whole count from 0 to 867 codes, got 868");
  expect(() => drawCodes(1, rng, new Set(BLIND_CODES))).toThrow("from 0 to 0 codes, got 1");
  expect(() => drawCodes(-1, rng)).toThrow(RangeError);
  expect(() => drawCodes(1.5, rng)).toThrow(RangeError);
});

test("B2 the first draw picks each of the 867 codes for one value of the rng each", () => {
  const first = BLIND_CODES.map((_, i) => {
    const draws = [i];
    return drawCodes(1, { below: () => draws.shift() ?? 0 })[0];
  });
  expect(new Set(first).size).toBe(867);
});
