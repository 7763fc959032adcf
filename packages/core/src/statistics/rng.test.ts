import fc from "fast-check";
import { expect, test } from "vitest";
import { type Rng, rngFromUint32, shuffled } from "./index.ts";

test("D1 words past the last whole multiple of n are drawn again", () => {
  // 2^32 = 3·1431655765 + 1: only the very last word is unfair for n = 3.
  const words = [2 ** 32 - 1, 2 ** 32 - 1, 5];
  expect(rngFromUint32(() => words.shift() ?? 0).below(3)).toBe(2);
  expect(words).toEqual([]);
});

test("D1 every remainder has equally many words that lead to it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2 ** 32 }), (n) => {
      const fair = 2 ** 32 - (2 ** 32 % n);
      const last = fair - 1;
      expect(rngFromUint32(() => last).below(n)).toBe(n - 1);
      if (fair === 2 ** 32) return;
      const words = [fair, 0];
      expect(rngFromUint32(() => words.shift() ?? 1).below(n)).toBe(0);
      expect(words).toEqual([]);
    }),
  );
});

test("D1 n outside 1 to 2^32 throws", () => {
  const rng = rngFromUint32(() => 0);
  for (const n of [0, -1, 1.5, 2 ** 32 + 1, Number.NaN]) expect(() => rng.below(n)).toThrow(RangeError);
});

test("D1 shuffled gives every order exactly once over all draws", () => {
  const seen = new Map<string, number>();
  for (let a = 0; a < 4; a += 1) {
    for (let b = 0; b < 3; b += 1) {
      for (let c = 0; c < 2; c += 1) {
        const draws = [a, b, c, 0];
        const rng: Rng = { below: () => draws.shift() ?? 0 };
        const order = shuffled(["w", "x", "y", "z"], rng).join("");
        seen.set(order, (seen.get(order) ?? 0) + 1);
      }
    }
  }
  expect(seen.size).toBe(24);
});
