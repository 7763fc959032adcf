import fc from "fast-check";
import { expect, test } from "vitest";
import { arrangements } from "./arrangements.ts";
import { concordance, friedman, page, shuffled } from "./index.ts";
import { seeded } from "./fixtures/seeded.ts";
import { midranks } from "./midranks.ts";

// Snedecor and Cochran's cotton data (potash 144 to 36 lb/acre, 3 blocks), strength by fall of potash; Hollander, Wolfe and Chicken
// example 7.2. L and exact p compiled for this project; rank sums 5, 5, 9, 14, 12.
const cotton = [
  [7.46, 7.17, 7.76, 8.14, 7.63],
  [7.68, 7.57, 7.73, 8.15, 8.0],
  [7.21, 7.8, 7.74, 7.87, 7.93],
];

test("G1 Page's L: the cotton data, L 158, exact p 0.00249247685", () => {
  const { l, p, method } = page(cotton);
  expect(l).toBe(158);
  expect(method).toBe("exact");
  console.log(`Page, cotton: L 158, exact p off by ${Math.abs(p - 0.002492476851851852).toExponential(1)}`);
  expect(p / 0.002492476851851852).toBeCloseTo(1, 12);
});

// Page 1963, table 2, critical values of L at 0.05, 0.01 and 0.001 (from memory): least L whose P is at most the level.
test.each([
  [3, 3, 41, 42, null],
  [3, 6, 79, 81, 83],
  [4, 4, 111, 114, 117],
  [4, 7, 189, 193, 198],
  [5, 5, 244, 251, null],
])(
  "G1 %i items, %i judges: critical at 0.05 from %i, at 0.01 from %i",
  (items, judges, five, one, thousandth) => {
    const exact = lawOfL(items, judges);
    const least = (level: number): number =>
      [...exact.keys()].toSorted((a, b) => a - b).find((l) => (exact.get(l) ?? 1) <= level) ?? 0;
    expect(least(0.05)).toBe(five);
    expect(least(0.01)).toBe(one);
    expect(thousandth === null ? true : least(0.001) === thousandth).toBe(true);
  },
);

/** P(L >= l) from `page` itself, met on random tables and on swaps away from complete agreement. */
function lawOfL(items: number, judges: number): Map<number, number> {
  const rng = seeded(65);
  const met = new Map<number, number>();
  let table = Array.from({ length: judges }, () => Array.from({ length: items }, (_, i) => i));
  for (let step = 0; step < 600; step += 1) {
    const { l, p } = page(table);
    met.set(l, p);
    const judge = rng.below(judges);
    const at = rng.below(items - 1);
    table = table.map((row, j) =>
      j === judge
        ? row.map((x, i) => (i === at ? (row[at + 1] ?? 0) : i === at + 1 ? (row[at] ?? 0) : x))
        : row,
    );
    if (step % 40 === 39) table = table.map(() => Array.from({ length: items }, (_, i) => i));
  }
  return met;
}

test("G2 the exact p is the share of all arrangements of every judge's row, ties kept, with L as large or larger", () => {
  const tables = fc
    .tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 1, max: 3 }))
    .chain(([items, judges]) =>
      fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: items, maxLength: items }), {
        minLength: judges,
        maxLength: judges,
      }),
    );
  const l = (rows: readonly (readonly number[])[]): number =>
    rows.reduce((sum, row) => sum + row.reduce((part, rank, i) => part + (i + 1) * rank, 0), 0);
  fc.assert(
    fc.property(tables, (table) => {
      const ranked = table.map((row) => midranks(row));
      let [all, large] = [0, 0];
      const go = (at: number, rows: number[][]): void => {
        if (at === ranked.length) {
          all += 1;
          if (l(rows) >= l(ranked)) large += 1;
          return;
        }
        for (const order of arrangements(ranked[at] ?? [])) go(at + 1, [...rows, [...order]]);
      };
      go(0, []);
      const { p, mean, sd } = page(table);
      expect(p).toBeCloseTo(large / all, 12);
      const upside = page(table.map((row) => row.toReversed()));
      expect(upside.l).toBeCloseTo(2 * mean - page(table).l, 9);
      expect(sd).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 60 },
  );
});

test("G3 twelve judges of eight glasses are counted exactly; past twelve items the normal law says so", () => {
  const rng = seeded(66);
  const table = Array.from({ length: 12 }, () => shuffled([0, 1, 2, 3, 4, 5, 6, 7], rng));
  const { p, method } = page(table);
  console.log(`LONG Page | 12 judges of 8 items | exact p ${p.toFixed(6)}`);
  expect(method).toBe("exact");
  const near = page(table);
  // The normal approximation is near where judges are many.
  const z = (near.l - near.mean) / near.sd;
  expect(Math.abs(z)).toBeLessThan(5);
  expect(page([Array.from({ length: 13 }, (_, i) => i)]).method).toBe("normal");
  expect(() => page([])).toThrow("page requires at least 1 judge, got 0");
  expect(() => page([[1, 2], [1]])).toThrow("page requires 2 values in row 1, got 1");
});

test("G4 W and Friedman's test are one, and W says how judges correlate on average", () => {
  const rng = seeded(67);
  const table = Array.from({ length: 5 }, () => shuffled([1, 2, 3, 4], rng));
  const [tested, w] = [friedman(table), concordance(table)];
  expect(tested.ok && w.ok && tested.p === w.p && tested.kendallW === w.w).toBe(true);
  // Mean of Spearman's rho over the ten pairs, 1 − 6Σd²/(n(n²−1)).
  let sum = 0;
  for (let i = 0; i < 5; i += 1) {
    for (let j = i + 1; j < 5; j += 1) {
      const squares = [0, 1, 2, 3].reduce(
        (s, c) => s + ((table[i]?.[c] ?? 0) - (table[j]?.[c] ?? 0)) ** 2,
        0,
      );
      sum += 1 - (6 * squares) / 60;
    }
  }
  expect(w.ok ? w.meanCorrelation : null).toBeCloseTo(sum / 10, 12);
  expect(concordance([[1, 1]])).toEqual({ ok: false, code: "nobody_told_any_apart" });
});

test("G5 exact tests find what is not there in at most 5 % of tables: every kind of table counted or drawn", () => {
  const rng = seeded(68);
  const runs = process.env["PARTSPROOF_LONG"] === "1" ? 4000 : 200;
  const rows: string[] = [];
  let most = 0;
  for (const [judges, items] of [
    [3, 3],
    [6, 3],
    [5, 4],
    [8, 4],
    [4, 5],
  ] as const) {
    let [byFriedman, byPage] = [0, 0];
    for (let run = 0; run < runs; run += 1) {
      const table = Array.from({ length: judges }, () =>
        shuffled(
          Array.from({ length: items }, (_, i) => (run % 2 === 0 ? i : Math.floor(i / 2))),
          rng,
        ),
      );
      const tested = friedman(table);
      if (tested.ok && tested.p <= 0.05) byFriedman += 1;
      if (page(table).p <= 0.05) byPage += 1;
    }
    most = Math.max(most, byFriedman / runs, byPage / runs);
    rows.push(
      `${judges} of ${items}: ${((100 * byFriedman) / runs).toFixed(1)} and ${((100 * byPage) / runs).toFixed(1)} %`,
    );
  }
  console.log(
    `LONG false findings at 5 % | ${runs} random tables each, half with ties | Friedman and Page, ${rows.join("; ")}`,
  );
  expect(most).toBeLessThan(0.05 + 4 * Math.sqrt((0.05 * 0.95) / runs));
}, 60_000);
