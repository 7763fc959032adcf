import fc from "fast-check";
import { expect, test } from "vitest";
import { polynomial } from "../numeric/index.ts";
import { celsius, massFraction } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { density } from "./density.ts";
import { densityFormula, densityPolynomial, ethanolDensity } from "./density-formula.ts";
import { guessFromDensityShare, guessFromVolumeShare } from "./first-guess.ts";
import { weakestLiquid } from "./freezing-point.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";
import { shiftedByOne } from "./shifted-by-one.ts";

const warmth = between(-20, 40).map(celsius);
/** A temperature and a mass fraction that is liquid there: the whole domain. */
const liquid = fc
  .tuple(between(0, 1), warmth)
  .map(([share, t]) => ({ t, p: massFraction(weakestLiquid(t) + share * (1 - weakestLiquid(t))) }));

test("A2: density falls as the mass fraction rises, over a grid of the whole domain and at random", () => {
  const rises: string[] = [];
  for (let t = -20; t <= 40; t += 0.5) {
    for (let p = weakestLiquid(t); p < 1; p += 0.002) {
      const next = Math.min(1, p + 0.002);
      if (!(density(massFraction(next), celsius(t)) < density(massFraction(p), celsius(t)))) {
        rises.push(`${p}, ${t} °C`);
      }
    }
  }
  expect(rises).toEqual([]);
  fc.assert(
    fc.property(liquid, liquid, ({ p, t }, other) => {
      const low = Math.min(p, Math.max(other.p, weakestLiquid(t)));
      const high = Math.max(p, other.p);
      fc.pre(high - low > 1e-9);
      expect(density(massFraction(high), t)).toBeLessThan(density(massFraction(low), t));
    }),
  );
});

test("A3: massFractionFromDensity undoes density within 1e-10", () => {
  fc.assert(
    fc.property(liquid, ({ p, t }) => {
      const back = massFractionFromDensity(density(p, t), t);
      expect(back).not.toBeNull();
      expect(Math.abs((back as number) - p)).toBeLessThan(1e-10);
    }),
    { numRuns: 1000 },
  );
});

test("A1: at one temperature the formula is a polynomial in the mass fraction, the same within rounding", () => {
  fc.assert(
    fc.property(between(0, 1), warmth, (p, t) => {
      const [side, x] = p < 0.5 ? (["weak", p] as const) : (["strong", p - 1] as const);
      expect(Math.abs(polynomial(densityPolynomial(side, t), x) - densityFormula(p, t))).toBeLessThan(1e-11);
    }),
    { numRuns: 1000 },
  );
});

test("the first guesses of the inversions are near, and exact at the ends", () => {
  for (const guess of [guessFromDensityShare, guessFromVolumeShare]) {
    expect(guess(0)).toBeCloseTo(0, 9);
    expect(guess(1)).toBeCloseTo(1, 9);
  }
  fc.assert(
    fc.property(between(0, 1), (p) => {
      const [water, ethanol, mixture] = [0, 1, p].map((x) => densityFormula(x, 20)) as [
        number,
        number,
        number,
      ];
      expect(Math.abs(guessFromDensityShare((water - mixture) / (water - ethanol)) - p)).toBeLessThan(1e-3);
      expect(Math.abs(guessFromVolumeShare((p * mixture) / ethanol) - p)).toBeLessThan(1e-3);
    }),
  );
});

test("A1: the powers of p and of p - 1 are the same formula, and meet in the middle", () => {
  fc.assert(
    fc.property(between(0, 1), warmth, (p, t) => {
      const weak = polynomial(densityPolynomial("weak", t), p);
      const strong = polynomial(densityPolynomial("strong", t), p - 1);
      expect(Math.abs(weak - strong)).toBeLessThan(2e-9);
    }),
  );
  for (let t = -20; t <= 40; t++) {
    const below = densityFormula(0.5 - 2 ** -54, t);
    expect(Math.abs(densityFormula(0.5, t) - below)).toBeLessThan(2e-11);
    expect(ethanolDensity(t)).toBeCloseTo(densityFormula(1, t), 10);
  }
});

test("a polynomial shifted by one has the value of the other, exactly for whole numbers", () => {
  const c = [5, -3, 0, 7, 2];
  expect([...shiftedByOne(c)]).toEqual([11, 26, 33, 15, 2]);
  const whole = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(whole, fc.integer({ min: -3, max: 3 }), (all, x) => {
      expect(polynomial(shiftedByOne(all), x - 1)).toBe(polynomial(all, x));
    }),
  );
  // 2^53 + 1 is no double: the sum of coefficients is rounded once, not on the way.
  expect(shiftedByOne([2 ** 53, 1, 1])[0]).toBe(2 ** 53 + 2);
});
