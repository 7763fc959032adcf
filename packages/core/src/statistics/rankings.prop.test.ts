import fc from "fast-check";
import { expect, test } from "vitest";
import {
  plackettLuce,
  rankedSet,
  type RankedSet,
  rankingLogLikelihood,
  type Ranking,
  repeatableRng,
  servedSet,
  shuffled,
  splitOf,
  tieSizes,
} from "./index.ts";
import { ofRanking } from "./ranking-sums.ts";

/** Rankings of some of five items, without ties or with. */
const rankings = (ties: boolean) =>
  fc.array(
    fc
      .tuple(
        fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 2, maxLength: 5 }),
        fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
      )
      .map(([order, level]): Ranking => {
        const groups: number[][] = [];
        order.forEach((item, i) => {
          if (ties && i > 0 && level[i - 1] === true) groups.at(-1)?.push(item);
          else groups.push([item]);
        });
        return groups;
      }),
    { minLength: 4, maxLength: 10 },
  );
const points = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 12, maxLength: 12 });

test("P1 the quick log likelihood is the slow one: plain, and with the place in the serving", () => {
  fc.assert(
    fc.property(fc.boolean().chain(rankings), points, fc.boolean(), fc.nat(), (list, point, served, turn) => {
      const sets: RankedSet[] = list.map((ranking, i) => {
        const order = shuffled(ranking.flat(), repeatableRng(i + (turn % 1000)));
        return {
          ...(served ? servedSet({ ranking, served: order }, 5) : rankedSet(ranking, 5)),
          times: 1 + (i % 3),
        };
      });
      const ties = tieSizes(sets);
      const x = Float64Array.from(point.slice(0, 7 + ties.length));
      const slow = sets.reduce((sum, { appeals, sizes, times }) => {
        const appeal = Float64Array.from(appeals, (terms) =>
          terms.reduce((part, [p, c]) => part + c * (x[p] ?? 0), 0),
        );
        return sum + times * ofRanking(appeal, sizes, ties, x.subarray(7), false).value;
      }, 0);
      const f = rankingLogLikelihood(sets, 7);
      expect(f.value(x)).toBeCloseTo(slow, 9);
      expect(f.curve(x).value).toBeCloseTo(slow, 9);
    }),
  );
});

test("P1 gradient and curvature are the differences of the value, with ties and without", () => {
  fc.assert(
    fc.property(fc.boolean().chain(rankings), points, (list, point) => {
      const f = rankingLogLikelihood(
        list.map((ranking) => rankedSet(ranking, 5)),
        5,
      );
      const x = Float64Array.from(point.slice(0, f.size));
      const { gradient, curvature } = f.curve(x);
      const moved = (i: number, by: number): Float64Array => x.map((v, j) => (j === i ? v + by : v));
      const h = 1e-5;
      for (let i = 0; i < f.size; i += 1) {
        const slope = (f.value(moved(i, h)) - f.value(moved(i, -h))) / (2 * h);
        expect(Math.abs((gradient[i] ?? 0) - slope)).toBeLessThan(1e-5 * (1 + Math.abs(slope)));
        const up = f.curve(moved(i, h)).gradient;
        const down = f.curve(moved(i, -h)).gradient;
        for (let j = 0; j < f.size; j += 1) {
          const bend = -((up[j] ?? 0) - (down[j] ?? 0)) / (2 * h);
          expect(Math.abs((curvature[i * f.size + j] ?? 0) - bend)).toBeLessThan(1e-4 * (1 + Math.abs(bend)));
        }
      }
    }),
    { numRuns: 40 },
  );
});

test("P1 P2 other numbers for the items change nothing but the numbers; a maximum exists or a split shows why not", () => {
  fc.assert(
    fc.property(fc.boolean().chain(rankings), (list) => {
      const turned = list.map((ranking) => ranking.map((group) => group.map((item) => (item + 2) % 5)));
      const [fit, other] = [plackettLuce(list, 5), plackettLuce(turned, 5)];
      expect(other.ok).toBe(fit.ok);
      if (fit.ok && other.ok) {
        const origin = other.logWorth[2] ?? 0;
        // Where worths are far apart the top is flat: their size is the measure.
        fit.logWorth.forEach((w, i) => {
          expect(Math.abs((other.logWorth[(i + 2) % 5] ?? 0) - origin - w)).toBeLessThan(
            1e-5 * (1 + Math.abs(w)),
          );
        });
        expect(other.logLikelihood).toBeCloseTo(fit.logLikelihood, 8);
      }
      if (!fit.ok && fit.code === "always_ahead") {
        const behind = new Set(fit.behind);
        for (const ranking of list) {
          let below = false;
          for (const group of ranking) {
            const low = group.some((item) => behind.has(item));
            const high = group.some((item) => !behind.has(item));
            // Once one of those behind has come, none of those ahead may follow, and no tie may hold both.
            expect(high && (below || low)).toBe(false);
            below = below || low;
          }
        }
        expect([...fit.ahead, ...fit.behind].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4]);
      }
    }),
  );
});

test("P2 a ring of wins hangs together, a chain does not", () => {
  const chain = [0, 1, 2, 3].map((i) => new Set(i < 3 ? [i + 1] : []));
  expect(splitOf(chain)).toMatchObject({ code: "always_ahead" });
  expect(splitOf([0, 1, 2, 3].map((i) => new Set([(i + 1) % 4])))).toBeNull();
});
