import { expect, test } from "vitest";
import { proof60F } from "../quantity/index.ts";
import { largestDeviation } from "./fixtures/largest-deviation.ts";
import { US_GAUGING_TABLE_5 } from "./fixtures/us-gauging-table-5.data.ts";
import { poundsPerWineGallon } from "./us-gallons.ts";

const kept = US_GAUGING_TABLE_5.filter((row) => row.misprint === null);
const leftOut = US_GAUGING_TABLE_5.filter((row) => row.misprint !== null).map(
  (row) => `${row.proof} proof: ${row.misprint}`,
);

test("A33: pounds per wine gallon in air at 60 °F agree with US Gauging Table 5 within 0.0008 lb", () => {
  const rows = kept.map((row) => ({
    at: `${row.proof} proof`,
    ours: poundsPerWineGallon(proof60F(row.proof)),
    printed: row.lbPerWineGallon,
  }));
  const { largest, line } = largestDeviation(
    "US Gauging Table 5, wine gallon",
    "lb/gal",
    rows,
    leftOut,
    0.0008,
  );
  console.log(line);
  expect([rows.length, leftOut.length]).toEqual([98, 2]);
  expect(largest).toBeLessThanOrEqual(0.0008);
});

test("A33: pounds per proof gallon agree with US Gauging Table 5 within 0.0008 lb", () => {
  const rows = kept.flatMap((row) =>
    row.lbPerProofGallon === null
      ? []
      : [
          {
            at: `${row.proof} proof`,
            ours: (100 * poundsPerWineGallon(proof60F(row.proof))) / row.proof,
            printed: row.lbPerProofGallon,
          },
        ],
  );
  const { largest, line } = largestDeviation(
    "US Gauging Table 5, proof gallon",
    "lb/gal",
    rows,
    leftOut,
    0.0008,
  );
  console.log(line);
  expect(rows.length).toBe(69);
  expect(largest).toBeLessThanOrEqual(0.0008);
});

test("A33: in vacuum a gallon weighs 0.11 to 0.14 % more", () => {
  for (const proof of [2, 100, 200]) {
    const more = poundsPerWineGallon(proof60F(proof), null) / poundsPerWineGallon(proof60F(proof)) - 1;
    expect(more).toBeGreaterThan(0.001);
    expect(more).toBeLessThan(0.0014);
  }
});
