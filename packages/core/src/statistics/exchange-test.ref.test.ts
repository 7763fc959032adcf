import fc from "fast-check";
import { expect, test } from "vitest";
import oracle from "./exchange.oracle.json" with { type: "json" };
import { type ExchangeGroup, exchangeTest } from "./index.ts";

const groupsOf = (made: readonly (readonly number[])[]): ExchangeGroup[] =>
  made.map(([own = 0, ...others]) => ({ own, others }));

test("K3 tails agree with scipy's Poisson binomial law, with every choice gone through and with numpy", () => {
  let off = 0;
  for (const { groups, lower, upper } of [...oracle.yesNo, ...oracle.counts, ...oracle.large]) {
    const found = exchangeTest(groupsOf(groups));
    off = Math.max(off, Math.abs(found.lower / lower - 1), Math.abs(found.upper / upper - 1));
  }
  for (const { groups, mean } of oracle.counts)
    off = Math.max(off, Math.abs(exchangeTest(groupsOf(groups)).expected - mean));
  console.log(`exchange test against scipy and numpy: off by ${off.toExponential(1)} at most (relative)`);
  expect(off).toBeLessThan(1e-12);
});

const groups = fc.array(
  fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 2, maxLength: 5 }).map((made) => groupsOf([made])[0]),
  { minLength: 1, maxLength: 6 },
) as fc.Arbitrary<ExchangeGroup[]>;

test("K3 the order of groups and of others does not matter, nor does what all of a group have more", () => {
  fc.assert(
    fc.property(groups, fc.integer({ min: 1, max: 9 }), (made, more) => {
      const { p, lower, leastP } = exchangeTest(made);
      const turned = exchangeTest(
        made.map(({ own, others }) => ({ own, others: others.toReversed() })).toReversed(),
      );
      const raised = exchangeTest(
        made.map(({ own, others }) => ({ own: own + more, others: others.map((x) => x + more) })),
      );
      for (const other of [turned, raised]) {
        expect(other.p).toBeCloseTo(p, 12);
        expect(other.lower).toBeCloseTo(lower, 12);
      }
      expect(p).toBeGreaterThanOrEqual(leastP - 1e-12);
      expect(exchangeTest([...made, { own: 3, others: [] }]).p).toBeCloseTo(p, 12);
    }),
  );
});

test("K3 over all choices p is at most alpha in at most alpha of them", () => {
  fc.assert(
    fc.property(groups, (made) => {
      const all = made.reduce<ExchangeGroup[][]>(
        (chosen, { own, others }) => {
          const values = [own, ...others];
          return chosen.flatMap((before) =>
            values.map((value, i) => [...before, { own: value, others: values.toSpliced(i, 1) }]),
          );
        },
        [[]],
      );
      const ps = all.slice(0, 4000).length === all.length ? all.map((one) => exchangeTest(one).p) : [];
      for (const alpha of [0.01, 0.05, 0.2])
        expect(ps.filter((p) => p <= alpha).length).toBeLessThanOrEqual(alpha * ps.length + 1e-9);
    }),
    { numRuns: 25 },
  );
});

test("K3 by hand, and what is none throws", () => {
  const one = exchangeTest([
    { own: 0, others: [1, 1] },
    { own: 0, others: [2, 1, 1] },
  ]);
  expect(one.lower).toBeCloseTo(1 / 12, 15);
  // The most is 1 + 2, of 2/3 × 1/4: the least p is the twelfth's.
  expect([one.p, one.leastP]).toEqual([one.lower * 2, one.lower * 2]);
  expect(exchangeTest([]).p).toBe(1);
  for (const own of [-1, 0.5, Number.NaN])
    expect(() => exchangeTest([{ own, others: [1] }])).toThrow("whole values of 0 or more, got");
  // Small tails keep their digits: 400 groups of 1 and 0 of two give 2^-400.
  const many = exchangeTest(Array.from({ length: 400 }, () => ({ own: 0, others: [1] })));
  expect(many.lower / 2 ** -400).toBeCloseTo(1, 12);
});
