import fc from "fast-check";
import { expect, test } from "vitest";
import {
  confusionLaw,
  holm,
  knownCount,
  knownLaws,
  knownShare,
  matchLaw,
  shrewdToldLaw,
  toldLaw,
} from "./index.ts";
import { seeded } from "./fixtures/seeded.ts";

const labels = ["a", "b", "c", "d"];
const counts = (list: readonly string[]): Record<string, number> =>
  Object.fromEntries(labels.map((label) => [label, list.filter((x) => x === label).length]));

/** Every way to put different slots on the objects. */
function* labellings(objects: number, slots: readonly string[]): Generator<string[]> {
  if (objects === 0) {
    yield [];
    return;
  }
  for (let i = 0; i < slots.length; i += 1) {
    for (const rest of labellings(objects - 1, [...slots.slice(0, i), ...slots.slice(i + 1)])) {
      yield [slots[i] as string, ...rest];
    }
  }
}

const tables = fc
  .tuple(
    fc.array(fc.constantFrom(...labels), { minLength: 1, maxLength: 4 }),
    fc.array(fc.constantFrom(...labels), { minLength: 0, maxLength: 2 }),
    fc.boolean(),
  )
  .map(([rows, more, same]) => ({ rows, slots: same ? [...rows, ...more] : [...labels, ...more] }));

test("X1 mix-ups of two labels: the law is what going through every labelling gives, with and without right ones", () => {
  fc.assert(
    fc.property(tables, ({ rows, slots }) => {
      const all: bigint[] = rows.map(() => 0n).concat([0n]);
      const wrong = [...all];
      for (const way of labellings(rows.length, slots)) {
        const mixed = way.filter(
          (x, i) => (rows[i] === "a" && x === "b") || (rows[i] === "b" && x === "a"),
        ).length;
        all[mixed] = (all[mixed] as bigint) + 1n;
        if (way.every((x, i) => x !== rows[i])) wrong[mixed] = (wrong[mixed] as bigint) + 1n;
      }
      const ask = { rows: counts(rows), columns: counts(slots), pair: ["a", "b"] as const };
      const trimmed = (law: readonly bigint[]): bigint[] =>
        law.slice(0, law.findLastIndex((x) => x !== 0n) + 1);
      expect(trimmed(confusionLaw(ask).exactly)).toEqual(trimmed(all));
      if (wrong.every((x) => x === 0n))
        expect(() => confusionLaw({ ...ask, noneRight: true })).toThrow("got none");
      else expect(trimmed(confusionLaw({ ...ask, noneRight: true }).exactly)).toEqual(trimmed(wrong));
    }),
    { numRuns: 60 },
  );
  expect(() => confusionLaw({ rows: { a: 1 }, columns: { a: 1 }, pair: ["a", "a"] })).toThrow(
    "two different labels",
  );
});

test("T1 told as one goes: Stirling cycle numbers (OEIS A132393), and the shrewd do no better with different labels", () => {
  const cycles = [
    [0, 1],
    [0, 1, 1],
    [0, 2, 3, 1],
    [0, 6, 11, 6, 1],
    [0, 24, 50, 35, 10, 1],
    [0, 120, 274, 225, 85, 15, 1],
  ];
  for (const [i, row] of cycles.entries()) {
    const names = Array.from({ length: i + 1 }, (_, k) => `n${k}`);
    const offer = Object.fromEntries(names.map((name) => [name, 1]));
    expect(toldLaw(names, offer).exactly).toEqual(row.map(BigInt));
    expect(shrewdToldLaw(names.length, offer).exactly).toEqual(row.map(BigInt));
    // Told makes luck better than not told: the harmonic number instead of 1.
    if (i > 0)
      expect(toldLaw(names, offer).mean).toBeGreaterThan(matchLaw({ rows: offer, columns: offer }).mean);
  }
  expect(() => toldLaw(["a", "a"], { a: 1, b: 1 })).toThrow(
    'an open slot for every object, got none for "a"',
  );
});

test("T1 told as one goes with repeats and names not poured: the laws are what going through every draw gives", () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom("a", "b", "c"), { minLength: 1, maxLength: 5 }),
      fc.nat(),
      (slots, turn) => {
        const n = 1 + (turn % slots.length);
        const law: bigint[] = [];
        for (const draw of labellings(n, slots)) {
          const open: string[] = [...slots];
          let right = 0;
          for (const label of draw) {
            const times = (x: string): number => open.filter((y) => y === x).length;
            const guess = [...new Set(open)].toSorted().reduce((top, x) => (times(x) > times(top) ? x : top));
            if (guess === label) right += 1;
            open.splice(open.indexOf(label), 1);
          }
          law[right] = (law[right] ?? 0n) + 1n;
        }
        const shrewd = shrewdToldLaw(n, counts(slots));
        expect(shrewd.exactly).toEqual(Array.from(shrewd.exactly, (_, k) => law[k] ?? 0n));
        const order = slots.slice(0, n);
        expect(shrewd.mean).toBeGreaterThanOrEqual(
          // Averaged over draws a random guesser has Σ of squared shares, never more than the largest share.
          n / slots.length - 1e-12,
        );
        expect(toldLaw(order, counts(slots)).exactly.reduce((sum, x) => sum + x, 0n)).toBe(
          order.reduce((product, _, i) => product * BigInt(slots.length - i), 1n),
        );
      },
    ),
    { numRuns: 60 },
  );
});

