import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, celsius, grams, millilitres20, millilitresRead, proof60F } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { CONVENTIONAL_AIR } from "./air.data.ts";
import { evaporated } from "./evaporated.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import { mix } from "./mix.ts";
import { strengthFromMassAndVolume } from "./strength-from-mass-and-volume.ts";
import {
  liquidOfPounds,
  litresOfAlcohol,
  poundsPerWineGallon,
  proofGallons,
  wineGallons,
} from "./us-gallons.ts";
import { POUND_G, WINE_GALLON_ML } from "./us-units.data.ts";
import { volumeAtFromVolumeAt20 } from "./volume-at-temperature.ts";
import { T60F } from "./reference-temperatures.ts";
import { weigh } from "./weigh.ts";

test("A31: the strength of a sample from what it weighs and measures, at any temperature, in air or not", () => {
  fc.assert(
    fc.property(
      between(1, 99.5),
      between(0, 40),
      between(1, 1000),
      fc.constantFrom(undefined, CONVENTIONAL_AIR),
      (abv, t, ml, air) => {
        const at = { celsius: celsius(t), ...(air === undefined ? {} : { air }) };
        const { grams: onScale } = weigh(millilitresRead(ml), { abv20: abv20(abv), ...at });
        const found = strengthFromMassAndVolume({ onScale, ml: millilitresRead(ml), ...at });
        if (!found.ok) throw new Error(found.issue.message);
        expect(Math.abs(found.abv20 - abv)).toBeLessThan(1e-9);
      },
    ),
  );
});

test("A31: a sample heavier than water or lighter than ethanol is a no with the nearest", () => {
  const heavy = strengthFromMassAndVolume({ onScale: grams(101), ml: millilitresRead(100) });
  expect(heavy).toMatchObject({
    ok: false,
    issue: { code: "reading_heavier_than_any" },
    nearest: { abv20: 0 },
  });
  expect(!heavy.ok && heavy.issue.received).toBeCloseTo(1010, 9);
  const light = strengthFromMassAndVolume({
    onScale: grams(70),
    ml: millilitresRead(100),
    celsius: celsius(30),
  });
  expect(light).toMatchObject({
    ok: false,
    issue: { code: "reading_lighter_than_any" },
    nearest: { abv20: 100 },
  });
  expect(() => strengthFromMassAndVolume({ onScale: grams(0), ml: millilitresRead(100) })).toThrow(
    "weight requires",
  );
  expect(() => strengthFromMassAndVolume({ onScale: grams(0), ml: millilitresRead(100) })).toThrow("got 0 g");
  expect(() => strengthFromMassAndVolume({ onScale: grams(1), ml: millilitresRead(0) })).toThrow(
    "volume requires",
  );
  expect(() => strengthFromMassAndVolume({ onScale: grams(1), ml: millilitresRead(0) })).toThrow("got 0 mL");
});

test("A31: what evaporated, put back, makes the vessel as it was", () => {
  const vessel = fc.record({
    volumeMl: between(1, 1000).map(millilitres20),
    abv20: between(0, 100).map(abv20),
  });
  fc.assert(
    fc.property(vessel, vessel, (before, after) => {
      const gone = evaporated(before, after);
      if (!gone.ok) {
        expect(gone.issue.received).toBeGreaterThan(gone.issue.limit);
        return;
      }
      const left = liquidOfVolume(after.volumeMl, after.abv20);
      const was = liquidOfVolume(before.volumeMl, before.abv20);
      expect(left.ethanolG + gone.ethanolG).toBeCloseTo(was.ethanolG, 8);
      expect(left.waterG + gone.waterG).toBeCloseTo(was.waterG, 8);
      expect(gone.massG).toBeCloseTo(gone.ethanolG + gone.waterG, 10);
      expect(gone.volumeMl).toBe(before.volumeMl - after.volumeMl);
      expect(gone.ethanolShare).toBeGreaterThanOrEqual(0);
      expect(gone.ethanolShare).toBeLessThanOrEqual(1);
      if (gone.massFractionGone !== null) {
        expect(gone.massFractionGone).toBeCloseTo(gone.ethanolG / gone.massG, 12);
      }
    }),
  );
});

