import { expect, test } from "vitest";
import { runProgram } from "../../program.ts";

async function json(...argv: string[]): Promise<Record<string, number>> {
  const { code, stdout, stderr } = await runProgram([...argv, "--json"], {});
  expect(stderr).toBe("");
  expect(code).toBe(0);
  return JSON.parse(stdout) as Record<string, number>;
}

// OIML R 22 (1975), Table I: printed densities, kg/m³. The table rounds to 0.01.
test.each([
  [0.05, 0, 991.27],
  [0.1, 5, 984.51],
  [0.3, 25, 950.63],
  [0.4, 20, 935.15],
  [0.5, 25, 909.77],
  [0.8, 35, 830.2],
  [1, 10, 797.76],
])("density at mass fraction %d and %d °C is the printed %d kg/m³ of OIML R 22", async (p, t, printed) => {
  const { kgPerM3 } = await json("density", "--mass-fraction", String(p), "--celsius", String(t));
  expect(Math.abs((kgPerM3 ?? 0) - printed)).toBeLessThanOrEqual(0.0051);
});

// US Gauging Manual, Table 6: parts of alcohol and specific gravity in vacuum at 60 °F; 200 proof is 0.79389.
test.each([
  [80, 40, 0.95178],
  [100, 50, 0.93426],
  [188, 94, 0.81984],
])(
  "%d proof has the mass per cent that the US Gauging Manual's Table 6 gives",
  async (proof, parts, gravity) => {
    const { massPercent } = await json("convert", "--proof", String(proof));
    expect(Math.abs((massPercent ?? 0) - (parts * 0.79389) / gravity)).toBeLessThan(0.02);
  },
);

// 27 CFR 30.66 (then 186.66), second example: 112 to 100 proof takes 12.42 gallons of water a hundred, all at 60 °F.
test("reducing 112 to 100 proof agrees with 27 CFR 30.66, as far as 20 °C and 60 °F do", async () => {
  const { waterMl } = await json("reduce", "--from", "112proof", "--to", "100 proof", "--volume", "100 ml");
  expect(Math.abs((waterMl ?? 0) - 12.42)).toBeLessThan(0.03);
});

// Lange's Handbook of Chemistry, density at 20 °C relative to water at 4 °C: 0, 44, 46 and 100 % mass.
test("50 mL of water and 50 mL of ethanol come to what Lange's densities give", async () => {
  const mixed = await json("mix", "--part", "1@100", "--part", "1@0", "--volume", "100ml");
  const massG = 50 * 0.78934 + 50 * 0.99823;
  const percent = (100 * 50 * 0.78934) / massG;
  const density = 0.92685 + ((percent - 44) / 2) * (0.92257 - 0.92685);
  expect(Math.abs((mixed["volumeMl"] ?? 0) - massG / density)).toBeLessThan(0.02);
  expect(mixed["contractionMl"]).toBeCloseTo(100 - (mixed["volumeMl"] ?? 0), 10);
});

test("two to one of 62.4 and 46 % vol: the sum the average gets wrong", async () => {
  const mixed = await json("mix", "--part", "2@62.4", "--part", "1@46", "--volume", "750ml");
  expect(mixed["naiveAbv20"]).toBeCloseTo((2 * 62.4 + 46) / 3, 12);
  expect(mixed["abv20"]).toBeGreaterThan(mixed["naiveAbv20"] ?? 100);
  expect((mixed["volumeMl"] ?? 0) + (mixed["contractionMl"] ?? 0)).toBeCloseTo(750, 9);
});
