import { abv20FromProof60F } from "@partsproof/core/alcoholometry";
import { proof60F } from "@partsproof/core/quantity";
import type { Whiskey } from "@partsproof/house/protocol";
import { describe, expect, test } from "vitest";
import {
  contentsGive,
  factsOf,
  printGive,
  reckonRecipe,
  stockOfContents,
  stockOfWhiskey,
  strengthGive,
} from "./index.ts";

const whiskey = (id: string, abv20: number, more: Partial<Whiskey> = {}): Whiskey => ({
  id,
  version: 1,
  maker: "Invented",
  name: id,
  release: "",
  kind: "other",
  strength: { basis: "abv20", value: abv20 },
  ageYears: null,
  grains: null,
  casks: [],
  distilledAt: null,
  place: null,
  priceMinor: 7000,
  bottleMl: 700,
  availability: "sold",
  note: "",
  profile: null,
  abv20,
  proof60F: abv20 * 2,
  createdAt: "2026-01-01T00:00:00.000Z",
  updatedAt: "2026-01-01T00:00:00.000Z",
  ...more,
});
const strong = whiskey("strong", 62.4, { ageYears: 6, grains: [{ grain: "rye", percent: 100 }] });
const mild = whiskey("mild", 46, {
  ageYears: 12,
  priceMinor: 3500,
  grains: [{ grain: "wheat", percent: 80 }],
});
const stocks = new Map([strong, mild].map((one) => [`whiskey:${one.id}`, stockOfWhiskey(one)]));
const facts = factsOf([strong, mild]);
const slot = (parts: number, one: Whiskey) => ({
  parts,
  of: { kind: "whiskey" as const, whiskeyId: one.id },
});
const reckon = (slots: ReturnType<typeof slot>[], waterTo: number | null, ml = 750) => {
  const water = waterTo === null ? null : { basis: "abv20" as const, value: waterTo };
  const got = reckonRecipe({ slots, waterTo: water }, ml, stocks, facts);
  if (!got.ok) throw new Error(got.why);
  return got;
};

