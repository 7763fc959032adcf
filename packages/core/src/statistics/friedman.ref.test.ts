import { expect, test } from "vitest";
import { friedmanExactTail } from "./friedman-exact-tail.ts";
import oracle from "./friedman.oracle.json" with { type: "json" };
import published from "./friedman.published.json" with { type: "json" };
import critical from "./friedman.table.json" with { type: "json" };
import { type FriedmanTest, friedman } from "./index.ts";

function told(table: readonly (readonly number[])[], exactStepLimit?: number): FriedmanTest {
  const result = exactStepLimit === undefined ? friedman(table) : friedman(table, { exactStepLimit });
  if (!result.ok) throw new Error(result.code);
  return result;
}

test.each(published.examples)("F1 worked example: $name", (example) => {
  const approximate = told(example.table, 0);
  expect(approximate.rankSums).toEqual(example.rankSums);
  expect(approximate.df).toBe(example.df);
  expect(approximate.statistic).toBeCloseTo(example.statistic, example.digits);
  expect(approximate.p / example.pChiSquare).toBeCloseTo(1, example.digits);
  if (example.kendallW !== null) expect(approximate.kendallW).toBeCloseTo(example.kendallW, example.digits);
  if (example.pExact === null) return;
  const exact = told(example.table);
  expect(exact.method).toBe("exact");
  expect(exact.p / example.pExact).toBeCloseTo(1, 8);
});

test("F2 exact p, statistic and chi-square p agree with enumeration and scipy", () => {
  let worst = 0;
  for (const { table, statistic, pChiSquare, pExact } of oracle.cases) {
    const exact = told(table);
    const [hits = 0, all = 1] = pExact;
    expect(exact.method).toBe("exact");
    expect(exact.statistic).toBeCloseTo(statistic, 10);
    expect(told(table, 0).p).toBeCloseTo(pChiSquare, 10);
    worst = Math.max(worst, Math.abs(exact.p / (hits / all) - 1));
  }
  console.log(`exact Friedman p: largest relative deviation ${worst.toExponential(1)}`);
  expect(oracle.cases.length).toBeGreaterThan(20);
  expect(worst).toBeLessThan(1e-12);
});

// Two cells of the printed table cannot be right; ours are 12.3 (P = 0.0099) and 11.047 (P = 0.0096).
const misprints = new Set(["5 items, 8 judges, 0.01", "4 items, 17 judges, 0.01"]);

// The rest of the file's cells (up to 20, 20, 11 and 5 judges) agree too, but take minutes.
const mostJudges: Readonly<Record<number, number>> = { 3: 20, 4: 17, 5: 8, 6: 4 };

const cells = Object.entries(critical.rows).flatMap(([items, rows]) =>
  rows.flatMap(([judges = 0, five, one]) => [
    { items: Number(items), judges: judges ?? 0, level: 0.05, value: five ?? null },
    { items: Number(items), judges: judges ?? 0, level: 0.01, value: one ?? null },
  ]),
);

test.each([3, 4, 5, 6])(
  "F2 printed critical values for %i items have the printed levels",
  (k) => {
    const all = cells.filter((cell) => cell.items === k && cell.judges <= (mostJudges[k] ?? 0));
    expect(all.length).toBeGreaterThan(5);
    for (const { items, judges, level, value } of all) {
      if (misprints.has(`${items} items, ${judges} judges, ${level}`)) continue;
      const table = Array.from({ length: judges }, () =>
        Array.from({ length: items }, (_, i) => 2 * (i + 1)),
      );
      const tail = (between: number) => friedmanExactTail(table, between, Infinity) ?? Number.NaN;
      // statistic = 12 S / (n k (k+1)) with S = Σ(R − mean)²; doubled ranks make it 4 S, a whole number.
      const perUnit = (judges * items * (items + 1)) / 3;
      const most = (judges ** 2 * items * (items ** 2 - 1)) / 3; // a whole number, complete agreement
      if (value === null) {
        expect(tail(most)).toBeGreaterThan(level);
        continue;
      }
      // Attained values lie 8 apart (ΣR² keeps its parity): find the one the printed figures stand for.
      let between = most - 8 * Math.round((most - value * perUnit) / 8);
      expect(Math.abs(between / perUnit - value)).toBeLessThan(value >= 10 ? 0.0051 : 0.00051);
      const p = tail(between);
      expect(p).toBeLessThanOrEqual(level);
      expect(p).toBeGreaterThan(tail(between + 8));
      while (tail(between) === p) between -= 8;
      expect(tail(between)).toBeGreaterThan(level);
    }
  },
  60_000,
);

test("F4 where few judges make chi-square a poor guess it errs to the larger p in the tail", () => {
  for (const [items, judges] of [
    [3, 5],
    [4, 4],
    [5, 4],
    [6, 4],
  ] as const) {
    const table = Array.from({ length: judges }, () => Array.from({ length: items }, (_, i) => i));
    // Swap neighbours in more and more rows: tables from complete agreement down.
    for (let swaps = 0; swaps < judges; swaps += 1) {
      const worn = table.map((row, judge) => (judge < swaps ? row.toReversed() : row));
      const exact = told(worn);
      if (exact.p > 0.1) continue;
      expect(told(worn, 0).p).toBeGreaterThan(exact.p);
    }
  }
}, 60_000);
