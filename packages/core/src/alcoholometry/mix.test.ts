import { expect, test } from "vitest";
import { abv20, grams, millilitres20 } from "../quantity/index.ts";
import type { Grams, Millilitres20 } from "../quantity/index.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import { mix } from "./mix.ts";
import { mixParts } from "./mix-parts.ts";

test("A6: two parts of 62.4 % and one of 46 % come out above the average done in the head", () => {
  const mixed = mixParts(
    [
      { parts: 2, abv20: abv20(62.4) },
      { parts: 1, abv20: abv20(46) },
    ],
    millilitres20(750),
  );
  expect(mixed.sumMl).toBe(750);
  expect(mixed.naiveAbv20).toBeCloseTo((2 * 62.4 + 46) / 3, 12);
  expect(mixed.abv20).toBeGreaterThan(mixed.naiveAbv20);
  expect(mixed.volumeMl).toBeLessThan(750);
  // Ethanol is kept, so strength × volume is kept: this is the definition of % vol, not the formula.
  expect(mixed.abv20 * mixed.volumeMl).toBeCloseTo(mixed.naiveAbv20 * 750, 8);
  expect(mixed.contractionMl).toBe(mixed.sumMl - mixed.volumeMl);
});

test("A6: a pour of nothing changes nothing", () => {
  const whiskey = { volumeMl: millilitres20(50), abv20: abv20(46) };
  const none = { volumeMl: millilitres20(0), abv20: abv20(62.4) };
  expect(mix([whiskey, none])).toEqual(mix([whiskey]));
});

test("A15: an empty liquid has no strength", () => {
  expect(describeLiquid({ ethanolG: grams(0), waterG: grams(0) })).toEqual({
    massG: 0,
    ethanolG: 0,
    waterG: 0,
    volumeMl: 0,
    massFraction: null,
    abv20: null,
    proof60F: null,
  });
  expect(liquidOfVolume(millilitres20(0), abv20(46))).toEqual({ ethanolG: 0, waterG: 0 });
});

test("A16: mixing nothing, negative amounts and parts that are all zero throw", () => {
  expect(() => mix([])).toThrow("mix requires some liquid, got 0 mL");
  expect(() => mix([{ volumeMl: -1 as Millilitres20, abv20: abv20(46) }])).toThrow(
    "volume requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => mixParts([{ parts: 0, abv20: abv20(46) }], millilitres20(750))).toThrow(
    "parts requires a sum above 0, got 0",
  );
  expect(() => mixParts([{ parts: -1, abv20: abv20(46) }], millilitres20(750))).toThrow(RangeError);
  expect(() => describeLiquid({ ethanolG: -1 as Grams, waterG: grams(1) })).toThrow(
    "mass of ethanol requires a finite number of 0 or more, got -1 g",
  );
});
