import { describe, expect, it } from "vitest";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { liquidOfVolume } from "../alcoholometry/index.ts";
import {
  contentsOfMeasures,
  contentsOfVessel,
  describeContents,
  foldLedger,
  type LiquidFacts,
  type Measure,
  mixDescription,
  WATER,
} from "./index.ts";

// All invented. Equal volumes at one strength bring equal alcohol, so shares can be worked out in the head.
const rye: LiquidFacts = {
  ageYears: 6,
  grains: [
    { grain: "rye", share: 0.8 },
    { grain: "barley", share: 0.2 },
  ],
  casks: [{ species: "American oak", held: "nothing before" }],
};
const malt: LiquidFacts = {
  ageYears: 12,
  grains: [{ grain: "barley", share: 1 }],
  casks: [
    { species: "American oak", held: "bourbon" },
    { species: "European oak", held: "wine" },
  ],
};
const grainy: LiquidFacts = { ageYears: null, grains: null, casks: [] };
const facts = new Map([
  ["rye", rye],
  ["malt", malt],
  ["grainy", grainy],
]);
const measure = (liquidId: string, volumeMl: number, cost: number | null = null): Measure => ({
  liquidId,
  volumeMl,
  abv20: liquidId === WATER ? 0 : 50,
  cost,
});

