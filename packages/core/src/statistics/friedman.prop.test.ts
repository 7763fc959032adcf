import fc from "fast-check";
import { expect, test } from "vitest";
import { type Friedman, friedman } from "./index.ts";

const tables = fc
  .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 1, max: 5 }))
  .chain(([items, judges]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 5 }), { minLength: items, maxLength: items }), {
      minLength: judges,
      maxLength: judges,
    }),
  );
const p = (test: Friedman): number => (test.ok ? test.p : Number.NaN);

test("F3 neither the order of judges nor that of items nor the scale of a judge matters", () => {
  fc.assert(
    fc.property(tables, fc.nat(), (table, turn) => {
      const test = friedman(table);
      const by = turn % (table[0]?.length ?? 1);
      const turned = table.map((row) => [...row.slice(by), ...row.slice(0, by)]);
      const stretched = table.map((row, judge) => row.map((value) => value ** 3 * (judge + 1) - 7));
      const other = friedman(stretched);
      expect(other).toEqual(test);
      const reversed = friedman(table.toReversed());
      expect(reversed.rankSums).toEqual(test.rankSums);
      const moved = friedman(turned);
      expect(moved.rankSums).toEqual([...test.rankSums.slice(by), ...test.rankSums.slice(0, by)]);
      expect(moved.ok).toBe(test.ok);
      if (!test.ok) return;
      expect(p(moved) / test.p).toBeCloseTo(1, 12);
      expect(p(reversed) / test.p).toBeCloseTo(1, 12);
    }),
  );
}, 60_000);

test("F1 W lies from 0 to 1, p from 0 to 1, and sums of ranks add up", () => {
  fc.assert(
    fc.property(tables, (table) => {
      const test = friedman(table);
      const [n, k] = [table.length, test.items];
      expect(test.rankSums.reduce((sum, x) => sum + x, 0)).toBe((n * k * (k + 1)) / 2);
      if (!test.ok) return;
      expect(test.kendallW).toBeGreaterThanOrEqual(0);
      expect(test.kendallW).toBeLessThanOrEqual(1 + 1e-12);
      expect(test.p).toBeGreaterThan(0);
      expect(test.p).toBeLessThanOrEqual(1);
    }),
  );
});

test("F2 a statistic of 0 has p = 1 up to rounding, complete agreement of n judges has p = k!^(1−n)", () => {
  const flat = friedman([
    [1, 2, 3],
    [3, 2, 1],
  ]);
  expect(p(flat)).toBeCloseTo(1, 12);
  const agreed = friedman(Array.from({ length: 6 }, () => [1, 2, 3, 4]));
  expect(p(agreed) * 24 ** 5).toBeCloseTo(1, 12);
});
