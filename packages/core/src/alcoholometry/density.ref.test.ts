import { expect, test } from "vitest";
import { celsius, massFraction } from "../quantity/index.ts";
import { density } from "./density.ts";
import { LANGE_DENSITY } from "./fixtures/lange-density.data.ts";
import { largestDeviation } from "./fixtures/largest-deviation.ts";
import { misprint } from "./fixtures/off-neighbours.ts";
import { OIML_TABLE_1 } from "./fixtures/oiml-table-1.data.ts";
import { PERRY_DENSITY_20 } from "./fixtures/perry-density-20.data.ts";
import { A, B, C } from "./oiml-r22.data.ts";

const rho = (massPercent: number, t: number) => density(massFraction(massPercent / 100), celsius(t));

test("A1: there are 12 + 6 + 36 coefficients, as in OIML R 22", () => {
  expect([A.length, B.length, ...C.map((row) => row.length)]).toEqual([12, 6, 11, 10, 9, 4, 2]);
});

test("A1: density agrees with OIML R 22 Table I as printed, within 0.005 kg/m³", () => {
  const rows = OIML_TABLE_1.map((cell) => ({
    at: `${cell.massPercent} % mass, ${cell.celsius} °C`,
    ours: rho(cell.massPercent, cell.celsius),
    printed: cell.kgPerM3,
  }));
  const { largest, line } = largestDeviation("OIML R 22 Table I", "kg/m³", rows, [], 0.005);
  console.log(line);
  expect(rows.length).toBe(25);
  expect(largest).toBeLessThanOrEqual(0.005);
});

test("A1: density agrees with Perry's handbook at 20 °C, 0 to 12.8 % mass, within 0.06 kg/m³", () => {
  const rows = PERRY_DENSITY_20.map((row) => ({
    at: `${row.massPercent} % mass`,
    ours: rho(row.massPercent, 20),
    printed: row.kgPerL * 1000,
  }));
  const { largest, line } = largestDeviation("Perry, density at 20 °C", "kg/m³", rows, [], 0.06);
  console.log(line);
  expect(rows.length).toBe(65);
  expect(largest).toBeLessThanOrEqual(0.06);
});

test("A1: density agrees with Lange's handbook at 10, 20, 25 and 30 °C within 0.09 kg/m³", () => {
  // Lange gives density relative to water at 4 °C. 999.972 kg/m³ is water's greatest density (CODATA/IAPWS figure, from
  // memory; OIML R 22 Table I prints 999.97), so this does not lean on the formula under test.
  const waterAt4 = 999.972;
  const columns = [
    { column: "d10", t: 10 },
    { column: "d20", t: 20 },
    { column: "d25", t: 25 },
    { column: "d30", t: 30 },
  ] as const;
  const cells = columns.flatMap(({ column, t }) =>
    LANGE_DENSITY.map((row) => ({
      at: `${row.massPercent} % mass, ${t} °C`,
      ours: rho(row.massPercent, t),
      printed: row[column] * waterAt4,
      suspect: row.suspect === column,
    })),
  );
  const kept = cells.filter((cell) => !cell.suspect);
  const column = LANGE_DENSITY.map((row) => row.d30);
  const leftOut = LANGE_DENSITY.flatMap((row, n) =>
    row.suspect === "d30" ? [`${row.massPercent} % mass, 30 °C: ${misprint(column, n)}`] : [],
  );
  const { largest, line } = largestDeviation("Lange, density at 10 to 30 °C", "kg/m³", kept, leftOut, 0.09);
  console.log(line);
  expect([kept.length, cells.length - kept.length]).toEqual([202, 2]);
  expect(largest).toBeLessThanOrEqual(0.09);
});

test("A1: density gives the figures of a separate evaluation of the formula in 64-bit floats", () => {
  // Computed outside this program from the same coefficients: checks how the terms are summed, not the coefficients.
  const figures: readonly (readonly [number, number, number])[] = [
    [0, 20, 998.20123],
    [1, 20, 789.2391232999144],
    [0.5, 20, 913.7705950261712],
    [0, 0, 999.836933249216],
    [1, 0, 806.2151206271017],
    [1, 40, 771.9323112506908],
    [0.4, 30, 927.6381397743763],
    [0.7, 35, 854.6507911535778],
  ];
  for (const [p, t, printed] of figures) {
    expect(Math.abs(density(massFraction(p), celsius(t)) - printed)).toBeLessThan(1e-9);
  }
});
