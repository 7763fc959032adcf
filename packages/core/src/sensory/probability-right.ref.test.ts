import { expect, test } from "vitest";
import { CHANCE_RIGHT, type DifferenceTest, dPrimeAt, probabilityRight } from "./index.ts";
import oracle from "./probability-right.oracle.json" with { type: "json" };

const tests = Object.keys(CHANCE_RIGHT) as DifferenceTest[];

test("E1 psychometric functions agree with mpmath within 1e-12, and back within 1e-10", () => {
  let forward = 0;
  let back = 0;
  for (const [name, d, printed] of oracle.values as [DifferenceTest, number, string][]) {
    const p = Number(printed);
    forward = Math.max(forward, Math.abs(probabilityRight(name, d) - p));
    if (d >= 0.25 && d <= 5) back = Math.max(back, Math.abs(dPrimeAt(name, p) - d));
  }
  console.log(
    `psychometric functions: off by ${forward.toExponential(1)} at most, d′ by ${back.toExponential(1)}`,
  );
  expect(oracle.values.length).toBeGreaterThan(50);
  expect(forward).toBeLessThan(1e-12);
  expect(back).toBeLessThan(1e-10);
});

// Two decimals, from memory: Ennis, J. Sensory Studies 8 (1993) 353, tables of d′ and the probability of a right answer.
test.each([
  ["triangle", 1, 0.42],
  ["triangle", 2, 0.6],
  ["duo_trio", 1, 0.58],
  ["duo_trio", 2, 0.75],
  ["two_afc", 1, 0.76],
  ["two_afc", 2, 0.92],
  ["three_afc", 1, 0.63],
  ["three_afc", 2, 0.87],
] as const)("E1 %s at d′ %d is right with %d", (name, d, p) => {
  expect(probabilityRight(name, d)).toBeCloseTo(p, 2);
});

test("E2 every function starts at its chance, rises, ends at 1, and is undone by dPrimeAt", () => {
  for (const name of tests) {
    const chance = Number(CHANCE_RIGHT[name].numerator) / Number(CHANCE_RIGHT[name].denominator);
    expect(probabilityRight(name, 1e-9)).toBeCloseTo(chance, 8);
    expect(dPrimeAt(name, chance)).toBe(0);
    expect(dPrimeAt(name, 0)).toBe(0);
    expect(dPrimeAt(name, 1)).toBe(Infinity);
    let before = chance;
    for (let d = 0.25; d <= 8; d += name === "two_out_of_five" ? 1.5 : 0.5) {
      const p = probabilityRight(name, d);
      expect(p).toBeGreaterThan(before);
      if (p < 1 - 1e-6) expect(dPrimeAt(name, p)).toBeCloseTo(d, 8);
      before = p;
    }
    expect(probabilityRight(name, 20)).toBeCloseTo(1, 12);
  }
  expect(() => probabilityRight("triangle", -1)).toThrow("probabilityRight requires d′ from 0 to 20, got -1");
  expect(() => dPrimeAt("triangle", 1.2)).toThrow("dPrimeAt requires a probability from 0 to 1, got 1.2");
});
