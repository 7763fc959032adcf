import fc from "fast-check";
import { expect, test } from "vitest";
import { seeded } from "./fixtures/seeded.ts";
import { lateness, lateWeights, orderBalance, servingPlan } from "./index.ts";

const sizes = Array.from({ length: 11 }, (_, i) => i + 2);

test.each(sizes)("D1 %i glasses: imbalances for every panel up to two whole squares, printed", (glasses) => {
  const square = glasses % 2 === 0 ? glasses : 2 * glasses;
  const left: string[] = [];
  for (let tasters = 1; tasters <= 2 * square; tasters += 1) {
    const plan = servingPlan({ glasses, tasters, rng: seeded(tasters) });
    const measured = orderBalance(plan.orders);
    expect(plan).toMatchObject(measured);
    expect(plan.wholeSquare).toBe(square);
    expect(plan.positionImbalance).toBe(tasters % glasses === 0 ? 0 : 1);
    // Half a Williams square of an odd number has every neighbouring pair twice or not at all.
    if (tasters % square === 0) expect(plan.carryOverImbalance).toBe(0);
    else expect(plan.carryOverImbalance).toBeLessThanOrEqual(glasses % 2 === 0 ? 1 : 2);
    left.push(`${tasters}:${plan.positionImbalance}/${plan.carryOverImbalance}`);
  }
  console.log(`${glasses} glasses, tasters:turns/carry-over ${left.join(" ")}`);
});

test("D2 a late glass is never bought with evenness: the best of the same draws without it is no more even", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 7 }),
      fc.integer({ min: 1, max: 12 }),
      fc.nat(),
      (glasses, tasters, seed) => {
        const late = Array.from({ length: glasses }, (_, i) => i);
        const plain = servingPlan({ glasses, tasters, rng: seeded(seed) });
        const lean = servingPlan({ glasses, tasters, rng: seeded(seed), late });
        expect(lean.carryOverImbalance).toBe(plain.carryOverImbalance);
        expect(lean.positionImbalance).toBe(plain.positionImbalance);
        expect(lean.late?.byChance).toBe((glasses + 1) / 2);
        expect(lean.late?.meanTurn).toBe(lateness(lean.orders, late));
        if (tasters % glasses === 0) expect(lean.late?.meanTurn).toBeCloseTo((glasses + 1) / 2, 12);
      },
    ),
    { numRuns: 60 },
  );
});

test("D2 one taster alone has the strongest late, and is told what that gives up; a whole square leaves no room", () => {
  const late = lateWeights([
    { abv20: 62, smoke: 0 },
    { abv20: 40, smoke: 0 },
    { abv20: 46, smoke: 1 },
    { abv20: 43, smoke: null },
  ]);
  expect(late).toEqual([1, 0, expect.closeTo(6 / 22 + 1, 12), expect.closeTo(3 / 22, 12)]);
  const alone = servingPlan({ glasses: 4, tasters: 1, rng: seeded(3), late });
  expect(alone.late?.meanTurn).toBeGreaterThan(3);
  expect(alone.said.join(" ")).toContain(
    "Given up for it: the order says a little about what is in the glass.",
  );
  const four = servingPlan({ glasses: 4, tasters: 4, rng: seeded(3), late });
  expect(four.said).toEqual([
    "Every glass stands at every turn equally often and comes straight after every other equally often.",
    "The strong and smoky glasses come no later than chance has it: the design leaves no room.",
  ]);
});

test("D3 twins stand apart where the design has room", () => {
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 9 }), fc.nat(), (glasses, seed) => {
      const plan = servingPlan({ glasses, tasters: 1, rng: seeded(seed), apart: [[0, glasses - 1]] });
      const [order = []] = plan.orders;
      expect(Math.abs(order.indexOf(0) - order.indexOf(glasses - 1))).toBeGreaterThan(1);
      expect(plan.said).toContain("Two glasses of the same whiskey never stand side by side.");
    }),
    { numRuns: 40 },
  );
  // In the square of 4 every ordered pair is neighbours once: twice in all, whatever is drawn.
  expect(servingPlan({ glasses: 4, tasters: 4, rng: seeded(1), apart: [[0, 1]] }).sideBySide).toBe(2);
});

test("D1 what is left uneven is said with the tasters that would mend it", () => {
  expect(servingPlan({ glasses: 5, tasters: 3, rng: seeded(1) }).said).toEqual([
    "At a turn no glass stands more than once more often than another.",
    expect.stringMatching(/^One glass comes straight after another up to (once|twice) more often/),
    "7 more would make a whole square and leave neither.",
  ]);
  expect(servingPlan({ glasses: 5, tasters: 5, rng: seeded(1) }).said[0]).toBe(
    "Every glass stands at every turn equally often.",
  );
  expect(servingPlan({ glasses: 1, tasters: 2, rng: seeded(1) }).said).toEqual(["One glass has no order."]);
});

test("D1, D2 weights that do not fit throw", () => {
  const rng = seeded(1);
  expect(() => servingPlan({ glasses: 3, tasters: 1, rng, late: [1, 2] })).toThrow(
    "3 weights of 0 or more, got [1, 2]",
  );
  expect(() => servingPlan({ glasses: 2, tasters: 1, rng, late: [1, -1] })).toThrow(RangeError);
  expect(() => servingPlan({ glasses: 13, tasters: 1, rng })).toThrow("1 to 12 glasses, got 13");
  expect(() => lateWeights([{ abv20: 101, smoke: 0 }])).toThrow("0 to 100 % vol, got 101 % vol");
  expect(() => lateWeights([{ abv20: 40, smoke: 2 }])).toThrow("smoke requires 0 to 1, got 2");
  expect(lateWeights([{ abv20: 40, smoke: null }])).toEqual([0]);
  expect(lateness([[0, 1]], [0, 0])).toBeNull();
});

test("D2 what may be told blind is the same whatever the weights and pairs are", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 8 }),
      fc.integer({ min: 1, max: 12 }),
      fc.nat(),
      fc.array(fc.nat({ max: 9 }), { minLength: 8, maxLength: 8 }),
      (glasses, tasters, seed, weights) => {
        const plain = servingPlan({ glasses, tasters, rng: seeded(seed) });
        const late = weights.slice(0, glasses);
        const laden = servingPlan({ glasses, tasters, rng: seeded(seed), late, apart: [[0, 1]] });
        expect(laden.saidBlind).toEqual(plain.saidBlind);
        expect(laden.said.slice(0, laden.saidBlind.length)).toEqual(laden.saidBlind);
      },
    ),
    { numRuns: 60 },
  );
});
