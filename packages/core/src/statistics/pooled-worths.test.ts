import { expect, test } from "vitest";
import {
  drawnRanking,
  judgedBeliefs,
  type JudgedRanking,
  judgedSets,
  pooledWorths,
  rankedSet,
  repeatableRng,
  shuffled,
} from "./index.ts";

/** Rankings by judges who differ a little, ties now and then. */
function drawn(start: number, judges: number, each: number, items: number): JudgedRanking[] {
  const rng = repeatableRng(start);
  return Array.from({ length: judges }, (_, judge) => {
    const own = Array.from({ length: items }, (__, i) => i / 2 + (rng.below(1000) / 1000 - 0.5));
    return Array.from({ length: each }, () => {
      const ranks = drawnRanking(own, rng);
      const order = own.map((__, i) => i).toSorted((a, b) => (ranks[a] ?? 0) - (ranks[b] ?? 0));
      const places = order.map((item) => [item]);
      const ranking =
        rng.below(6) === 0 ? [[...(places[0] ?? []), ...(places[1] ?? [])], ...places.slice(2)] : places;
      return { judge, ranking };
    });
  }).flat();
}

const largest = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number =>
  Math.max(...a.flatMap((row, i) => row.map((x, j) => Math.abs(x - (b[i]?.[j] ?? Number.NaN)))));

test("B8 beliefs around the mode are those of drawing, the nearer the more rankings there are", () => {
  const off = [1, 3, 8].map((each) =>
    Math.max(
      ...[31, 32, 33].map((start) => {
        const rankings = drawn(start, 4, each, 5);
        const drawing = judgedBeliefs(rankings, 5, { rng: repeatableRng(5) });
        const mode = pooledWorths(judgedSets(rankings, 5), 5, { rng: repeatableRng(6) });
        return largest(drawing.common.better, mode.common.better);
      }),
    ),
  );
  console.log(
    `LONG worths of many sheets | 4 judges, 5 items, 1, 3 and 8 rankings each, 3 draws | largest difference of a probability from importance sampling ${off.map((x) => x.toFixed(3)).join(", ")}`,
  );
  expect(Math.max(...off)).toBeLessThan(0.05);
}, 60_000);

test("B8 one judge always the same way, nobody else, a thing poured twice: finite and repeatable", () => {
  const always = Array.from({ length: 6 }, () => ({ judge: 0, set: rankedSet([[0], [1], [2]], 4) }));
  const twice = {
    judge: 1,
    set: { appeals: [[[0, 1]], [[3, 1]], [[0, 1]]] as const, sizes: [1, 1, 1], times: 1 },
  };
  const one = pooledWorths([...always, twice], 4, { rng: repeatableRng(9) });
  expect(pooledWorths([...always, twice], 4, { rng: repeatableRng(9) })).toEqual(one);
  const { better, interval, ranks } = one.common;
  expect(better[0]?.[2]).toBeGreaterThan(0.8);
  expect(interval.every(({ low, high }) => Number.isFinite(low) && low < high)).toBe(true);
  for (const row of ranks) expect(row.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
});

test("B4 certainty grows with judges, not with the sheets of one judge", () => {
  const better = (judges: number, each: number): number => {
    const sets = Array.from({ length: judges }, (_, judge) =>
      Array.from({ length: each }, () => ({ judge, set: rankedSet([[0], [1]], 2) })),
    ).flat();
    return pooledWorths(sets, 2, { rng: repeatableRng(7) }).common.better[0]?.[1] ?? 0;
  };
  expect(better(8, 1)).toBeGreaterThan(better(1, 8) + 0.03);
});

test("P4 two thousand sheets of twelve judges and sixty guests out of eighty items", () => {
  const rng = repeatableRng(41);
  const sets = Array.from({ length: 2000 }, (_, sheet) => {
    const poured = shuffled(
      Array.from({ length: 80 }, (__, i) => i),
      rng,
    ).slice(0, 5);
    const ranks = drawnRanking(
      poured.map((item) => item / 40),
      rng,
    );
    const order = poured.toSorted(
      (a, b) => (ranks[poured.indexOf(a)] ?? 0) - (ranks[poured.indexOf(b)] ?? 0),
    );
    return {
      judge: sheet < 60 ? 12 + sheet : sheet % 12,
      set: rankedSet(
        order.map((item) => [item]),
        80,
      ),
    };
  });
  const found = pooledWorths(sets, 80, { rng: repeatableRng(42) });
  const order = found.common.mean.map((mean, i) => ({ mean, i })).toSorted((a, b) => a.mean - b.mean);
  expect(order.slice(0, 20).every(({ i }) => i < 40)).toBe(true);
}, 60_000);