test("K1 knowing K: laws add up to 1, none below K, K = 0 is the matching law, all known is certain", () => {
  fc.assert(
    fc.property(tables, ({ rows, slots }) => {
      const [r, c] = [counts(rows), counts(slots)];
      if (labels.some((label) => (r[label] ?? 0) > (c[label] ?? 0))) return;
      const laws = knownLaws({ rows: r, columns: c });
      laws.forEach((law, known) => {
        expect(law.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
        for (let j = 0; j < known; j += 1) expect(law[j]).toBe(0);
      });
      const luck = matchLaw({ rows: r, columns: c });
      laws[0]?.forEach((p, j) => expect(p).toBeCloseTo(luck.pAtLeast(j) - luck.pAtLeast(j + 1), 12));
      expect(laws[rows.length]?.[rows.length]).toBeCloseTo(1, 12);
    }),
  );
});

test("K2 how many were known: exact intervals cover every number and every share, all outcomes counted", () => {
  let [lowest, lowestShare] = [1, 1];
  for (const n of [3, 4, 5, 6]) {
    const all = Object.fromEntries(Array.from({ length: n }, (_, i) => [`n${i}`, 1]));
    const sheet = { rows: all, columns: all };
    const laws = knownLaws(sheet);
    laws.forEach((law, known) => {
      const covered = law.reduce((sum, p, right) => {
        if (p === 0) return sum;
        const { low, high } = knownCount({ ...sheet, right }).interval;
        return low <= known && known <= high ? sum + p : sum;
      }, 0);
      lowest = Math.min(lowest, covered);
    });
  }
  // Two sheets of four glasses, the share known anything from 0 to 1.
  const four = { a: 1, b: 1, c: 1, d: 1 };
  const laws = knownLaws({ rows: four, columns: four });
  const intervals = Array.from(
    { length: 9 },
    (_, right) =>
      knownShare([
        { rows: four, columns: four, right: Math.min(4, right) },
        { rows: four, columns: four, right: right - Math.min(4, right) },
      ]).interval,
  );
  const rng = seeded(62);
  const runs = process.env["PARTSPROOF_LONG"] === "1" ? 20_000 : 1500;
  for (const share of [0, 0.25, 0.5, 0.75, 1]) {
    let covered = 0;
    for (let run = 0; run < runs; run += 1) {
      let total = 0;
      for (let s = 0; s < 2; s += 1) {
        let known = 0;
        for (let i = 0; i < 4; i += 1) known += rng.below(1000) < share * 1000 ? 1 : 0;
        let u = rng.below(1_000_000) / 1_000_000;
        const law = laws[known] ?? [];
        let right = 0;
        while (right < 4 && u >= (law[right] ?? 0)) u -= law[right++] ?? 0;
        total += right;
      }
      const { low, high } = intervals[total] ?? { low: 0, high: 1 };
      if (low <= share + 1e-9 && share - 1e-9 <= high) covered += 1;
    }
    lowestShare = Math.min(lowestShare, covered / runs);
  }
  console.log(
    `LONG truly known | 3 to 6 glasses, every outcome; ${runs} pairs of sheets at 5 shares | number covered ${(100 * lowest).toFixed(1)} % or more, share ${(100 * lowestShare).toFixed(1)} % or more`,
  );
  expect(lowest).toBeGreaterThanOrEqual(0.95);
  expect(lowestShare).toBeGreaterThanOrEqual(0.95 - 0.015);
});

test("K2 five glasses, three right: two known most likely; nothing right says nothing", () => {
  const five = { a: 1, b: 1, c: 1, d: 1, e: 1 };
  // P(3 right) is 10/120 knowing none, 8/24·… by count: knowing 2 it is P(1 of 3 right) = 3/6; knowing 3, P(0 of 2) = 1/2.
  expect(knownCount({ rows: five, columns: five, right: 3 })).toEqual({
    mostLikely: 2,
    interval: { low: 0, high: 3 },
  });
  const none = knownShare([{ rows: five, columns: five, right: 0 }]);
  expect(none.share).toBe(0);
  expect(none.interval.low).toBe(0);
  expect(knownShare([{ rows: five, columns: five, right: 5 }]).interval.high).toBe(1);
  expect(() => knownCount({ rows: five, columns: five, right: 6 })).toThrow("0 to 5 right, got 6");
  expect(() => knownCount({ rows: five, columns: five, right: 4 })).toThrow(
    "a count that can come up, got 4 right",
  );
});

test("H1 Holm: worked by hand, never below p, never above Bonferroni, in the order of p", () => {
  expect(holm([0.01, 0.04, 0.03]).map((p) => Number(p.toFixed(12)))).toEqual([0.03, 0.06, 0.06]);
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 }), (ps) => {
      holm(ps).forEach((made, i) => {
        expect(made).toBeGreaterThanOrEqual(ps[i] as number);
        expect(made).toBeLessThanOrEqual(Math.min(1, ps.length * (ps[i] as number)));
      });
    }),
  );
  expect(() => holm([1.2])).toThrow("holm requires p from 0 to 1, got 1.2");
});
