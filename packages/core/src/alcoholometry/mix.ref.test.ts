import { expect, test } from "vitest";
import { abv20, celsius, grams, massFraction, millilitres20, proof60F } from "../quantity/index.ts";
import { density } from "./density.ts";
import { LANGE_DENSITY } from "./fixtures/lange-density.data.ts";
import { PERRY_DENSITY_20 } from "./fixtures/perry-density-20.data.ts";
import { describeLiquid } from "./liquid.ts";
import { mix } from "./mix.ts";
import { abv20FromProof60F, massFractionFromProof60F } from "./proof.ts";
import { T60F } from "./reference-temperatures.ts";
import { waterToStrength } from "./water-to-strength.ts";

const pour = (ml: number, abv: number) => ({ volumeMl: millilitres20(ml), abv20: abv20(abv) });

test("A6: 50 mL of ethanol and 50 mL of water make 96.46 mL by the handbook densities, not the often quoted 96.26", () => {
  // Lange's d20/4 only, nothing of ours: masses from the ends, the mixture's density by a parabola through 42, 44, 46 %.
  const d = (massPercent: number): number => {
    const row = LANGE_DENSITY.find((one) => one.massPercent === massPercent);
    if (row === undefined) throw new Error(`no row ${massPercent}`);
    return row.d20;
  };
  const mass = 50 * d(100) + 50 * d(0);
  const x = (((50 * d(100)) / mass) * 100 - 44) / 2;
  const slope = (d(46) - d(42)) / 2;
  const bend = (d(46) - 2 * d(44) + d(42)) / 2;
  const byLange = mass / (d(44) + slope * x + bend * x * x);
  const ours = mix([pour(50, 100), pour(50, 0)]);
  console.log(
    `50 mL + 50 mL: ours ${ours.volumeMl.toFixed(3)} mL, by Lange's densities ${byLange.toFixed(3)} mL, often quoted 96.26 mL (about 0.2 low)`,
  );
  expect(Math.abs(ours.volumeMl - byLange)).toBeLessThan(0.012);
  expect(Math.abs(96.26 - byLange)).toBeGreaterThan(0.15);
  expect(ours.volumeMl).toBeCloseTo(96.463, 3);
});

test("A10: a weak mixture swells, by Perry's densities and by ours", () => {
  // Equal masses of water and of 12.8 % mass give 6.4 % mass; all three densities are rows of the table.
  const v = (massPercent: number): number => {
    const row = PERRY_DENSITY_20.find((one) => one.massPercent === massPercent);
    if (row === undefined) throw new Error(`no row ${massPercent}`);
    return 1 / row.kgPerL;
  };
  const perry = (v(0) + v(12.8)) / 2 - v(6.4);
  const strong = describeLiquid({ ethanolG: grams(128), waterG: grams(872) });
  const water = describeLiquid({ ethanolG: grams(0), waterG: grams(1000) });
  const mixed = describeLiquid({ ethanolG: grams(128), waterG: grams(1872) });
  const ours = (strong.volumeMl + water.volumeMl - mixed.volumeMl) / 2000;
  expect(perry).toBeLessThan(0);
  expect(Math.abs(ours - perry)).toBeLessThan(0.0001);
});

/** Gallons of water at 60 °F that take 100 gallons at 60 °F from one proof to another, by this room. */
function waterPer100At60F(from: number, to: number): number {
  const p = massFractionFromProof60F(proof60F(from));
  const massG = (100 * density(p, celsius(T60F))) / 1000;
  const start = describeLiquid({ ethanolG: grams(massG * p), waterG: grams(massG * (1 - p)) });
  const answer = waterToStrength({
    volumeMl: start.volumeMl,
    from: abv20FromProof60F(proof60F(from)),
    to: abv20FromProof60F(proof60F(to)),
  });
  if (!answer.ok) throw new Error(answer.issue.message);
  return (answer.waterG / density(massFraction(0), celsius(T60F))) * 1000;
}

test("A11: water from 191 to 188 proof agrees with the rule of 27 CFR 30.66 before its rounding", () => {
  // 27 CFR 186.66, now 30.66, first example: Table 6 rows 191 (95.5 alcohol, 5.59 water) and 188 (94.0, 7.36). The text
  // rounds 95.5/94.0 = 1.01596 to 1.01 and so prints 1.84; unrounded, its own rule gives 1.887.
  const unrounded = (95.5 / 94.0) * 7.36 - 5.59;
  const ours = waterPer100At60F(191, 188);
  console.log(
    `27 CFR 30.66, 191 to 188 proof: ours ${ours.toFixed(3)}, its rule unrounded ${unrounded.toFixed(3)}, printed 1.84`,
  );
  expect(Math.abs(ours - unrounded)).toBeLessThan(0.01);
});

test("A11: water from 112 to 100 proof agrees with the second example of 27 CFR 30.66", () => {
  const unrounded = (56 / 50) * 53.73 - 47.75;
  const ours = waterPer100At60F(112, 100);
  console.log(
    `27 CFR 30.66, 112 to 100 proof: ours ${ours.toFixed(3)}, its rule unrounded ${unrounded.toFixed(3)}, printed 12.42`,
  );
  expect(Math.abs(ours - 12.42)).toBeLessThan(0.01);
  expect(Math.abs(ours - unrounded)).toBeLessThan(0.01);
});
