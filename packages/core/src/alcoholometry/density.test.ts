import { expect, test } from "vitest";
import { celsius, kgPerM3, massFraction } from "../quantity/index.ts";
import type { Celsius, MassFraction } from "../quantity/index.ts";
import { density } from "./density.ts";
import { weakestLiquid } from "./freezing-point.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";

test("A3: a density no mixture has at that temperature gives null", () => {
  expect(massFractionFromDensity(kgPerM3(1030), celsius(20))).toBeNull();
  expect(massFractionFromDensity(kgPerM3(700), celsius(20))).toBeNull();
  // 785 kg/m³ is no mixture at 20 °C and one at 30 °C.
  expect(massFractionFromDensity(kgPerM3(785), celsius(20))).toBeNull();
  expect(massFractionFromDensity(kgPerM3(785), celsius(30))).not.toBeNull();
});

test("A3: the ends of the range are found", () => {
  for (const t of [-20, 0, 20, 40]) {
    for (const p of [weakestLiquid(t), 1]) {
      const rho = density(massFraction(p), celsius(t));
      expect(massFractionFromDensity(rho, celsius(t))).toBeCloseTo(p, 12);
    }
  }
});

test("A16: density outside its domain throws, naming what, limit and value", () => {
  expect(() => density(massFraction(0.5), celsius(40.1))).toThrow(
    "temperature requires a number from -20 to 40, got 40.1 °C",
  );
  expect(() => density(massFraction(0.5), celsius(-20.1))).toThrow(RangeError);
  expect(() => density(1.01 as MassFraction, celsius(20))).toThrow(
    "mass fraction requires a number from 0 to 1, got 1.01",
  );
  expect(() => density(Number.NaN as MassFraction, celsius(20))).toThrow("got NaN");
  expect(() => density(massFraction(0), Number.NaN as Celsius)).toThrow("got NaN °C");
  expect(() => massFractionFromDensity(kgPerM3(900), celsius(41))).toThrow(RangeError);
});
