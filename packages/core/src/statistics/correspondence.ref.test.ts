import fc from "fast-check";
import { expect, test } from "vitest";
import { correspondence, countMap, evenDraw, inEllipse, repeatableRng } from "./index.ts";
import { turnedOnto } from "./ellipse.ts";
import oracle from "./correspondence.oracle.json" with { type: "json" };

const long = process.env["PARTSPROOF_LONG"] === "1";
const farthest = (got: readonly number[], expected: readonly number[]): number =>
  Math.max(...expected.map((x, i) => Math.abs(x - (got[i] ?? Number.NaN))));

test("V9 correspondence agrees with numpy's singular values, and with the published inertias of the smokers", () => {
  let off = 0;
  for (const { counts, inertia, absRows, absColumns } of oracle) {
    const found = correspondence(counts, 2);
    off = Math.max(
      off,
      farthest(found.inertia, inertia),
      ...found.rows.map((row, i) => farthest(row.map(Math.abs), absRows[i] ?? [])),
      ...found.columns.map((row, i) => farthest(row.map(Math.abs), absColumns[i] ?? [])),
    );
  }
  console.log(`correspondence against numpy: off by ${off.toExponential(1)} at most`);
  expect(off).toBeLessThan(1e-10);
  // Greenacre 1984, table 3.1, five kinds of staff by four kinds of smoker: 0.0748, 0.0100, 0.0004 (from memory).
  const smokers = correspondence(oracle[0]?.counts ?? [], 2);
  expect(smokers.inertia.map((x) => Number(x.toFixed(4)))).toEqual([0.0748, 0.01, 0.0004]);
});

test("V9 inertia times the count is chi-square; rows in proportion lie together; nothing moves with the scale", () => {
  const table = fc.array(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 4, maxLength: 4 }), {
    minLength: 3,
    maxLength: 6,
  });
  fc.assert(
    fc.property(table, (counts) => {
      const found = correspondence(counts, 2);
      const total = counts.flat().reduce((sum, x) => sum + x, 0);
      const rows = counts.map((row) => row.reduce((sum, x) => sum + x, 0));
      const columns = [0, 1, 2, 3].map((j) => counts.reduce((sum, row) => sum + (row[j] ?? 0), 0));
      let chi = 0;
      counts.forEach((row, i) =>
        row.forEach((x, j) => {
          const expected = ((rows[i] ?? 0) * (columns[j] ?? 0)) / total;
          chi += (x - expected) ** 2 / expected;
        }),
      );
      expect(found.inertia.reduce((sum, x) => sum + x, 0) * total).toBeCloseTo(chi, 8);
      const twice = correspondence(
        counts.map((row) => row.map((x) => 3 * x)),
        2,
      );
      expect(farthest(twice.inertia, found.inertia)).toBeLessThan(1e-12);
    }),
  );
  const alike = correspondence(
    [
      [2, 4, 6],
      [1, 2, 3],
      [5, 1, 1],
    ],
    2,
  );
  expect(farthest(alike.rows[0] ?? [], alike.rows[1] ?? [])).toBeLessThan(1e-9);
});

test("V9 ellipses of a map of words hold the place of a large panel about as often as they say", () => {
  const chances = [
    [0.8, 0.3, 0.2, 0.5],
    [0.3, 0.7, 0.2, 0.4],
    [0.2, 0.3, 0.8, 0.4],
    [0.5, 0.5, 0.4, 0.4],
  ];
  const rng = repeatableRng(41);
  const used = () => chances.map((row) => row.map((chance) => Number(evenDraw(rng) < chance)));
  const [runs, rows]: [number, string[]] = [long ? 400 : 30, []];
  for (const judges of [6, 12]) {
    let [inside, of] = [0, 0];
    for (let run = 0; run < runs; run += 1) {
      const map = countMap(Array.from({ length: judges }, used), repeatableRng(run));
      const onto = map.rows.map(([x = 0, y = 0]) => [x, y] as const);
      const places = turnedOnto(
        correspondence(chances, 2).rows.map(([x = 0, y = 0]) => [x, y] as const),
        onto,
      );
      places.forEach((place, i) => {
        const ellipse = map.ellipses[i];
        if (ellipse === null || ellipse === undefined) return;
        of += 1;
        inside += Number(inEllipse(ellipse, place));
      });
    }
    rows.push(`${judges} judges ${((100 * inside) / of).toFixed(1)} %`);
    expect(inside / of).toBeGreaterThan(0.85);
  }
  console.log(
    `LONG map of words | 4 glasses, 4 words, ${runs} panels each, 95 % ellipses | hold the true place: ${rows.join(", ")}`,
  );
}, 600_000);

test("V9 tables that are none are refused", () => {
  expect(() =>
    correspondence(
      [
        [1, 0],
        [2, 0],
      ],
      1,
    ),
  ).toThrow("a count in every column, got none in column 1");
  expect(() =>
    correspondence(
      [
        [1, -1],
        [2, 1],
      ],
      1,
    ),
  ).toThrow("counts >= 0, got -1");
  expect(() =>
    correspondence(
      [
        [1, 2],
        [2, 1],
      ],
      2,
    ),
  ).toThrow("1 to 1 axes, got 2");
  expect(() => countMap([], repeatableRng(1))).toThrow("3 judges or more, got 0");
});