describe("descriptions", () => {
  it("D1 three liquids of one strength keep it; 300 mL stay 300 mL", () => {
    const it3 = mixDescription([measure("rye", 100), measure("malt", 100), measure("grainy", 100)], facts);
    expect(it3.abv20).toBeCloseTo(50, 9);
    expect(it3.volumeMl).toBeCloseTo(300, 9);
    expect(it3.ethanolG).toBeCloseTo(150 * 0.78924, 3); // 0.78924 g/mL: OIML R 22, ethanol at 20 °C
  });

  it("D1 an empty vessel has no strength, no age, no shares and no cost per litre", () => {
    for (const empty of [describeContents(new Map(), facts), mixDescription([measure("rye", 0)], facts)]) {
      expect(empty).toEqual({
        massG: 0,
        ethanolG: 0,
        waterG: 0,
        volumeMl: 0,
        massFraction: null,
        abv20: null,
        proof60F: null,
        composition: [],
        cost: { known: 0, unpricedShareOfMass: 0, perLitre: null },
        youngestAge: { years: null, why: "empty" },
        grainShares: [],
        unknownGrainShare: 0,
        casks: [],
        unknownCaskShare: 0,
      });
    }
  });

  it("D2 composition by alcohol contributed, largest first; water last with none", () => {
    const { composition } = mixDescription(
      [measure(WATER, 200), measure("rye", 50), measure("malt", 150)],
      facts,
    );
    expect(composition.map(({ liquidId }) => liquidId)).toEqual(["malt", "rye", WATER]);
    expect(composition.map(({ shareOfAlcohol }) => shareOfAlcohol)).toEqual([
      expect.closeTo(0.75, 12),
      expect.closeTo(0.25, 12),
      0,
    ]);
    // 50 % vol at 20 °C is 930.14 kg/m³ (OIML R 22, from memory), water 998.20: 186.03 g and 199.64 g.
    expect(composition[2]?.shareOfMass).toBeCloseTo(199.64 / (199.64 + 186.03), 5);
  });

  it("D2 pure water has mass but no share of any alcohol", () => {
    const water = mixDescription([measure(WATER, 100, 0)], facts);
    expect(water).toMatchObject({
      abv20: 0,
      youngestAge: { years: null, why: "empty" },
      grainShares: [],
      casks: [],
    });
    expect(water).toMatchObject({ unknownGrainShare: 0, unknownCaskShare: 0 });
    expect(water.composition).toMatchObject([{ liquidId: WATER, shareOfAlcohol: 0, shareOfMass: 1 }]);
  });

  it("D3 all priced: 100 mL for 600 and 100 mL for 400 make 5000 a litre", () => {
    const { cost } = mixDescription([measure("rye", 100, 600), measure("malt", 100, 400)], facts);
    expect(cost).toEqual({ known: 1000, unpricedShareOfMass: 0, perLitre: expect.closeTo(5000, 6) });
  });

  it("D3 a liquid of unknown price is a share of the mass, not free; one that cost 0 is free", () => {
    const half = mixDescription([measure("rye", 100, 600), measure("malt", 100, null)], facts).cost;
    expect(half).toEqual({ known: 600, unpricedShareOfMass: expect.closeTo(0.5, 12), perLitre: null });
    const gift = mixDescription([measure("rye", 100, 600), measure("malt", 100, 0)], facts).cost;
    expect(gift).toEqual({ known: 600, unpricedShareOfMass: 0, perLitre: expect.closeTo(3000, 6) });
  });

  it("D3 the same whiskey bought once with and once without a price knows which share is priced", () => {
    const { cost, composition } = mixDescription(
      [measure("rye", 300, 900), measure("rye", 100, null)],
      facts,
    );
    expect(composition).toHaveLength(1);
    expect(cost).toEqual({ known: 900, unpricedShareOfMass: expect.closeTo(0.25, 12), perLitre: null });
  });

  it("D4 youngest age is the youngest whiskey's, and water does not count", () => {
    const { youngestAge } = mixDescription(
      [measure("malt", 100), measure("rye", 1), measure(WATER, 500)],
      facts,
    );
    expect(youngestAge).toEqual({ years: 6, why: "stated", liquidId: "rye" });
  });

  it("D4 one whiskey that states none, or of which nothing is known, leaves no age", () => {
    for (const id of ["grainy", "not in facts"])
      expect(mixDescription([measure("malt", 100), measure(id, 1)], facts).youngestAge).toEqual({
        years: null,
        why: "some liquid states no age",
        liquidId: id,
      });
  });

  it("D4 a trace of 1e-9 of the alcohol does not count, one of 1e-8 does", () => {
    const trace = (ml: number): unknown =>
      mixDescription([measure("malt", 100), measure("rye", ml)], facts).youngestAge.years;
    expect(trace(0.9e-7)).toBe(12);
    expect(trace(1e-6)).toBe(6);
  });

  it("D5 grain shares weigh each bill by its alcohol; unknown bills are an unknown share", () => {
    // half rye (0.8 rye, 0.2 barley), a quarter malt (barley), a quarter unknown
    const got = mixDescription([measure("rye", 200), measure("malt", 100), measure("grainy", 100)], facts);
    expect(got.grainShares).toEqual([
      { grain: "rye", share: expect.closeTo(0.4, 12) },
      { grain: "barley", share: expect.closeTo(0.35, 12) },
    ]);
    expect(got.unknownGrainShare).toBeCloseTo(0.25, 12);
  });

  it("D5 a bill that misses 1 leaves its remainder unknown; one above 1 throws", () => {
    const only = (shares: number[]): ReturnType<typeof mixDescription> =>
      mixDescription(
        [measure("x", 100)],
        new Map([["x", { ...rye, grains: shares.map((share, i) => ({ grain: `g${i}`, share })) }]]),
      );
    expect(only([0.51, 0.3]).unknownGrainShare).toBeCloseTo(0.19, 12);
    expect(only([0.7, 0.2, 0.1]).unknownGrainShare).toBeCloseTo(0, 12);
    expect(() => only([0.7, 0.4])).toThrow(
      /^grain bill of x requires shares of 0 to 1 that add up to at most 1/,
    );
    expect(() => only([-0.1])).toThrow(RangeError);
    expect(() => only([Number.NaN])).toThrow(RangeError);
  });

  it("D6 a whiskey that lay in two kinds of cask counts whole in both", () => {
    const got = mixDescription([measure("rye", 100), measure("malt", 200), measure("grainy", 100)], facts);
    expect(got.casks).toEqual([
      { species: "American oak", held: "bourbon", shareOfAlcohol: expect.closeTo(0.5, 12) },
      { species: "European oak", held: "wine", shareOfAlcohol: expect.closeTo(0.5, 12) },
      { species: "American oak", held: "nothing before", shareOfAlcohol: expect.closeTo(0.25, 12) },
    ]);
    expect(got.unknownCaskShare).toBeCloseTo(0.25, 12);
  });

  it("D7 the preview equals the description of a vessel it was poured into", () => {
    const pours = [measure("rye", 120, 700), measure("malt", 60, null), measure(WATER, 20, 0)];
    const result = foldLedger(
      [{ id: "jar", capacityMl: 250 }],
      pours.map(({ liquidId, volumeMl, abv20: strength, cost }, i) => {
        const masses = liquidOfVolume(millilitres20(volumeMl), abv20(strength));
        return {
          id: `t${i}`,
          seq: i,
          at: "2026-02-01",
          from: { kind: "outside", name: liquidId === WATER ? "tap" : "shop" },
          to: { kind: "vessel", vesselId: "jar" },
          amount: { kind: "liquid", liquidId, ...masses, cost },
        };
      }),
    );
    if (!result.ok) throw new Error(result.refusal.message);
    expect(mixDescription(pours, facts)).toEqual(
      describeContents(contentsOfVessel(result.state, "jar"), facts),
    );
  });

  it("a preview of something that cannot be poured is a caller's bug", () => {
    for (const bad of [
      { ...measure("rye", 10), volumeMl: -1 },
      { ...measure("rye", 10), abv20: 101 },
      { ...measure("rye", 10), cost: -1 },
      { ...measure(WATER, 10), abv20: 1 },
    ])
      expect(() => contentsOfMeasures([bad])).toThrow(RangeError);
  });
});
