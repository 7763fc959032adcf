import { expect, it } from "vitest";
import { density, massFractionFromProof60F, T60F } from "../alcoholometry/index.ts";
import { celsius, massFraction, proof60F } from "../quantity/index.ts";
import { contentsOfVessel, describeContents, foldLedger, type Transfer, WATER } from "./index.ts";

function poured(
  masses: readonly { id: string; ethanolG: number; waterG: number }[],
): ReturnType<typeof describeContents> {
  const transfers = masses.map(
    ({ id, ethanolG, waterG }, seq): Transfer => ({
      id: `t${seq}`,
      seq,
      at: "2026-02-01",
      from: { kind: "outside", name: "shop" },
      to: { kind: "vessel", vesselId: "v" },
      amount: { kind: "liquid", liquidId: id, ethanolG, waterG, cost: null },
    }),
  );
  const result = foldLedger([{ id: "v", capacityMl: 1000 }], transfers);
  if (!result.ok) throw new Error(result.refusal.message);
  return describeContents(contentsOfVessel(result.state, "v"), new Map());
}

it("A3 40 g of ethanol and 60 g of water take up 100 g / 935.15 kg/m³", () => {
  // OIML R 22 (1975), Table I, page 24: 40 % by mass at 20 °C is 935.15 kg/m³, printed to 0.01.
  const { volumeMl } = poured([
    { id: "pure", ethanolG: 40, waterG: 0 },
    { id: WATER, ethanolG: 0, waterG: 60 },
  ]);
  expect(Math.abs(100_000 / volumeMl - 935.15)).toBeLessThanOrEqual(0.005);
});

it("D1 100 gallons of 112 proof and 12.43 of water make 100 proof", () => {
  // 27 CFR 30.66(b): 56.0 / 50.0 x 53.73 - 47.75 = 12.4276 parts of water by the US Gauging Manual's Table 6 (the
  // regulation rounds to 12.42). All at 60 °F. Table 6 is printed to 0.01 part, which is 0.01 proof here.
  const p = massFractionFromProof60F(proof60F(112));
  const spiritG = 0.1 * density(p, celsius(T60F));
  const waterG = 0.0124276 * density(massFraction(0), celsius(T60F));
  const { proof60F: proof } = poured([
    { id: "spirit", ethanolG: spiritG * p, waterG: spiritG * (1 - p) },
    { id: WATER, ethanolG: 0, waterG },
  ]);
  expect(Math.abs((proof ?? 0) - 100)).toBeLessThanOrEqual(0.01);
});
