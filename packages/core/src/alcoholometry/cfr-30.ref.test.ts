import { expect, test } from "vitest";
import { celsius, celsiusFromFahrenheit, fahrenheit, grams, proof60F } from "../quantity/index.ts";
import type { Grams } from "../quantity/index.ts";
import { density } from "./density.ts";
import { obscurationProof, solidsFromResidue, trueProofWithSolids } from "./obscuration.ts";
import { abv20FromProof60F, massFractionFromProof60F } from "./proof.ts";
import { T60F } from "./reference-temperatures.ts";
import { liquidOfPounds, poundsPerWineGallon, proofGallons, wineGallons } from "./us-gallons.ts";
import { gaugingFigures } from "./us-gauging-figures.ts";
import { WINE_GALLON_ML } from "./us-units.data.ts";
import { factorTo60F } from "./volume-at-60f.ts";

/** Wine gallons of a proof at 60 °F as a liquid. */
function gallonsOf(gallons: number, proof: number) {
  const p = massFractionFromProof60F(proof60F(proof));
  const massG = (gallons * WINE_GALLON_ML * density(p, celsius(T60F))) / 1000;
  return { ethanolG: grams(massG * p), waterG: grams(massG * (1 - p)) };
}

const show = (section: string, ours: number, printed: number, why = ""): void =>
  console.log(`27 CFR ${section}: ours ${Number(ours.toPrecision(7))}, printed ${printed}${why}`);

test("A26: 27 CFR 30.32(b), 0.125 g from 25 mL is 0.50 g in 100 mL and hides 2 proof", () => {
  const solids = solidsFromResidue({ residueG: 0.125, sampleMl: 25 });
  show("30.32(b)", obscurationProof(solids), 2);
  expect(solids).toBe(500);
  expect(obscurationProof(solids)).toBe(2);
  expect(trueProofWithSolids(proof60F(88), solids).proof60F).toBe(90);
});

test("A32: 27 CFR 30.51, 4308.48 gallons of 86.8 proof at 72 °F are 3721.1 proof gallons", () => {
  const factor = factorTo60F(celsiusFromFahrenheit(fahrenheit(72)), abv20FromProof60F(proof60F(86.8)));
  const read = 88 * 48.96;
  const at60 = read * factor;
  const ours = proofGallons(gallonsOf(at60, 86.8));
  show("30.51", ours, 3721.1, ", which rounds the factor of Table 7 to 0.995");
  expect(factor).toBeCloseTo(0.995, 3);
  // Half of the factor's last digit is 0.05 % of the answer.
  expect(Math.abs(ours - 3721.1)).toBeLessThan(0.0005 * 3721.1);
  // By the example's own factor, to its own tenth.
  expect(proofGallons(gallonsOf(read * 0.995, 86.8))).toBeCloseTo(3721.06, 1);
});

test("A32: 27 CFR 30.63, proof gallons from weight and proof", () => {
  const first = proofGallons(liquidOfPounds(60_378, proof60F(190)));
  const second = proofGallons(liquidOfPounds(321.5, proof60F(86)));
  show("30.63, first", first, 16_884.1, ", a sum of four rounded figures");
  show("30.63, second", second, 35.1);
  // The example adds figures rounded to a tenth: 16 778.4 for 60 000 lb is good to 3 parts in a million times 16.
  expect(Math.abs(first - 16_884.1)).toBeLessThan(1);
  expect(Math.abs(second - 35.1)).toBeLessThan(0.05);
});

test("A32: 27 CFR 30.64, gallons from 81 000 lb of 190 proof", () => {
  const liquid = liquidOfPounds(81_000, proof60F(190));
  show("30.64, wine gallons", wineGallons(liquid), 11_921.6);
  show("30.64, proof gallons", proofGallons(liquid), 22_650.8);
  // Table 4 prints 0.14718 and 0.27964 gallons per pound: five digits.
  expect(Math.abs(wineGallons(liquid) / 81_000 - 0.14718)).toBeLessThan(0.00001);
  expect(Math.abs(proofGallons(liquid) / 81_000 - 0.27964)).toBeLessThan(0.00002);
});

test("A33: 27 CFR 30.65, a wine gallon of 190 proof weighs 6.79434 lb and a proof gallon 3.57597 lb", () => {
  const wine = poundsPerWineGallon(proof60F(190));
  show("30.65, wine gallon", wine, 6.79434);
  show("30.65, proof gallon", wine / 1.9, 3.57597);
  expect(Math.abs(wine - 6.79434)).toBeLessThan(0.0008);
  expect(Math.abs(wine / 1.9 - 3.57597)).toBeLessThan(0.0008);
});

test("A34: 27 CFR 30.66, water to reduce 100 gallons by the rule of Table 6", () => {
  const water = (from: number, to: number): number => {
    const start = gaugingFigures(proof60F(from));
    const end = gaugingFigures(proof60F(to));
    return (start.alcohol / end.alcohol) * end.water - start.water;
  };
  show("30.66, 191 to 188 proof", water(191, 188), 1.84, ", which rounds 95.5/94.0 to 1.01; unrounded 1.887");
  show("30.66, 112 to 100 proof", water(112, 100), 12.42, "; unrounded 12.428");
  expect(water(191, 188)).toBeCloseTo((95.5 / 94) * 7.36 - 5.59, 2);
  expect(Math.abs(water(112, 100) - 12.42)).toBeLessThan(0.01);
});

test("A32: TTB's conversion, 100 gallons of 40 % are 80 proof gallons", () => {
  expect(proofGallons(gallonsOf(100, 80))).toBeCloseTo(80, 9);
});

test("A32: an empty vessel has no gallons", () => {
  const empty = { ethanolG: 0 as Grams, waterG: 0 as Grams };
  expect([wineGallons(empty), proofGallons(empty)]).toEqual([0, 0]);
});
