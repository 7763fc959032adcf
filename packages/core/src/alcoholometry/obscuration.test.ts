import { expect, test } from "vitest";
import { proof60F } from "../quantity/index.ts";
import { obscurationProof, solidsFromResidue, trueProofWithSolids } from "./obscuration.ts";

test("A26: 100 mg in 100 mL hide 0.4 proof; the rule says add, leave or distil", () => {
  expect(obscurationProof(0)).toBe(0);
  expect(obscurationProof(100)).toBeCloseTo(0.4, 12);
  const rules = [0, 400, 401, 600, 601].map((mg) => trueProofWithSolids(proof60F(90), mg).rule);
  expect(rules).toEqual(["as_read", "as_read", "add_obscuration", "add_obscuration", "distil"]);
});

test("A26: it matters from half of a tenth of a proof on", () => {
  expect(trueProofWithSolids(proof60F(90), 12.4).matters).toBe(false);
  expect(trueProofWithSolids(proof60F(90), 12.5).matters).toBe(true);
  expect(trueProofWithSolids(proof60F(90), 200)).toEqual({
    proof60F: 90.8,
    obscurationProof: 0.8,
    matters: true,
    rule: "as_read",
    inRange: true,
  });
});

test("A26: the factor was found for 80 to 100 proof, and proof ends at 200", () => {
  const inRange = [79.9, 80, 100, 100.1].map((proof) => trueProofWithSolids(proof60F(proof), 10).inRange);
  expect(inRange).toEqual([false, true, true, false]);
  expect(trueProofWithSolids(proof60F(199.9), 500).proof60F).toBe(200);
});

test("A26: solids from a residue", () => {
  expect(solidsFromResidue({ residueG: 0.1, sampleMl: 50 })).toBeCloseTo(200, 9);
});

test("A16: solids, residues and samples outside their domain throw", () => {
  expect(() => obscurationProof(-1)).toThrow(
    "solids requires a number from 0 to 100000, got -1 mg in 100 mL",
  );
  expect(() => trueProofWithSolids(201 as never, 1)).toThrow(
    "apparent proof requires a number from 0 to 200, got 201 proof",
  );
  expect(() => solidsFromResidue({ residueG: -1, sampleMl: 25 })).toThrow(
    "residue requires a finite number of 0 or more, got -1 g",
  );
  expect(() => solidsFromResidue({ residueG: 1, sampleMl: 0 })).toThrow("sample requires");
  expect(() => solidsFromResidue({ residueG: 1, sampleMl: 0 })).toThrow("got 0 mL");
});
