import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type History, nextFlight } from "./index.ts";

const WANTED = { glasses: 4, maxParts: 6, start: 3 };

/** Histories of all sorts: two to four whiskeys, recipes that may repeat, rankings with ties that may be of two glasses. */
const histories: fc.Arbitrary<History> = fc.integer({ min: 2, max: 4 }).chain((q) =>
  fc
    .record({
      levels: fc.array(fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 3, maxLength: 3 }), {
        minLength: q,
        maxLength: q,
      }),
      recipes: fc.array(
        fc
          .array(fc.integer({ min: 0, max: 3 }), { minLength: q, maxLength: q })
          .filter((parts) => parts.some((part) => part > 0)),
        { minLength: 1, maxLength: 6 },
      ),
      orders: fc.array(fc.infiniteStream(fc.integer({ min: 0, max: 9 })), { maxLength: 3 }),
    })
    .map(({ levels, recipes, orders }) => ({
      whiskeys: levels.map((own, i) => ({
        id: `w${i}`,
        profile: Object.fromEntries(own.map((value, a) => [`a${a}`, { value, sd: a / 2 }])),
      })),
      tried: recipes.map((parts, r) => ({
        id: `r${r}`,
        parts: Object.fromEntries(parts.map((part, i) => [`w${i}`, part])),
      })),
      rankings: orders.map((stream) => {
        const marks = recipes.map((_, r) => ({ id: `r${r}`, mark: stream.next().value as number }));
        const groups = Map.groupBy(marks, ({ mark }) => mark);
        return [...groups].toSorted(([a], [b]) => b - a).map(([, group]) => group.map(({ id }) => id));
      }),
    })),
);

const runs = { numRuns: process.env["PARTSPROOF_LONG"] === "1" ? 300 : 12 };

describe("laws of the next flight", { timeout: 600_000 }, () => {
  test("L3 L5 finite numbers; different recipes in lowest terms and few enough parts, the anchor first", () => {
    fc.assert(
      fc.property(histories, (history) => {
        const { glasses, posterior, stop } = nextFlight(history, WANTED);
        for (const { mean, sd, pBest } of posterior) {
          expect(Number.isFinite(mean) && sd >= 0 && sd < Infinity).toBe(true);
          expect(pBest >= 0 && pBest <= 1 + 1e-9).toBe(true);
        }
        expect(glasses).toHaveLength(4);
        expect(new Set(glasses.map(({ parts }) => JSON.stringify(parts))).size).toBe(4);
        const best = Math.max(...posterior.map(({ mean }) => mean));
        const share = (parts: Readonly<Record<string, number>>): string => {
          const all = Object.values(parts).reduce((a, b) => a + b, 0);
          return history.whiskeys.map(({ id }) => ((parts[id] ?? 0) / all).toFixed(9)).join();
        };
        const anchors = history.tried
          .filter((_, i) => posterior[i]?.mean === best)
          .map(({ parts }) => share(parts));
        expect(anchors).toContain(share(glasses[0]?.parts ?? {}));
        for (const { parts } of glasses.slice(1))
          expect(Object.values(parts).reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(6);
        expect(stop.why).not.toContain("NaN");
      }),
      runs,
    );
  });

  test("L4 the order of whiskeys, trials, evenings and tied glasses says nothing; the same start, the same flight", () => {
    fc.assert(
      fc.property(histories, (history) => {
        const turned = {
          whiskeys: history.whiskeys.toReversed(),
          tried: history.tried.toReversed(),
          rankings: history.rankings
            .toReversed()
            .map((ranking) => ranking.map((group) => group.toReversed())),
        };
        const [here, there] = [nextFlight(history, WANTED), nextFlight(turned, WANTED)];
        expect(there.glasses).toEqual(here.glasses);
        expect(there.posterior.toReversed()).toEqual(here.posterior);
        expect(there.stop).toEqual(here.stop);
      }),
      runs,
    );
  });
});
