import { expect, test } from "vitest";
import { simulatedHousehold } from "./fixtures/simulated-mixes.ts";
import { mixingInWords } from "./in-words.ts";
import { learnMixing } from "./learn-mixing.ts";

const sure = (mean: number) => ({ mean, sd: 0.5 });
const parts = { peat: sure(8), rye: sure(0), malt: sure(1) };
const mixes = [
  { amounts: { peat: 1, rye: 3 }, noted: sure(7.5) },
  { amounts: { peat: 1, rye: 5, malt: 2 }, noted: sure(8) },
  { amounts: { peat: 2, malt: 2 }, noted: sure(8.5) },
  { amounts: { malt: 3, rye: 1 }, noted: sure(1) },
];

test("M3 a strong part that is not thinned out rules; in words", () => {
  const law = learnMixing({ parts, mixes });
  expect(law).toMatchObject({ law: "strongest", exponent: Infinity, mixes: 4 });
  expect(law.odds.strongest).toBeGreaterThan(law.odds.power);
  expect(mixingInWords("smoke", law)).toMatch(
    /^smoke: the strongest part rules, .*to 1 over the mean, from 4 blends$/,
  );
  expect(law.foretold.mean[0]).toBeCloseTo(2, 0);
  expect(law.foretold.strongest[0]).toBeCloseTo(8, 0);
});

test("M3 an exponent that was put in comes out", () => {
  const levels = { a: 9, b: 0.5, c: 5 };
  const shares = [
    [1, 3, 0],
    [1, 1, 0],
    [1, 1, 2],
    [0, 1, 3],
    [2, 1, 0],
    [1, 6, 1],
    [1, 0, 2],
    [0, 4, 1],
  ];
  const told = learnMixing({
    parts: Object.fromEntries(Object.entries(levels).map(([id, mean]) => [id, { mean, sd: 0.2 }])),
    mixes: shares.map((own) => {
      const all = own.reduce((sum, part) => sum + part, 0);
      const sum = Object.values(levels).reduce(
        (total, level, i) => total + ((own[i] ?? 0) / all) * level ** 2.5,
        0,
      );
      return {
        amounts: Object.fromEntries(Object.keys(levels).map((id, i) => [id, own[i] ?? 0])),
        noted: { mean: sum ** 0.4, sd: 0.2 },
      };
    }),
  });
  expect(told.law).toBe("power");
  expect(told.exponent).toBeGreaterThan(2.2);
  expect(told.exponent).toBeLessThan(2.8);
  expect([told.power.low <= 2.5, told.power.high >= 2.4]).toEqual([true, true]);
  expect(mixingInWords("vanilla", told)).toMatch(
    /^vanilla: strong parts count more than their share \(exponent 2\.\d, /,
  );
});

test("M4 too few mixes, and mixes of parts that taste alike, teach nothing; the order says nothing", () => {
  const few = learnMixing({ parts, mixes: mixes.slice(0, 2) });
  expect(few.law).toBe("mean");
  expect(few.odds.strongest, "though they say a lot").toBeGreaterThan(10);
  expect(mixingInWords("smoke", few)).toContain("not sure enough to go by, from 2 blends");
  const alike = learnMixing({
    parts: { peat: sure(5), rye: sure(5) },
    mixes: Array.from({ length: 12 }, (_, i) => ({ amounts: { peat: 1 + i, rye: 3 }, noted: sure(5) })),
  });
  expect(alike.law).toBe("mean");
  expect(Math.max(alike.odds.power, alike.odds.strongest)).toBeLessThan(1);
  const back = learnMixing({
    parts: Object.fromEntries(Object.entries(parts).toReversed()),
    mixes: mixes.toReversed(),
  });
  expect(back.odds.strongest / learnMixing({ parts, mixes }).odds.strongest).toBeCloseTo(1, 6);
  const some = simulatedHousehold(3, { truth: "mean", mixes: 9 });
  expect(learnMixing(some)).toEqual(learnMixing(some));
});

test.each([
  ["noted", { parts: {}, mixes }],
  ["mean of 0 to 10, got 11", { parts: { ...parts, peat: sure(11) }, mixes }],
  ["spread above 0, got 0", { parts: { ...parts, rye: { mean: 1, sd: 0 } }, mixes }],
  ["amount above 0, got 0", { parts, mixes: [{ amounts: { peat: 0 }, noted: sure(1) }] }],
  ["0 or more, got -1", { parts, mixes: [{ amounts: { peat: -1 }, noted: sure(1) }] }],
  [
    "level of mix 1 requires a mean of 0 to 10, got -1",
    { parts, mixes: [{ amounts: { peat: 1 }, noted: sure(-1) }] },
  ],
])("M5 %s", (what, noted) => {
  expect(() => learnMixing(noted)).toThrow(what);
  expect(() => learnMixing(noted)).toThrow(RangeError);
});
