import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";

const abv = (value: number) => ({ basis: "abv20" as const, value });

eachDatabase((database) => {
  describe(`the reckoner (${database})`, () => {
    test("mixes parts with their contraction", async () => {
      await using house = await temporaryHouse(database);
      const mixed = await house.client("reckonMix", {
        body: {
          parts: [
            { parts: 1, strength: abv(100) },
            { parts: 1, strength: abv(0) },
          ],
          volumeMl: 100,
        },
      });
      // OIML R 22 (1975), general formula: 96.463 mL at 20 °C.
      expect(mixed.volumeMl).toBeCloseTo(96.463, 3);
      expect(mixed.contractionMl).toBeCloseTo(3.537, 3);
      expect(mixed.naiveAbv20).toBe(50);
      expect(mixed.abv20).toBeCloseTo(5000 / 96.463, 2);
    });

    test("R1 parts that are all zero are refused", async () => {
      await using house = await temporaryHouse(database);
      const no = house.client("reckonMix", { body: { parts: [{ parts: 0, strength: abv(40) }] } });
      expect(await refusalOf(no)).toMatchObject({
        status: 422,
        issues: [{ code: "parts_all_zero", path: ["parts"] }],
      });
    });

    test("reduces to a strength, from a volume or to one", async () => {
      await using house = await temporaryHouse(database);
      const down = await house.client("reckonReduce", {
        body: { from: abv(60), to: abv(43), volumeMl: 700 },
      });
      expect(down).toMatchObject({ liquidMl: 700, naiveWaterMl: expect.closeTo(700 * (60 / 43 - 1), 9) });
      expect(down.waterMl).toBeGreaterThan(down.naiveWaterMl);
      expect(down.finalMl).toBeLessThan(700 + down.waterMl);
      const fill = await house.client("reckonReduce", {
        body: { from: abv(60), to: abv(43), fillMl: down.finalMl },
      });
      expect(fill.liquidMl).toBeCloseTo(700, 9);
      expect(fill.waterMl).toBeCloseTo(down.waterMl, 9);
      const up = house.client("reckonReduce", { body: { from: abv(43), to: abv(60), volumeMl: 700 } });
      expect(await refusalOf(up)).toMatchObject({
        status: 422,
        issues: [{ code: "target_above_start", path: ["to", "value"], limit: "43 % vol", received: 60 }],
      });
    });

    test("gives the density and converts strengths", async () => {
      await using house = await temporaryHouse(database);
      // OIML R 22 (1975), Table I: mass fraction 40 %, 20 °C, 935.15 kg/m³.
      const { kgPerM3 } = await house.client("reckonDensity", { body: { massFraction: 0.4, celsius: 20 } });
      expect(Math.abs(kgPerM3 - 935.15)).toBeLessThan(0.01);
      const forty = await house.client("reckonConvert", { body: { abv20: 40 } });
      // 40 % vol at 20 °C is 39.931 % at 60 °F (OIML R 22 with 27 CFR 30.11), so 79.86 proof.
      expect(forty.proof60F).toBeCloseTo(79.862, 2);
      const back = await house.client("reckonConvert", { body: { proof60F: forty.proof60F } });
      expect(back.abv20).toBeCloseTo(40, 9);
      const third = await house.client("reckonConvert", { body: { massPercent: forty.massPercent } });
      expect(third.abv20).toBeCloseTo(40, 9);
    });

    test("refuses the density of ice, naming the freezing point", async () => {
      await using house = await temporaryHouse(database);
      const no = house.client("reckonDensity", { body: { massFraction: 0.1, celsius: -20 } });
      expect(await refusalOf(no)).toMatchObject({
        status: 422,
        issues: [{ code: "mixture_frozen", path: ["celsius"], received: -20 }],
      });
    });

    test("tells a strength above 100 with its path", async () => {
      await using house = await temporaryHouse(database);
      const no = house.client("reckonMix", { body: { parts: [{ parts: 1, strength: abv(101) }] } });
      expect((await refusalOf(no)).issues).toMatchObject([
        { code: "strength_too_large", path: ["parts", 0, "strength", "value"], received: 101 },
      ]);
    });

    test("health says which database is kept", async () => {
      await using house = await temporaryHouse(database);
      expect(await house.client("health")).toEqual({ ok: true, database });
    });
  });
});
