import fc from "fast-check";
import { expect, test } from "vitest";
import { seeded } from "./fixtures/seeded.ts";
import { balancedBlocks, blockBalance, blockPlan, evenTurns, nearBalancedBlocks } from "./index.ts";

const sizes = fc
  .integer({ min: 3, max: 16 })
  .chain((v) =>
    fc.tuple(
      fc.constant(v),
      fc.integer({ min: 2, max: Math.min(v - 1, 7) }),
      fc.integer({ min: 1, max: 30 }),
    ),
  );

test("K2 any number of servings: each whiskey served equally often to within one, and the measure is that of the plan", () => {
  fc.assert(
    fc.property(sizes, fc.nat(), ([whiskeys, glasses, servings], seed) => {
      const plan = blockPlan({ whiskeys, glasses, servings, rng: seeded(seed) });
      expect(plan.orders.length).toBe(servings);
      const measured = blockBalance(plan.orders, whiskeys);
      expect(plan).toMatchObject(measured);
      expect(plan.servings[1] - plan.servings[0]).toBeLessThanOrEqual(1);
      const exact = plan.balancedFrom !== null && servings % plan.balancedFrom === 0;
      if (exact) expect(plan.balanced).toBe(true);
      expect(plan.said.some((line) => line.startsWith("That is balanced"))).toBe(plan.balanced);
    }),
    { numRuns: 60 },
  );
});

test("K2 where no balanced design has that many servings the search leaves pairs within two meetings of each other", () => {
  for (const [v, k, b] of [
    [8, 3, 8],
    [8, 4, 10],
    [10, 5, 6],
    [12, 5, 12],
    [16, 5, 16],
    [9, 3, 9],
  ] as const) {
    const { meetings, servings, connected } = blockBalance(nearBalancedBlocks(v, k, b, seeded(v)), v);
    console.log(
      `${v} whiskeys by ${k}, ${b} servings: served ${servings.join("-")}, pairs meet ${meetings.join("-")}`,
    );
    expect(meetings[1] - meetings[0]).toBeLessThanOrEqual(2);
    expect(connected).toBe(true);
  }
});

test("K2 the search finds balance where it is easy to find", () => {
  for (const [v, k] of [
    [4, 2],
    [5, 4],
    [7, 3],
    [7, 4],
  ] as const) {
    const b = balancedBlocks(v, k)?.length ?? 0;
    const { meetings } = blockBalance(nearBalancedBlocks(v, k, b, seeded(5)), v);
    expect(meetings[0]).toBe(meetings[1]);
  }
});

test("K3 turns: in whole designs with vr = bk and k dividing r every whiskey stands at every turn to within one", () => {
  for (const [v, k] of [
    [7, 3],
    [7, 4],
    [8, 4],
    [9, 3],
    [11, 5],
    [13, 4],
  ] as const) {
    const blocks = balancedBlocks(v, k) ?? [];
    const { positionImbalance } = blockBalance(evenTurns(blocks, v, seeded(v)), v);
    expect(positionImbalance, `${v}.${k}`).toBeLessThanOrEqual(1);
  }
});

test("K3 the order is chance: each whiskey comes first in a serving of its own", () => {
  const firsts = new Set(
    Array.from(
      { length: 60 },
      (_, seed) => blockPlan({ whiskeys: 7, glasses: 3, servings: 1, rng: seeded(seed) }).orders[0]?.[0],
    ),
  );
  expect(firsts.size).toBe(7);
});

test("K2 what is not balanced is said with the servings that would be, and islands are named", () => {
  const plan = blockPlan({ whiskeys: 7, glasses: 3, servings: 8, rng: seeded(1) });
  expect(plan.said.join(" ")).toContain(
    "It is not balanced: some pairs are compared less well than others. 14 servings would be.",
  );
  expect(blockPlan({ whiskeys: 11, glasses: 4, servings: 5, rng: seeded(1) }).said.join(" ")).toContain(
    "No balanced plan of this size is on file",
  );
  expect(blockPlan({ whiskeys: 6, glasses: 2, servings: 2, rng: seeded(1) }).said.join(" ")).toContain(
    "cannot be compared at all, not even through others",
  );
});

test("K2 counts out of range throw", () => {
  const rng = seeded(1);
  expect(() => blockPlan({ whiskeys: 7, glasses: 3, servings: 0, rng })).toThrow(
    "a whole 1 to 400 servings, got 0",
  );
  expect(() => blockPlan({ whiskeys: 7, glasses: 7, servings: 3, rng })).toThrow(RangeError);
  expect(() => nearBalancedBlocks(17, 3, 4, rng)).toThrow("got k 3, v 17, 4 servings");
});
