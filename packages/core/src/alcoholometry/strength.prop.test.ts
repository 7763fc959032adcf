import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, massFraction, proof60F } from "../quantity/index.ts";
import {
  abv20FromProof60F,
  massFractionFromProof60F,
  proof60FFromAbv20,
  proof60FFromMassFraction,
} from "./proof.ts";
import { between } from "./fixtures/between.ts";
import { T60F } from "./reference-temperatures.ts";
import { abv20OfStrength, massFractionOfStrength } from "./strength.ts";
import { abv20FromMassFraction, massFractionFromAbv20 } from "./strength-by-volume.ts";

const percent = between(0, 100).map(abv20);
const proof = between(0, 200).map(proof60F);
const fraction = between(0, 1).map(massFraction);
const gap = (x: number, y: number) => Math.abs(x - y);
const thousand = { numRuns: 1000 };

test("A4: % vol to mass fraction and back, and the other way round, within 1e-10", () => {
  fc.assert(
    fc.property(percent, fraction, (abv, p) => {
      expect(gap(abv20FromMassFraction(massFractionFromAbv20(abv)), abv)).toBeLessThan(1e-10);
      expect(gap(massFractionFromAbv20(abv20FromMassFraction(p)), p)).toBeLessThan(1e-10);
    }),
    thousand,
  );
});

test("A5: proof to mass fraction and to % vol and back within 1e-10", () => {
  fc.assert(
    fc.property(proof, percent, fraction, (pf, abv, p) => {
      expect(gap(proof60FFromMassFraction(massFractionFromProof60F(pf)), pf)).toBeLessThan(1e-10);
      expect(gap(massFractionFromProof60F(proof60FFromMassFraction(p)), p)).toBeLessThan(1e-10);
      expect(gap(proof60FFromAbv20(abv20FromProof60F(pf)), pf)).toBeLessThan(1e-10);
      expect(gap(abv20FromProof60F(proof60FFromAbv20(abv)), abv)).toBeLessThan(1e-10);
    }),
    thousand,
  );
});

test("A4, A5: strength rises with the mass fraction on both scales", () => {
  for (let p = 0; p < 1; p += 0.001) {
    const next = massFraction(Math.min(1, p + 0.001));
    expect(abv20FromMassFraction(next)).toBeGreaterThan(abv20FromMassFraction(massFraction(p)));
    expect(proof60FFromMassFraction(next)).toBeGreaterThan(proof60FFromMassFraction(massFraction(p)));
  }
});

test("A4, A5: the ends are exact", () => {
  expect([massFractionFromAbv20(abv20(0)), massFractionFromAbv20(abv20(100))]).toEqual([0, 1]);
  expect([massFractionFromProof60F(proof60F(0)), massFractionFromProof60F(proof60F(200))]).toEqual([0, 1]);
  expect([abv20FromMassFraction(massFraction(0)), abv20FromMassFraction(massFraction(1))]).toEqual([0, 100]);
  expect([proof60FFromAbv20(abv20(0)), proof60FFromAbv20(abv20(100))]).toEqual([0, 200]);
});

test("A5: a whiskey's proof is a little less than twice its % vol at 20 °C", () => {
  fc.assert(
    fc.property(between(35, 75).map(abv20), (abv) => {
      const below = 2 * abv - proof60FFromAbv20(abv);
      expect(below).toBeGreaterThan(0);
      expect(below).toBeLessThan(0.2);
    }),
  );
});

test("A4, A5: a stated strength is converted only when its basis asks for it", () => {
  const asAbv = { basis: "abv20", value: abv20(62.4) } as const;
  const asProof = { basis: "proof60F", value: proof60F(124.8) } as const;
  expect(abv20OfStrength(asAbv)).toBe(62.4);
  expect(abv20OfStrength(asProof)).toBe(abv20FromProof60F(proof60F(124.8)));
  expect(massFractionOfStrength(asAbv)).toBe(massFractionFromAbv20(abv20(62.4)));
  expect(massFractionOfStrength(asProof)).toBe(massFractionFromProof60F(proof60F(124.8)));
});

test("A5: 60 °F is 140/9 °C, not 15.56 or 15.6", () => {
  expect(T60F).toBeCloseTo(140 / 9, 14);
});

test("A16: a strength outside its scale throws", () => {
  expect(() => massFractionFromAbv20(101 as ReturnType<typeof abv20>)).toThrow(
    "strength requires a number from 0 to 100, got 101 % vol",
  );
  expect(() => massFractionFromProof60F(-1 as ReturnType<typeof proof60F>)).toThrow(
    "strength requires a number from 0 to 200, got -1 proof",
  );
});