test("A31: water may come in, ethanol may not; nothing gone is nothing gone", () => {
  const before = { volumeMl: millilitres20(700), abv20: abv20(60) };
  const damp = evaporated(before, { volumeMl: millilitres20(700), abv20: abv20(58) });
  expect(damp.ok && damp.waterG).toBeLessThan(0);
  expect(damp.ok && damp.massFractionGone).toBeNull();
  expect(damp.ok && damp.ethanolShare).toBeCloseTo(2 / 60, 6);
  expect(evaporated(before, before)).toEqual({
    ok: true,
    ethanolG: 0,
    waterG: 0,
    massG: 0,
    volumeMl: 0,
    ethanolShare: 0,
    massFractionGone: null,
  });
  const water = { volumeMl: millilitres20(700), abv20: abv20(0) };
  expect(evaporated(water, { ...water, volumeMl: millilitres20(600) })).toMatchObject({
    ethanolShare: 0,
    massFractionGone: 0,
  });
  const pure = { volumeMl: millilitres20(700), abv20: abv20(100) };
  expect(evaporated(pure, { ...pure, volumeMl: millilitres20(600) })).toMatchObject({
    waterG: 0,
    massFractionGone: 1,
  });
  const more = evaporated(before, { volumeMl: millilitres20(700), abv20: abv20(61) });
  expect(more).toMatchObject({ ok: false, issue: { code: "more_ethanol_than_before" } });
  expect(!more.ok && more.issue.message).toMatch(
    /^ethanol left requires at most the 331\.\d+ g that were there, got 337\.\d+ g$/,
  );
  const all = evaporated(before, { volumeMl: millilitres20(0), abv20: abv20(0) });
  expect(all.ok && all.ethanolShare).toBe(1);
});

test("A32: gallons add when liquids are mixed by their alcohol, and litres of alcohol are volume times strength", () => {
  fc.assert(
    fc.property(
      between(1, 5000),
      between(0, 100),
      between(1, 5000),
      between(0, 100),
      (ml, abv, ml2, abv2) => {
        const one = { volumeMl: millilitres20(ml), abv20: abv20(abv) };
        const two = { volumeMl: millilitres20(ml2), abv20: abv20(abv2) };
        const liquids = [one, two].map((pour) => liquidOfVolume(pour.volumeMl, pour.abv20));
        expect(litresOfAlcohol(liquids[0] ?? mix([one]))).toBeCloseTo((ml * abv) / 100 / 1000, 9);
        const apart = liquids.reduce((sum, liquid) => sum + proofGallons(liquid), 0);
        expect(proofGallons(mix([one, two]))).toBeCloseTo(apart, 9);
        expect(wineGallons(mix([one]))).toBeCloseTo(
          volumeAtFromVolumeAt20(one.volumeMl, celsius(T60F), one.abv20) / WINE_GALLON_ML,
          9,
        );
      },
    ),
  );
});

test("A32, A33: pounds to gallons and back, in air and in vacuum", () => {
  fc.assert(
    fc.property(between(1, 1000), between(0, 200), (pounds, proof) => {
      const inAir = liquidOfPounds(pounds, proof60F(proof));
      expect(wineGallons(inAir) * poundsPerWineGallon(proof60F(proof))).toBeCloseTo(pounds, 8);
      const vacuum = liquidOfPounds(pounds, proof60F(proof), null);
      expect(describeLiquid(vacuum).massG).toBeCloseTo(pounds * POUND_G, 6);
      expect(wineGallons(vacuum) * poundsPerWineGallon(proof60F(proof), null)).toBeCloseTo(pounds, 8);
      expect(describeLiquid(inAir).proof60F).toBeCloseTo(proof, 8);
    }),
  );
  expect(() => liquidOfPounds(1, 201 as never)).toThrow(
    "strength requires a number from 0 to 200, got 201 proof",
  );
  expect(() => liquidOfPounds(-1, proof60F(100))).toThrow(
    "weight requires a finite number of 0 or more, got -1 lb",
  );
});
