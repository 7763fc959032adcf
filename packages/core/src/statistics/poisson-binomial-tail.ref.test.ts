import { expect, test } from "vitest";
import { binomialTailChance, poissonBinomialTail } from "./index.ts";

test("equal chances: the binomial law, as the exact one has it", () => {
  for (const [n, k] of [
    [12, 8],
    [30, 5],
    [7, 0],
  ] as const)
    expect(
      poissonBinomialTail(
        Array.from({ length: n }, () => 1 / 3),
        k,
      ),
    ).toBeCloseTo(binomialTailChance(n, k, { numerator: 1n, denominator: 3n }), 13);
});

test("different chances: what counting every way gives", () => {
  const chances = [1 / 2, 1 / 3, 1 / 4, 1 / 5, 1 / 6];
  for (let least = 0; least <= 6; least += 1) {
    let counted = 0;
    for (let way = 0; way < 2 ** chances.length; way += 1) {
      const hits = chances.map((_, n) => (way >> n) & 1);
      if (hits.reduce((sum, one) => sum + one, 0) < least) continue;
      counted += chances.reduce((product, p, n) => product * (hits[n] === 1 ? p : 1 - p), 1);
    }
    expect(poissonBinomialTail(chances, least)).toBeCloseTo(counted, 14);
  }
});

test("bounds and a chance that is none", () => {
  expect(poissonBinomialTail([], 0)).toBe(1);
  expect(poissonBinomialTail([0.5], 2)).toBe(0);
  expect(() => poissonBinomialTail([1.5], 1)).toThrow("a chance requires 0 to 1, got 1.5");
});
