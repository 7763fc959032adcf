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

// US Gauging Manual, Table 1 (27 CFR 30.61): true proof by hydrometer reading and °F.
test.each([
  [80, 50, 84.5],
  [90, 50, 94.3],
  [90, 70, 85.7],
  [100, 70, 95.8],
])(
  "a hydrometer that reads %d proof at %d °F: %d by Table 1 of 27 CFR 30.61",
  async (reading, warm, printed) => {
    const { trueProof } = await json(
      "gauge",
      "--reading-proof",
      String(reading),
      "--fahrenheit",
      String(warm),
    );
    expect(Math.abs((trueProof ?? 0) - printed)).toBeLessThanOrEqual(0.15);
  },
);

test("at the temperature of its scale a reading is the strength", async () => {
  const proof = await json("gauge", "--reading-proof", "100", "--fahrenheit", "60");
  expect(proof["trueProof"]).toBeCloseTo(100, 9);
  const abv = await json("gauge", "--reading-abv", "50", "--celsius", "20");
  expect(abv["abv20"]).toBeCloseTo(50, 9);
  const warm = await json("gauge", "--reading-abv", "50", "--celsius", "25");
  expect(warm["abv20"]).toBeLessThan(50);
  const density = await json("gauge", "--reading-density", "948.045", "--celsius", "20");
  expect(density["abv20"]).toBeCloseTo(40, 2);
});

// 27 CFR 30.32(b): 0.125 g from 25 mL is 0.50 g in 100 mL and hides 2 proof.
test("dissolved solids hide what 27 CFR 30.32 says", async () => {
  const { trueProof } = await json("gauge", "--reading-proof", "90", "--fahrenheit", "60", "--solids", "500");
  expect(trueProof).toBeCloseTo(92, 9);
});

// OIML R 22 (1975), Table I: 935.15 kg/m³ at 40 % mass and 20 °C, 927.64 at 30 °C; 47.39 % vol (ours) is 40 % mass.
test("100 mL weighs what OIML R 22 prints, at 20 and at 30 °C", async () => {
  const { abv20 } = await json("convert", "--mass-percent", "40");
  const at = async (t: string) => json("weigh", "--ml", "100", "--abv", String(abv20), "--celsius", t);
  expect(Math.abs(((await at("20"))["grams"] ?? 0) - 93.515)).toBeLessThanOrEqual(0.0006);
  expect(Math.abs(((await at("30"))["grams"] ?? 0) - 92.764)).toBeLessThanOrEqual(0.0006);
});

// OIML D 28 (2004): a scale adjusted in air of 1.2 kg/m³ with weights of 8000 kg/m³.
test("in air a scale shows less, by what the liquid displaces", async () => {
  const vacuum = await json("weigh", "--ml", "100", "--abv", "40");
  const air = await json("weigh", "--ml", "100", "--abv", "40", "--in-air");
  const lift = (1 - 1.2 / (vacuum["kgPerM3"] ?? 0)) / (1 - 1.2 / 8000);
  expect((air["grams"] ?? 0) / (vacuum["grams"] ?? 1)).toBeCloseTo(lift, 12);
  const back = await json("weigh", "--grams", String(air["grams"]), "--abv", "40", "--in-air");
  expect(back["ml20"]).toBeCloseTo(100, 9);
});

// 27 CFR 30.11 and 30.64: 100 wine gallons of 80 proof are 80 proof gallons; a gallon is 3.785411784 L at 60 °F.
test("proof gallons are wine gallons times proof over 100", async () => {
  const { amount } = (await json("convert", "--proof", "80", "--volume", "50l")) as unknown as {
    amount: Record<string, number>;
  };
  expect((amount["proofGallons"] ?? 0) / (amount["wineGallons"] ?? 1)).toBeCloseTo(0.8, 10);
  expect(amount["wineGallons"]).toBeCloseTo(50 / 3.785411784, 1);
});
