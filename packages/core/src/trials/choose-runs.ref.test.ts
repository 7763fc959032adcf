import { expect, test } from "vitest";
import bestKnown from "./best-known.oracle.json" with { type: "json" };
import { type MixtureModel, mixtureTerms } from "../statistics/index.ts";
import {
  type Bound,
  chooseRuns,
  corners,
  logDeterminantOf,
  simplexCentroid,
  simplexLattice,
} from "./index.ts";

const whole = (q: number): Bound[] => Array.from({ length: q }, () => ({ low: 0, high: 1 }));

test.each(bestKnown)(
  "T4 $parts parts, $model, $low to $high, $runs runs: D-efficiency 0.98 of the best known",
  { timeout: 60_000 },
  ({ parts, model, low, high, runs, logDeterminant }) => {
    const bounds = low.map((least, i): Bound => ({ low: least, high: high[i] as number }));
    const found = chooseRuns({ criterion: "D", model: model as MixtureModel, bounds, runs });
    const p = mixtureTerms(model as MixtureModel, parts).length;
    const efficiency = Math.exp(((found?.logDeterminant ?? -Infinity) - logDeterminant) / p);
    expect(efficiency).toBeGreaterThanOrEqual(0.98);
    expect(logDeterminantOf(model as MixtureModel, found?.runs ?? [])).toBeCloseTo(
      found?.logDeterminant ?? 0,
      8,
    );
  },
);

test("T4 the best known is what theory says where theory says it: lattice and centroids", () => {
  const known = bestKnown.filter((row) => "byTheory" in row);
  expect(known.length).toBe(4);
  for (const { logDeterminant, byTheory } of known)
    expect(Math.abs(logDeterminant - (byTheory as number))).toBeLessThan(1e-4);
  // Kiefer 1961: the {q, 2} lattice; Uranisi 1964: corners, midpoints and centroids of three.
  for (const q of [3, 4]) {
    const quadratic = bestKnown.find(
      (row) => row.parts === q && row.model === "quadratic" && "byTheory" in row,
    );
    expect(logDeterminantOf("quadratic", simplexLattice(q, 2))).toBeCloseTo(quadratic?.byTheory as number, 5);
    const cubic = bestKnown.find(
      (row) => row.parts === q && row.model === "special-cubic" && "byTheory" in row,
    );
    const upToThree = simplexCentroid(q).filter((shares) => shares.filter((share) => share > 0).length <= 3);
    expect(logDeterminantOf("special-cubic", upToThree)).toBeCloseTo(cubic?.byTheory as number, 5);
  }
});

test("T1 lattices and centroid plans have the published numbers of mixtures", () => {
  for (const q of [2, 3, 4]) {
    expect(simplexLattice(q, 2).length).toBe((q * (q + 1)) / 2);
    expect(simplexLattice(q, 3).length).toBe((q * (q + 1) * (q + 2)) / 6);
    expect(simplexCentroid(q).length).toBe(2 ** q - 1);
    for (const shares of [...simplexLattice(q, 3), ...simplexCentroid(q)])
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  }
});

test("T2 the flare of McLean and Anderson has its eight published corners", () => {
  // Technometrics 8 (1966) 447: magnesium, sodium nitrate, strontium nitrate, binder; corners from memory.
  const found = corners([
    { low: 0.4, high: 0.6 },
    { low: 0.1, high: 0.5 },
    { low: 0.1, high: 0.5 },
    { low: 0.03, high: 0.08 },
  ]);
  const published = [
    [0.4, 0.1, 0.47, 0.03],
    [0.4, 0.1, 0.42, 0.08],
    [0.6, 0.1, 0.27, 0.03],
    [0.6, 0.1, 0.22, 0.08],
    [0.4, 0.47, 0.1, 0.03],
    [0.4, 0.42, 0.1, 0.08],
    [0.6, 0.27, 0.1, 0.03],
    [0.6, 0.22, 0.1, 0.08],
  ];
  const sorted = (rows: readonly number[][]): string[] =>
    rows.map((row) => row.map((share) => share.toFixed(4)).join(" ")).toSorted();
  expect(sorted(found)).toEqual(sorted(published));
});

test("T2 bounds that leave nothing are refused with their sum", () => {
  expect(() =>
    corners([
      { low: 0.6, high: 1 },
      { low: 0.5, high: 1 },
    ]),
  ).toThrow("at most 1, got 1.1");
  expect(() =>
    corners([
      { low: 0, high: 0.4 },
      { low: 0, high: 0.5 },
    ]),
  ).toThrow("at least 1, got 0.9");
  expect(() =>
    corners([
      { low: 0.5, high: 0.4 },
      { low: 0, high: 1 },
    ]),
  ).toThrow("got 0.5 to 0.4");
  expect(() => chooseRuns({ criterion: "D", model: "quadratic", bounds: whole(3), runs: 5 })).toThrow(
    "6 terms require 6 runs or more, got 5 and 0 known",
  );
});
