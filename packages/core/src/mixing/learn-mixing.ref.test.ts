import { expect, test } from "vitest";
import { integratedEvidence } from "./fixtures/integrated.ts";
import { simulatedHousehold, type Truth } from "./fixtures/simulated-mixes.ts";
import { EXPONENTS, MISFITS } from "./laws.data.ts";
import { learnMixing } from "./learn-mixing.ts";

test("M1 the evidence of each law beside numerical integration, over two parts and over three", {
  timeout: 300_000,
}, () => {
  const long = process.env["PARTSPROOF_LONG"] === "1";
  let [compared, largest] = [0, 0];
  for (let start = 0; compared < (long ? 60 : 8); start += 1) {
    const truth = (["mean", "power", "strongest"] as const)[start % 3] as Truth;
    const { parts, mixes } = simulatedHousehold(start, { truth, mixes: 40 });
    // Of many mixes those of the first few whiskeys alone.
    const ids = Object.keys(parts).slice(0, compared % 4 === 3 ? 3 : 2);
    const few = mixes
      .filter(({ amounts }) => Object.keys(amounts).every((id) => ids.includes(id)))
      .slice(0, 6);
    if (few.length < 3) continue;
    compared += 1;
    const found = learnMixing({ parts, mixes: few }).logEvidence;
    const exact = integratedEvidence(
      ids.map((id) => parts[id]!),
      few.map(({ amounts, noted }) => {
        const all = Object.values(amounts).reduce((sum, part) => sum + part, 0);
        return { shares: ids.map((id) => (amounts[id] ?? 0) / all), noted };
      }),
      MISFITS,
      EXPONENTS,
      ids.length === 2 ? 60 : 24,
    );
    for (const law of ["mean", "power", "strongest"] as const)
      largest = Math.max(largest, Math.abs(found[law] - exact[law]));
  }
  console.log(`LONG mixing evidence | ${compared} cases | log off by ${largest.toFixed(3)} at most`);
  expect(largest).toBeLessThan(0.3);
});
