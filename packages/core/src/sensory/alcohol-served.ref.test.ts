import { expect, test } from "vitest";
import { alcoholServed, UK_UNIT_G, US_STANDARD_DRINK_G } from "./index.ts";
import { ETHANOL_G_PER_ML } from "./standard-drink.data.ts";

// en.wikipedia.org/wiki/Standard_drink: US 14 g = 17.7 mL of ethanol, 44.4 mL at 40 %; UK 8 g = 10 mL, 25.3 mL at 40 %.
test.each([
  ["US", US_STANDARD_DRINK_G, 14, 17.7, 44.4],
  ["UK", UK_UNIT_G, 8, 10.1, 25.3],
])("A1 the %s drink holds the published grams and millilitres", (_, drink, grams, ethanolMl, at40Ml) => {
  expect(drink).toBe(grams);
  expect(grams / ETHANOL_G_PER_ML).toBeCloseTo(ethanolMl, 1);
  expect(grams / ETHANOL_G_PER_ML / 0.4).toBeCloseTo(at40Ml, 0);
});

test("A1 glasses add up", () => {
  const flight = Array.from({ length: 5 }, () => ({ volumeMl: 15, ethanolG: 5.6 }));
  const served = alcoholServed(flight);
  expect(served.volumeMl).toBe(75);
  expect(served.grams).toBeCloseTo(28, 12);
  expect(served.usStandardDrinks).toBeCloseTo(2, 12);
  expect(served.ukUnits).toBeCloseTo(3.5, 12);
  expect(alcoholServed([])).toEqual({ volumeMl: 0, grams: 0, usStandardDrinks: 0, ukUnits: 0 });
});

test.each([
  [{ volumeMl: -1, ethanolG: 0 }, "glass 0 requires a volume of 0 mL or more, got -1 mL"],
  [{ volumeMl: Infinity, ethanolG: 0 }, "glass 0 requires a volume"],
  [{ volumeMl: Number.NaN, ethanolG: 0 }, "glass 0 requires a volume"],
  [{ volumeMl: 10, ethanolG: 8 }, "glass 0 requires 0 to 7.89 g of ethanol, got 8 g"],
  [{ volumeMl: 10, ethanolG: -1 }, "got -1 g"],
  [{ volumeMl: 10, ethanolG: Number.NaN }, "got NaN g"],
])("A1 %o throws", (glass, message) => {
  expect(() => alcoholServed([glass])).toThrow(message);
});
