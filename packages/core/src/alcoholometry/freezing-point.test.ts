import { expect, test } from "vitest";
import { celsius, kgPerM3, massFraction } from "../quantity/index.ts";
import { density } from "./density.ts";
import { FREEZING } from "./freezing.data.ts";
import { coldestLiquid, freezingPoint, weakestLiquid } from "./freezing-point.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";
import { temperaturesFromDensity } from "./temperature-from-density.ts";

test("A17: the freezing point is the table's at its rows and between two rows between them", () => {
  for (const [massPercent, at] of FREEZING) {
    expect(freezingPoint(massFraction(massPercent / 100))).toBeCloseTo(at, 9);
  }
  expect(freezingPoint(massFraction(0))).toBe(0);
  expect(freezingPoint(massFraction(0.14))).toBeCloseTo(-6.1 - (0.2 / 2.6) * 1.4, 9);
  expect(freezingPoint(massFraction(0.39))).toBeCloseTo(-28.7, 9);
  expect(freezingPoint(massFraction(0.3900001))).toBeNull();
  expect(freezingPoint(massFraction(1))).toBeNull();
  expect(() => freezingPoint(1.1 as never)).toThrow("mass fraction requires a number from 0 to 1, got 1.1");
});

test("A17: the freezing point falls as ethanol is added, at first by 1.86 °C for each mole in 1 kg of water", () => {
  // Raoult's law for a dilute solution, with the constant of every handbook: nothing of the table.
  for (const massPercent of [2.5, 4.8]) {
    const molal = (massPercent / 46.07 / (100 - massPercent)) * 1000;
    const found = freezingPoint(massFraction(massPercent / 100)) ?? Number.NaN;
    expect(Math.abs(found + 1.86 * molal)).toBeLessThan(0.1);
  }
  for (let p = 0; p < 0.389; p += 0.001) {
    expect(freezingPoint(massFraction(p + 0.001))).toBeLessThan(freezingPoint(massFraction(p)) ?? 0);
  }
});

test("A17: 12 % mass at 0 °C and 30 % at -20 °C are liquid, as OIML Table I has them; water at -1 °C is not", () => {
  expect(density(massFraction(0.12), celsius(0))).toBeCloseTo(982.62, 2);
  expect(density(massFraction(0.3), celsius(-20))).toBeGreaterThan(960);
  expect(() => density(massFraction(0), celsius(-1))).toThrow(
    "temperature requires at least the freezing point (about 0.0 °C for 0.0 % mass), got -1 °C",
  );
  expect(() => density(massFraction(0.05), celsius(-10))).toThrow(
    "temperature requires at least the freezing point (about -2.1 °C for 5.0 % mass), got -10 °C",
  );
  expect(density(massFraction(0), celsius(0))).toBeCloseTo(999.84, 2);
});

test("A17: refusal begins 15 % below the freezing point, at every strength", () => {
  for (const p of [0.025, 0.1, 0.15, 0.2, 0.25]) {
    const freezing = freezingPoint(massFraction(p)) as number;
    expect(density(massFraction(p), celsius(1.149 * freezing))).toBeGreaterThan(0);
    expect(() => density(massFraction(p), celsius(1.151 * freezing))).toThrow(RangeError);
  }
});

test("A17: the weakest liquid at a temperature and the coldest of a mixture are each other's inverse", () => {
  for (let t = -19.9; t < 0; t += 0.1) {
    expect(coldestLiquid(massFraction(weakestLiquid(t)))).toBeCloseTo(t, 9);
  }
  expect([weakestLiquid(0), weakestLiquid(20)]).toEqual([0, 0]);
  expect([coldestLiquid(massFraction(0)), coldestLiquid(massFraction(0.35))]).toEqual([0, -20]);
  expect(coldestLiquid(massFraction(0.8))).toBe(-20);
});

test("A3, A17: a density that only a frozen mixture has gives null", () => {
  // 0 °C: water. At -10 °C the formula would still give one for 5 % mass, but that is ice.
  expect(massFractionFromDensity(kgPerM3(995), celsius(-10))).toBeNull();
  expect(massFractionFromDensity(kgPerM3(975), celsius(-10))).not.toBeNull();
});

test("A19: weak mixtures have two temperatures, strong ones one", () => {
  const water = massFraction(0);
  const both = temperaturesFromDensity(water, kgPerM3(999.9));
  expect(both.length).toBe(2);
  for (const t of both) expect(density(water, t)).toBeCloseTo(999.9, 9);
  expect(both[0]).toBeLessThan(3.98);
  expect(both[1]).toBeGreaterThan(3.98);
  expect(temperaturesFromDensity(water, kgPerM3(998)).length).toBe(1);
  expect(temperaturesFromDensity(massFraction(0.4), kgPerM3(935.15)).length).toBe(1);
});

test("A19: a density that the mixture never has gives none", () => {
  expect(temperaturesFromDensity(massFraction(0), kgPerM3(1000))).toEqual([]);
  expect(temperaturesFromDensity(massFraction(0.4), kgPerM3(900))).toEqual([]);
  expect(temperaturesFromDensity(massFraction(0.4), kgPerM3(990))).toEqual([]);
  expect(() => temperaturesFromDensity(massFraction(0.4), Number.NaN as never)).toThrow(
    "density requires a finite number of 0 or more, got NaN kg/m³",
  );
});

test("A19: water is densest at 3.98 °C, and there the two answers meet", () => {
  // 3.983 °C: the figure of every handbook for the temperature of greatest density.
  let most = 0;
  let at = 0;
  for (let t = 3; t < 5; t += 0.001) {
    const rho = density(massFraction(0), celsius(t));
    if (rho > most) [most, at] = [rho, t];
  }
  expect(at).toBeCloseTo(3.98, 1);
  const near = temperaturesFromDensity(massFraction(0), kgPerM3(most - 1e-6));
  expect(near.length).toBe(2);
  expect((near[1] ?? 0) - (near[0] ?? 0)).toBeLessThan(0.05);
  const highest = temperaturesFromDensity(massFraction(0), kgPerM3(most + 5e-10));
  expect(highest.length).toBe(1);
});

test("A19: the ends of the range are found", () => {
  for (const p of [0.2, 0.5, 1]) {
    const coldest = celsius(coldestLiquid(massFraction(p)));
    for (const t of [coldest, celsius(40)]) {
      const found = temperaturesFromDensity(massFraction(p), density(massFraction(p), t));
      expect(found.some((one) => Math.abs(one - t) < 1e-9)).toBe(true);
    }
  }
});
