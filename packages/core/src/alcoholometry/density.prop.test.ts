import fc from "fast-check";
import { expect, test } from "vitest";
import { celsius, massFraction } from "../quantity/index.ts";
import { density } from "./density.ts";
import { densitySlopeFormula } from "./density-formula.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";

const fraction = fc.double({ min: 0, max: 1, noNaN: true }).map(massFraction);
const warmth = fc.double({ min: -20, max: 40, noNaN: true }).map(celsius);

test("A2: density falls as the mass fraction rises, over a grid of the whole domain and at random", () => {
  const rises: string[] = [];
  for (let t = -20; t <= 40; t += 0.5) {
    for (let p = 0; p < 1; p += 0.002) {
      const next = Math.min(1, p + 0.002);
      if (!(density(massFraction(next), celsius(t)) < density(massFraction(p), celsius(t)))) {
        rises.push(`${p}, ${t} °C`);
      }
    }
  }
  expect(rises).toEqual([]);
  fc.assert(
    fc.property(fraction, warmth, (p, t) => {
      expect(densitySlopeFormula(p, t)).toBeLessThan(0);
    }),
  );
});

test("A3: massFractionFromDensity undoes density within 1e-10", () => {
  fc.assert(
    fc.property(fraction, warmth, (p, t) => {
      const back = massFractionFromDensity(density(p, t), t);
      expect(back).not.toBeNull();
      expect(Math.abs((back as number) - p)).toBeLessThan(1e-10);
    }),
    { numRuns: 1000 },
  );
});

test("the slope by mass fraction is the derivative of the density, checked by differences", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), warmth, (p, t) => {
      const h = 1e-4;
      const difference = (density(massFraction(p + h), t) - density(massFraction(p - h), t)) / (2 * h);
      expect(Math.abs(densitySlopeFormula(p, t) - difference)).toBeLessThan(0.01);
    }),
  );
});
