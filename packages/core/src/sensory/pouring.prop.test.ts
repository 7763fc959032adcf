import fc from "fast-check";
import { expect, test } from "vitest";
import { mix } from "../alcoholometry/index.ts";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { alcoholPerTaster, evenStrength, POUR_LESS_G, pourSize, pourToLast, reserve } from "./index.ts";

const water = abv20(0);

test("V1 every evened glass is full and of the strength said, mixed again from its parts", () => {
  const strengths = fc.array(fc.double({ min: 30, max: 70, noNaN: true }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(
      strengths,
      fc.double({ min: 5, max: 40, noNaN: true }),
      fc.boolean(),
      (list, glass, lowest) => {
        const evened = evenStrength(list.map(abv20), millilitres20(glass), lowest ? "lowest" : abv20(30));
        if (!evened.ok) throw new Error(evened.issue.message);
        expect(evened.to).toBe(lowest ? Math.min(...list) : 30);
        for (const [i, { liquidMl, waterMl }] of evened.glasses.entries()) {
          const mixed = mix([
            { volumeMl: liquidMl, abv20: abv20(list[i] ?? 0) },
            { volumeMl: waterMl, abv20: water },
          ]);
          expect(mixed.abv20).toBeCloseTo(evened.to, 8);
          expect(mixed.volumeMl).toBeCloseTo(glass, 8);
          expect(waterMl).toBeGreaterThanOrEqual(0);
        }
      },
    ),
  );
});

test("V1 60 and 43 % vol in glasses of 15 mL: 10.750 mL by the head, a little more water than the head says", () => {
  const evened = evenStrength([abv20(60), abv20(43)], millilitres20(15), "lowest");
  if (!evened.ok) throw new Error(evened.issue.message);
  expect(evened.glasses[0]?.liquidMl).toBeCloseTo((15 * 43) / 60, 10);
  expect(evened.glasses[0]?.waterMl).toBeGreaterThan(15 - 10.75);
  expect(evened.glasses[1]).toEqual({ liquidMl: 15, waterMl: 0, waterG: 0 });
});

test("V1 a strength above the weakest glass is refused with the glasses that are too weak", () => {
  expect(evenStrength([abv20(60), abv20(43), abv20(40)], millilitres20(15), abv20(46))).toEqual({
    ok: false,
    issue: {
      code: "glass_weaker_than_target",
      limit: 40,
      received: 46,
      message: "evening out requires a strength of at most the weakest glass's 40 % vol, got 46 % vol",
    },
    weaker: [1, 2],
  });
  expect(evenStrength([abv20(40)], millilitres20(15), abv20(0))).toMatchObject({
    issue: { code: "target_without_alcohol" },
  });
  expect(() => evenStrength([], millilitres20(15), "lowest")).toThrow("a glass or more, got 0 glasses");
});

test("V2 the pour is what the scarcest whiskey allows, in whole steps, and what was wanted at most", () => {
  const stocks = [
    { name: "Lamplighter's Rest", leftMl: 46, glasses: 4 },
    { name: "Blend № 3", leftMl: 500, glasses: 4 },
  ];
  expect(pourSize({ stocks, wantedMl: 15 })).toEqual({
    ok: true,
    pourMl: 11.5,
    limitedBy: "Lamplighter's Rest",
  });
  expect(pourSize({ stocks, wantedMl: 10 })).toEqual({ ok: true, pourMl: 10, limitedBy: null });
  expect(
    pourSize({ stocks: [{ name: "x", leftMl: 0.9, glasses: 3 }], wantedMl: 1, smallestMl: 0.1, stepMl: 0.1 }),
  ).toMatchObject({
    pourMl: expect.closeTo(0.3, 12) as number,
  });
  expect(pourSize({ stocks: [{ name: "x", leftMl: 19, glasses: 4 }], wantedMl: 15 })).toEqual({
    ok: false,
    issue: {
      code: "too_little_left",
      limit: 20,
      received: 19,
      message: "x requires at least 20 mL for 4 glasses of 5 mL, got 19 mL",
    },
    name: "x",
  });
  expect(pourSize({ stocks: [{ name: "x", leftMl: 0, glasses: 0 }], wantedMl: 15 })).toMatchObject({
    pourMl: 15,
  });
});

const scarce = fc.record({
  leftMl: fc.double({ min: 0, max: 800, noNaN: true }),
  keepMl: fc.double({ min: 0, max: 100, noNaN: true }),
  glasses: fc.integer({ min: 1, max: 12 }),
});

test("V2, V3 nothing is poured that is not there", () => {
  fc.assert(
    fc.property(
      scarce,
      fc.integer({ min: 1, max: 12 }),
      fc.double({ min: 5, max: 30, noNaN: true }),
      (stock, flights, pourMl) => {
        const { usableMl, flights: whole, flightsAtSmallest } = reserve(stock, pourMl);
        expect(usableMl).toBe(Math.max(0, stock.leftMl - stock.keepMl));
        expect(whole * pourMl * stock.glasses).toBeLessThanOrEqual(usableMl + 1e-6);
        expect((whole + 1) * pourMl * stock.glasses).toBeGreaterThan(usableMl - 1e-6);
        expect(whole).toBeLessThanOrEqual(flightsAtSmallest);
        const plan = pourToLast(stock, flights);
        if (plan.ok) {
          expect(plan.pourMl * stock.glasses * flights + plan.overMl).toBeCloseTo(usableMl, 6);
          expect(plan.pourMl).toBeGreaterThanOrEqual(5);
          expect(reserve(stock, plan.pourMl).flights).toBeGreaterThanOrEqual(flights);
        } else {
          expect(plan.flights).toBe(flightsAtSmallest);
          expect(plan.flights).toBeLessThan(flights);
        }
        const pour = pourSize({ stocks: [{ name: "x", ...stock }], wantedMl: pourMl });
        if (pour.ok) expect(pour.pourMl * stock.glasses).toBeLessThanOrEqual(stock.leftMl + 1e-6);
      },
    ),
  );
});

test("V3 100 mL, 20 to keep, 4 glasses a flight", () => {
  const target = { leftMl: 100, keepMl: 20, glasses: 4 };
  expect(reserve(target, 10)).toEqual({ usableMl: 80, flights: 2, flightsAtSmallest: 4 });
  expect(pourToLast(target, 3)).toEqual({ ok: true, pourMl: 6.5, overMl: 2 });
  expect(pourToLast(target, 5)).toMatchObject({
    ok: false,
    flights: 4,
    issue: { message: "5 flights of 4 glasses require at least 100 mL, got 80 mL" },
  });
});

test("V2, V3 amounts that are none throw", () => {
  const stock = { leftMl: 100, keepMl: 0, glasses: 4 };
  expect(() => reserve({ ...stock, leftMl: -1 }, 10)).toThrow("0 mL or more, got -1 mL left");
  expect(() => reserve({ ...stock, glasses: 0 }, 10)).toThrow("a whole 1 or more glasses a flight, got 0");
  expect(() => reserve({ ...stock, smallestMl: 0 }, 10)).toThrow("a smallest pour above 0 mL, got 0 mL");
  expect(() => reserve(stock, 0)).toThrow("a pour requires more than 0 mL, got 0 mL");
  expect(() => pourToLast(stock, 0)).toThrow("a whole 1 or more flights, got 0 flights");
  expect(() => pourToLast(stock, 1, 0)).toThrow("a step requires more than 0 mL, got 0 mL");
  expect(() => pourSize({ stocks: [], wantedMl: 0 })).toThrow("a pour requires more than 0 mL, got 0 mL");
  expect(() => pourSize({ stocks: [{ name: "x", leftMl: -1, glasses: 1 }], wantedMl: 5 })).toThrow(
    "x requires 0 mL or more left, got -1 mL",
  );
  expect(() => pourSize({ stocks: [{ name: "x", leftMl: 1, glasses: 0.5 }], wantedMl: 5 })).toThrow(
    "got 0.5 glasses",
  );
});

// By hand, with % vol the volume of ethanol in 100 mL at 20 °C and ethanol at 0.78924 g/mL (OIML R 22):
// 15 · 0.40 · 0.78924 = 4.735 g; 5 glasses of 15 mL at 60 % vol: 75 · 0.60 · 0.78924 = 35.516 g; 44.36 mL (1.5 US fl oz) at 40 %
// vol: 14.00 g, one US standard drink; 25 mL at 40 % vol: 7.892 g, a little less than one UK unit (10 mL of ethanol).
test.each([
  [[[15, 40]], 4.73544, 0.338, 0.592],
  [Array.from({ length: 5 }, () => [15, 60]), 35.5158, 2.537, 4.439],
  [[[44.36, 40]], 14.0043, 1.0003, 1.7505],
  [[[25, 40]], 7.8924, 0.5637, 0.98655],
  [
    [
      [10, 62.4],
      [10, 46],
      [10, 43],
    ],
    11.949,
    0.8535,
    1.4937,
  ],
] as const)("A2 %j holds the grams worked out by hand", (glasses, grams, us, uk) => {
  const served = alcoholPerTaster(
    glasses.map(([ml = 0, abv = 0]) => ({ volumeMl: millilitres20(ml), abv20: abv20(abv) })),
  );
  expect(served.grams).toBeCloseTo(grams, 2);
  expect(served.usStandardDrinks).toBeCloseTo(us, 3);
  expect(served.ukUnits).toBeCloseTo(uk, 3);
});

test("A3 above 28 g it asks to spit or pour less and says why; below it does not", () => {
  const glasses = (count: number) =>
    alcoholPerTaster(
      Array.from({ length: count }, () => ({ volumeMl: millilitres20(15), abv20: abv20(60) })),
    );
  expect(POUR_LESS_G).toBe(28);
  expect(glasses(3)).toMatchObject({ pourLess: false });
  expect(glasses(4)).toMatchObject({ pourLess: true });
  expect(glasses(4).said).toEqual([
    "28.4 g of alcohol for each taster: 2.0 US standard drinks or 3.6 UK units.",
    "That is more than 28 g, two US standard drinks, the most a day that US guidelines name for a man (one for a woman). Spit, or pour less.",
    "Drink water between the glasses and take your time. After tasting, do not drive, spat or not.",
  ]);
  expect(alcoholPerTaster([{ volumeMl: millilitres20(0.1), abv20: abv20(10) }]).said[0]).toContain(
    "less than 0.1 g",
  );
});

test("A3 whatever is poured, no word of blood and none of being fit to drive", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(60), fc.nat(100)), { maxLength: 12 }), (glasses) => {
      const { said, pourLess, grams } = alcoholPerTaster(
        glasses.map(([ml, abv]) => ({ volumeMl: millilitres20(ml), abv20: abv20(abv) })),
      );
      expect(said.join(" ")).not.toMatch(
        /blood|per mille|promille|fit to|safe to|may drive|can drive|sober/i,
      );
      expect(said.join(" ")).toContain("do not drive");
      expect(pourLess).toBe(grams > 28 + 1e-9);
    }),
  );
});
