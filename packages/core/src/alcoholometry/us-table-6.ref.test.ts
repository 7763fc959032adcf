import { expect, test } from "vitest";
import { celsius, massFraction, proof60F } from "../quantity/index.ts";
import type { Proof60F } from "../quantity/index.ts";
import { density } from "./density.ts";
import { largestDeviation } from "./fixtures/largest-deviation.ts";
import { misprint, offNeighbours } from "./fixtures/off-neighbours.ts";
import { US_GAUGING_TABLE_6 } from "./fixtures/us-gauging-table-6.data.ts";
import { massFractionFromProof60F } from "./proof.ts";
import { T60F } from "./reference-temperatures.ts";
import { gaugingFigures } from "./us-gauging-figures.ts";

const main = US_GAUGING_TABLE_6.filter(({ proof }) => proof >= 80 && proof <= 140);
const rest = US_GAUGING_TABLE_6.filter(({ proof }) => proof < 80 || proof > 140);
const at = (proof: number): string => `${proof} proof`;

/** Cells of a column marked as slips in the transcription, each with what its neighbours say. */
function slips(column: "sgVacuum" | "sgAir"): readonly string[] {
  const figures = US_GAUGING_TABLE_6.map((row) => row[column]);
  return US_GAUGING_TABLE_6.flatMap((row, n) =>
    row.suspect.includes(column) ? [`${row.proof} proof: ${misprint(figures, n)}`] : [],
  );
}

test("Table 6: a cell is left out only when it stands off its own neighbours, ten times as far as any that is kept", () => {
  for (const column of ["sgVacuum", "sgAir"] as const) {
    const figures = US_GAUGING_TABLE_6.map((row) => row[column]);
    const nextToSlip = (n: number): boolean =>
      [-2, -1, 1, 2].some((k) => US_GAUGING_TABLE_6[n + k]?.suspect.includes(column) === true);
    for (const [n, row] of US_GAUGING_TABLE_6.entries()) {
      const off = offNeighbours(figures, n);
      if (off === null || nextToSlip(n)) continue;
      if (row.suspect.includes(column)) expect(Math.abs(off)).toBeGreaterThan(0.0001);
      else expect(Math.abs(off)).toBeLessThan(0.00003);
    }
  }
});

test("A34: specific gravity in vacuum agrees with US Gauging Table 6 within 0.00003, 80 to 140 proof", () => {
  const rows = main.map((row) => ({
    at: at(row.proof),
    ours: gaugingFigures(proof60F(row.proof)).sgVacuum,
    printed: row.sgVacuum,
  }));
  const { largest, line } = largestDeviation(
    "US Gauging Table 6, sp. gr. in vacuum, 80 to 140 proof",
    "",
    rows,
    [],
    0.00003,
  );
  console.log(line);
  expect(rows.length).toBe(31);
  expect(largest).toBeLessThanOrEqual(0.00003);
});

test("A34: parts of water agree with US Gauging Table 6 within 0.012, 80 to 140 proof", () => {
  const rows = main.map((row) => ({
    at: at(row.proof),
    ours: gaugingFigures(proof60F(row.proof)).water,
    printed: row.water,
  }));
  const { largest, line } = largestDeviation(
    "US Gauging Table 6, parts of water, 80 to 140 proof",
    "parts",
    rows,
    [],
    0.012,
  );
  console.log(line);
  expect(largest).toBeLessThanOrEqual(0.012);
});

test("A34: specific gravity in air agrees with US Gauging Table 6 within 0.00003, 80 to 140 proof", () => {
  const rows = main.map((row) => ({
    at: at(row.proof),
    ours: gaugingFigures(proof60F(row.proof)).sgAir,
    printed: row.sgAir,
  }));
  const { largest, line } = largestDeviation(
    "US Gauging Table 6, sp. gr. in air, 80 to 140 proof",
    "",
    rows,
    [],
    0.00003,
  );
  console.log(line);
  expect(largest).toBeLessThanOrEqual(0.00003);
});

test("A34: the other proofs of Table 6 agree within 0.0001 specific gravity and 0.012 parts of water", () => {
  const sg = rest
    .filter((row) => !row.suspect.includes("sgVacuum"))
    .map((row) => ({
      at: at(row.proof),
      ours: gaugingFigures(proof60F(row.proof)).sgVacuum,
      printed: row.sgVacuum,
    }));
  const water = rest.map((row) => ({
    at: at(row.proof),
    ours: gaugingFigures(proof60F(row.proof)).water,
    printed: row.water,
  }));
  const first = largestDeviation(
    "US Gauging Table 6, sp. gr. in vacuum, other proofs",
    "",
    sg,
    slips("sgVacuum"),
    0.0001,
  );
  const second = largestDeviation(
    "US Gauging Table 6, parts of water, other proofs",
    "parts",
    water,
    [],
    0.012,
  );
  console.log(first.line);
  console.log(second.line);
  expect([sg.length, water.length, slips("sgVacuum").length, slips("sgAir").length]).toEqual([68, 69, 1, 2]);
  expect(first.largest).toBeLessThanOrEqual(0.0001);
  expect(second.largest).toBeLessThanOrEqual(0.012);
});

test("A5: proof by OIML's pure ethanol instead of the statute's alcohol agrees with Table 6 within half a digit more", () => {
  // 0.0000333 and 0.0122 unrounded: the printed digits' own rounding (0.000005, 0.005) is added to the bounds.
  const water = density(massFraction(0), celsius(T60F));
  const ethanol = density(massFraction(1), celsius(T60F));
  const mixture = (proof: Proof60F): number => density(massFractionFromProof60F(proof), celsius(T60F));
  const sg = main.map((row) => ({
    at: at(row.proof),
    ours: mixture(proof60F(row.proof)) / water,
    printed: row.sgVacuum,
  }));
  const parts = main.map((row) => ({
    at: at(row.proof),
    ours: (100 * mixture(proof60F(row.proof)) - row.alcohol * ethanol) / water,
    printed: row.water,
  }));
  const first = largestDeviation(
    "US Gauging Table 6, sp. gr., pure ethanol as alcohol",
    "",
    sg,
    [],
    0.000035,
  );
  const second = largestDeviation(
    "US Gauging Table 6, water, pure ethanol as alcohol",
    "parts",
    parts,
    [],
    0.017,
  );
  console.log(first.line);
  console.log(second.line);
  expect(first.largest).toBeLessThanOrEqual(0.000035);
  expect(second.largest).toBeLessThanOrEqual(0.017);
});

test("A34: above 199.97 proof no mixture is that strong by the statute's alcohol, and pure ethanol's figures stand", () => {
  expect(gaugingFigures(proof60F(200)).sgVacuum).toBeCloseTo(0.793818, 6);
  expect(gaugingFigures(proof60F(199.99))).toMatchObject({
    sgVacuum: gaugingFigures(proof60F(200)).sgVacuum,
  });
  expect(gaugingFigures(proof60F(199.9)).sgVacuum).toBeGreaterThan(0.79383);
  expect(gaugingFigures(proof60F(0))).toMatchObject({ alcohol: 0, water: 100, sgVacuum: 1, sgAir: 1 });
});
