import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, celsius, kgPerM3, massFraction, millilitres20, millilitresRead } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { density } from "./density.ts";
import { coldestLiquid, weakestLiquid } from "./freezing-point.ts";
import { abv20FromDensity } from "./strength-from-density.ts";
import { abv20FromMassFraction } from "./strength-by-volume.ts";
import { temperaturesFromDensity } from "./temperature-from-density.ts";
import { volumeAt20FromVolumeAt, volumeAtFromVolumeAt20 } from "./volume-at-temperature.ts";
import { factorTo60F } from "./volume-at-60f.ts";
import { T60F } from "./reference-temperatures.ts";
import { abv15FromAbv20, abv20FromAbv15 } from "./strength-at-15.ts";

/** A temperature, and a strength that is liquid there. */
const liquid = fc.tuple(between(0, 1), between(-20, 40)).map(([share, t]) => {
  const p = massFraction(Math.min(1, weakestLiquid(t) + 1e-12 + share * (1 - weakestLiquid(t))));
  return { t: celsius(t), p, abv: abv20FromMassFraction(p) };
});

test("A18: volume at t to 20 °C and back within 1e-10 of itself", () => {
  fc.assert(
    fc.property(liquid, between(0.1, 5000), ({ t, abv }, ml) => {
      const at20 = volumeAt20FromVolumeAt(millilitresRead(ml), t, abv);
      expect(Math.abs(volumeAtFromVolumeAt20(at20, t, abv) - ml)).toBeLessThan(1e-10 * ml);
      const read = volumeAtFromVolumeAt20(millilitres20(ml), t, abv);
      expect(Math.abs(volumeAt20FromVolumeAt(read, t, abv) - ml)).toBeLessThan(1e-10 * ml);
    }),
  );
});

test("A18: the mass does not change, so volume times density does not", () => {
  fc.assert(
    fc.property(liquid, between(0.1, 5000), ({ t, p, abv }, ml) => {
      const at20 = volumeAt20FromVolumeAt(millilitresRead(ml), t, abv);
      expect(at20 * density(p, celsius(20))).toBeCloseTo(ml * density(p, t), 6);
    }),
  );
});

test("A18: at 20 °C nothing changes; a warm whiskey is less at 20 °C, a cold one more", () => {
  fc.assert(
    fc.property(between(20, 100), between(0.1, 20), (abv, off) => {
      const of100 = (t: number) => volumeAt20FromVolumeAt(millilitresRead(100), celsius(t), abv20(abv));
      expect(of100(20)).toBe(100);
      expect(of100(20 + off)).toBeLessThan(100);
      expect(of100(20 - off)).toBeGreaterThan(100);
    }),
  );
});

test("A3: strength to density at t and back within 1e-10 % vol", () => {
  fc.assert(
    fc.property(liquid, ({ t, p, abv }) => {
      expect(Math.abs((abv20FromDensity(density(p, t), t) ?? Number.NaN) - abv)).toBeLessThan(1e-10);
    }),
    { numRuns: 1000 },
  );
});

test("A3: a density no mixture has gives no strength", () => {
  expect(abv20FromDensity(kgPerM3(1030), celsius(20))).toBeNull();
  expect(abv20FromDensity(kgPerM3(700), celsius(20))).toBeNull();
});

test("A19: a temperature is among those of its density, and every answer has that density", () => {
  fc.assert(
    fc.property(liquid, ({ t, p }) => {
      const rho = density(p, t);
      const found = temperaturesFromDensity(p, rho);
      expect(found.length).toBeGreaterThan(0);
      expect(found.length).toBeLessThan(3);
      for (const one of found) {
        expect(one).toBeGreaterThanOrEqual(coldestLiquid(p) - 1e-12);
        expect(one).toBeLessThanOrEqual(40 + 1e-12);
        expect(Math.abs(density(p, celsius(Math.max(one, coldestLiquid(p) + 1e-12))) - rho)).toBeLessThan(
          2e-9,
        );
      }
      // Where the density hardly changes with the temperature no answer can be sharper than the densities' own rounding.
      const nearest = Math.min(...found.map((one) => Math.abs(one - t)));
      const slope = Math.abs(density(p, celsius(t > 39 ? t - 0.01 : t + 0.01)) - rho) / 0.01;
      expect(nearest).toBeLessThan(slope > 0.05 ? 1e-10 + 5e-12 / slope : 1e-3);
    }),
    { numRuns: 1000 },
  );
});

test("A18: the factor to 60 °F is the ratio of the densities, 1 at 60 °F", () => {
  fc.assert(
    fc.property(liquid, ({ t, p, abv }) => {
      expect(factorTo60F(t, abv)).toBeCloseTo(density(p, t) / density(p, celsius(T60F)), 10);
      expect(factorTo60F(celsius(T60F), abv)).toBe(1);
    }),
  );
});

test("A35: % vol at 20 °C to % vol at 15 °C and back within 1e-10; less at 15 °C up to 90 %, the ends the same", () => {
  fc.assert(
    fc.property(between(0, 100).map(abv20), (abv) => {
      expect(Math.abs(abv20FromAbv15(abv15FromAbv20(abv)) - abv)).toBeLessThan(1e-10);
      if (abv > 1 && abv < 90) expect(abv15FromAbv20(abv)).toBeLessThan(abv);
    }),
  );
  expect([abv15FromAbv20(abv20(0)), abv15FromAbv20(abv20(100))]).toEqual([0, 100]);
  expect(abv15FromAbv20(abv20(40))).toBeCloseTo(39.92, 2);
  expect(() => abv20FromAbv15(101 as never)).toThrow(
    "strength requires a number from 0 to 100, got 101 % vol at 15 °C",
  );
});

test("A16: volumes and temperatures outside their domain throw", () => {
  expect(() => volumeAt20FromVolumeAt(-1 as never, celsius(20), abv20(46))).toThrow(
    "volume requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => volumeAtFromVolumeAt20(-1 as never, celsius(20), abv20(46))).toThrow("got -1 mL");
  expect(() => volumeAt20FromVolumeAt(millilitresRead(1), celsius(41), abv20(46))).toThrow(
    "temperature requires a number from -20 to 40, got 41 °C",
  );
  expect(() => volumeAt20FromVolumeAt(millilitresRead(1), celsius(-15), abv20(10))).toThrow("freezing point");
});
