import fc from "fast-check";
import { expect, test } from "vitest";
import { abv15 } from "./abv15.ts";
import { abv20 } from "./abv20.ts";
import { celsius } from "./celsius.ts";
import { celsiusFromFahrenheit, fahrenheit, fahrenheitFromCelsius } from "./fahrenheit.ts";
import { grams } from "./grams.ts";
import { kgPerM3 } from "./kg-per-m3.ts";
import { massFraction } from "./mass-fraction.ts";
import { millilitresRead } from "./millilitres-read.ts";
import { millilitres20 } from "./millilitres-20.ts";
import { parseStrength } from "./parse-strength.ts";
import { parseVolume } from "./parse-volume.ts";
import { printMass, printStrength, printVolume } from "./print.ts";
import { proof60F } from "./proof-60f.ts";

test.each([
  [abv20, [0, 62.4, 100], [-0.1, 100.1]],
  [proof60F, [0, 124.8, 200], [-0.1, 200.1]],
  [millilitres20, [0, 750], [-1]],
  [grams, [0, 750], [-1]],
  [abv15, [0, 40, 100], [-0.1, 100.1]],
  [millilitresRead, [0, 750], [-1]],
  [fahrenheit, [-459.67, 60, 212], [-459.68]],
  [celsius, [-273.15, -20, 40], [-273.16]],
  [kgPerM3, [0, 998.2], [-1]],
  [massFraction, [0, 0.4, 1], [-0.1, 1.1]],
] as const)("%o keeps its domain", (make, inside, outside) => {
  for (const x of inside) expect(make(x)).toBe(x);
  for (const x of [...outside, Number.NaN, Infinity, -Infinity]) expect(() => make(x)).toThrow(RangeError);
});

test("the error names what, condition, value and unit", () => {
  expect(() => abv20(120)).toThrow("abv20 requires a number from 0 to 100, got 120 % vol");
  expect(() => millilitres20(-1)).toThrow("millilitres20 requires a finite number of 0 or more, got -1 mL");
  expect(() => massFraction(Number.NaN)).toThrow("massFraction requires a number from 0 to 1, got NaN");
  expect(() => celsius(-300)).toThrow("celsius requires a finite number of -273.15 or more, got -300 °C");
});

test("printing gives exactly the decimals asked, the unit, and no signed zero", () => {
  expect(printStrength({ basis: "abv20", value: abv20(62.44) }, 1)).toBe("62.4 % vol");
  expect(printStrength({ basis: "proof60F", value: proof60F(124.8) }, 1)).toBe("124.8 proof");
  expect(printStrength({ basis: "abv20", value: abv20(62.4) }, 2)).toBe("62.40 % vol");
  expect(printVolume(749.96, 1)).toBe("750.0 mL");
  expect(printVolume(-0.04, 1)).toBe("0.0 mL");
  expect(printVolume(-0.4, 0)).toBe("0 mL");
  expect(printVolume(-3.5, 1)).toBe("-3.5 mL");
  expect(printMass(12.34, 1)).toBe("12.3 g");
});

test("printing refuses a number of decimals that is none, and what is not finite", () => {
  expect(() => printMass(1, -1)).toThrow("decimals requires a whole number from 0 to 12, got -1");
  expect(() => printMass(1, 1.5)).toThrow(RangeError);
  expect(() => printMass(Number.NaN, 1)).toThrow("printing requires a number below 1e21, got NaN");
  expect(() => printVolume(1e21, 1)).toThrow(RangeError);
});

test("what is printed reads back to within half of its last digit", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.integer({ min: 0, max: 6 }),
      (x, decimals) => {
        const strength = parseStrength(printStrength({ basis: "abv20", value: abv20(x) }, decimals));
        const volume = parseVolume(printVolume(x, decimals));
        const half = 0.5 * 10 ** -decimals + 1e-12;
        expect(strength.ok && Math.abs(strength.value.value - x) <= half).toBe(true);
        expect(volume.ok && Math.abs(volume.value - x) <= half).toBe(true);
      },
    ),
  );
});

test("°F and °C: water freezes at 32 and boils at 212, the scales meet at -40, and there and back is exact to rounding", () => {
  expect([32, 212, -40].map((f) => celsiusFromFahrenheit(fahrenheit(f)))).toEqual([0, 100, -40]);
  expect([0, 100, -40].map((t) => fahrenheitFromCelsius(celsius(t)))).toEqual([32, 212, -40]);
  fc.assert(
    fc.property(fc.double({ min: -459, max: 1000, noNaN: true }), (f) => {
      expect(fahrenheitFromCelsius(celsiusFromFahrenheit(fahrenheit(f)))).toBeCloseTo(f, 10);
    }),
  );
  expect(() => celsiusFromFahrenheit(-500 as never)).toThrow(
    "fahrenheit requires a finite number of -459.67 or more, got -500 °F",
  );
  expect(() => fahrenheitFromCelsius(-300 as never)).toThrow("got -300 °C");
});