describe("a recipe reckoned in the browser", () => {
  test("equal parts of 120 and 80 proof come to the proof that US Gauging Table 6 gives for them", () => {
    // 27 CFR 30.66, Table 6: parts of alcohol and of water in 100 parts of 120, 80, 100 and 102 proof.
    const table = { p120: [60, 43.71], p80: [40, 63.42], p100: [50, 53.73], p102: [51, 52.74] } as const;
    const ratio = ([alcohol, water]: readonly [number, number]): number => alcohol / water;
    const mixed = (60 + 40) / (table.p120[1] + table.p80[1]);
    const steps = (mixed - ratio(table.p100)) / (ratio(table.p102) - ratio(table.p100));
    const byTable = 100 + 2 * steps;
    const high = whiskey("high", abv20FromProof60F(proof60F(120)));
    const low = whiskey("low", abv20FromProof60F(proof60F(80)));
    const both = new Map([high, low].map((one) => [`whiskey:${one.id}`, stockOfWhiskey(one)]));
    const got = reckonRecipe({ slots: [slot(1, high), slot(1, low)], waterTo: null }, 750, both, new Map());
    const ours = got.ok ? (got.result.proof60F ?? Number.NaN) : Number.NaN;
    console.log(
      `1 : 1 of 120 and 80 proof: ours ${ours.toFixed(3)}, by Table 6 ${byTable.toFixed(3)}, averaged 100`,
    );
    // The table's last digits move its answer by 0.02 proof; equal volumes at 20 °C are not quite equal at 60 °F.
    expect(Math.abs(ours - byTable)).toBeLessThan(0.03);
    expect(byTable).toBeGreaterThan(100.1);
  });

  test("a mix is smaller than what was poured, as old as its youngest, and costs what its parts cost", () => {
    const two = reckon([slot(2, strong), slot(1, mild)], null);
    expect(two.contractionMl).toBeGreaterThan(0);
    expect(two.result.volumeMl).toBeCloseTo(750 - two.contractionMl, 9);
    expect(two.result.youngestAge.years).toBe(6);
    expect(two.result.cost.known).toBeCloseTo(500 * 10 + 250 * 5, 6);
  });

  test("water lands on the strength asked for, and the parts of the whiskeys stay as they were", () => {
    const wet = reckon([slot(2, strong), slot(1, mild)], 46);
    const dry = reckon([slot(2, strong), slot(1, mild)], null);
    expect(wet.result.abv20).toBeCloseTo(46, 9);
    expect(wet.waterMl).toBeGreaterThan(150);
    expect(wet.result.cost.known).toBeCloseTo(dry.result.cost.known, 6);
    expect(wet.result.grainShares).toEqual(
      dry.result.grainShares.map((one) => ({ ...one, share: expect.closeTo(one.share, 9) })),
    );
  });

  test("water that would have to raise the strength is refused with its bound, and nothing is added", () => {
    const high = reckon([slot(1, mild)], 50);
    expect(high.waterRefused).toContain("at most the starting 46");
    expect(high.waterMl).toBe(0);
  });

  test("all parts zero and a part nobody knows are said, not guessed", () => {
    expect(reckonRecipe({ slots: [slot(0, mild)], waterTo: null }, 750, stocks, facts)).toEqual({
      ok: false,
      why: "no parts",
    });
    const unknown = { parts: 1, of: { kind: "whiskey" as const, whiskeyId: "" } };
    expect(reckonRecipe({ slots: [unknown], waterTo: null }, 750, stocks, facts)).toEqual({
      ok: false,
      why: "unknown liquid",
    });
  });

  test("a blend as a part is the same as its whiskeys as parts", () => {
    const { result } = reckon([slot(2, strong), slot(1, mild)], 50);
    const blend = stockOfContents("blend", {
      volumeMl: result.volumeMl,
      massG: result.massG,
      abv20: result.abv20,
      proof60F: result.proof60F,
      composition: result.composition.map((one) => ({ ...one, label: one.liquidId })),
      cost: { knownMinor: result.cost.known, unpricedShareOfMass: 0, perLitreMinor: result.cost.perLitre },
      youngestAge: { years: 6, why: "stated" },
      grainShares: [...result.grainShares],
      unknownGrainShare: result.unknownGrainShare,
      casks: [],
    });
    if (blend === null) throw new Error("a blend that holds something requires a stock, got none");
    const again = reckonRecipe(
      { slots: [{ parts: 1, of: { kind: "batch", batchId: "b" } }], waterTo: null },
      750,
      new Map([["batch:b", blend]]),
      facts,
    );
    if (!again.ok) throw new Error(again.why);
    expect(again.result.abv20).toBeCloseTo(50, 9);
    expect(again.result.volumeMl).toBeCloseTo(750, 6);
    for (const [i, one] of again.result.composition.entries()) {
      expect(one.shareOfAlcohol).toBeCloseTo(result.composition[i]?.shareOfAlcohol ?? Number.NaN, 9);
    }
    expect(again.result.cost.perLitre).toBeCloseTo(result.cost.perLitre ?? Number.NaN, 6);
  });
});

describe("how far a strength may be off", () => {
  test("one whiskey is off by what its label may be off; water thins the doubt", () => {
    expect(strengthGive([{ ml: 700, abv20: 46 }])).toBeCloseTo(0.3, 9);
    const half = strengthGive([
      { ml: 350, abv20: 60 },
      { ml: 350, abv20: 0 },
    ]);
    expect(half).toBeGreaterThan(0.14);
    expect(half).toBeLessThan(0.17);
  });

  test("two whiskeys off the same way leave the mix off by about as much, never by much more", () => {
    const give = strengthGive([
      { ml: 500, abv20: 62.4 },
      { ml: 250, abv20: 46 },
    ]);
    expect(give).toBeGreaterThan(0.29);
    expect(give).toBeLessThan(0.31);
  });

  test("it is printed rounded up, so that no more is claimed than is known", () => {
    expect([0.3, 0.3000001, 0.301, 0.15].map(printGive)).toEqual(["± 0.3", "± 0.3", "± 0.4", "± 0.2"]);
  });

  test("an empty vessel has no strength to be off", () => {
    expect(
      contentsGive({
        volumeMl: 0,
        massG: 0,
        abv20: null,
        proof60F: null,
        composition: [],
        cost: { knownMinor: 0, unpricedShareOfMass: 0, perLitreMinor: null },
        youngestAge: { years: null, why: "empty" },
        grainShares: [],
        unknownGrainShare: 0,
        casks: [],
      }),
    ).toBe(0);
  });
});
