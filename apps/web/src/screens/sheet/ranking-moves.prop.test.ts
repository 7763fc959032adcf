import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  lower,
  placeText,
  putBetween,
  putLevel,
  raise,
  takeOut,
  tieAbove,
  type Tiers,
} from "./ranking-moves.ts";

/** A ranking of three-digit codes with ties, and one of its codes. */
const ranked = fc
  .uniqueArray(fc.integer({ min: 100, max: 999 }).map(String), { minLength: 1, maxLength: 10 })
  .chain((codes) =>
    fc.record({
      tiers: fc.array(fc.boolean(), { minLength: codes.length, maxLength: codes.length }).map((level) =>
        codes.reduce<string[][]>((tiers, code, i) => {
          const last = tiers.at(-1);
          if (level[i] === true && last !== undefined) last.push(code);
          else tiers.push([code]);
          return tiers;
        }, []),
      ),
      code: fc.constantFrom(...codes),
      at: fc.nat(codes.length),
    }),
  );

const sorted = (tiers: Tiers): readonly string[] => tiers.flat().toSorted();
const placeOf = (tiers: Tiers, code: string): number => tiers.findIndex((tier) => tier.includes(code));

describe("moves in a ranking", () => {
  test("no move loses, doubles or leaves an empty place", () => {
    fc.assert(
      fc.property(ranked, ({ tiers, code, at }) => {
        const level = Math.min(at, tiers.length - 1);
        for (const next of [
          raise(tiers, code),
          lower(tiers, code),
          tieAbove(tiers, code),
          putBetween(tiers, code, Math.min(at, tiers.length)),
          putLevel(tiers, code, level),
        ]) {
          expect(sorted(next)).toEqual(sorted(tiers));
          expect(next.every((tier) => tier.length > 0)).toBe(true);
        }
      }),
    );
  });

  test("the other glasses keep their order and their ties", () => {
    fc.assert(
      fc.property(ranked, ({ tiers, code, at }) => {
        const others = (next: Tiers) => takeOut(next, code);
        for (const next of [
          raise(tiers, code),
          lower(tiers, code),
          tieAbove(tiers, code),
          putBetween(tiers, code, Math.min(at, tiers.length)),
          putLevel(tiers, code, Math.min(at, tiers.length - 1)),
        ]) {
          expect(others(next)).toEqual(others(tiers));
        }
      }),
    );
  });

  test("raising enough comes first and alone, lowering enough last and alone", () => {
    fc.assert(
      fc.property(ranked, ({ tiers, code }) => {
        let up: Tiers = tiers;
        let down: Tiers = tiers;
        for (let i = 0; i < 2 * sorted(tiers).length; i += 1) {
          up = raise(up, code);
          down = lower(down, code);
        }
        expect(up[0]).toEqual([code]);
        expect(down.at(-1)).toEqual([code]);
      }),
    );
  });

  test("level means level: with the place above, or with the place named", () => {
    fc.assert(
      fc.property(ranked, ({ tiers, code, at }) => {
        const place = placeOf(tiers, code);
        const above = tiers[place - 1]?.[0];
        const tied = tieAbove(tiers, code);
        if (above === undefined) expect(tied).toEqual(tiers);
        else expect(placeOf(tied, code)).toBe(placeOf(tied, above));
        const target = tiers[Math.min(at, tiers.length - 1)]?.find((one) => one !== code);
        if (target === undefined) return;
        const put = putLevel(tiers, code, Math.min(at, tiers.length - 1));
        expect(placeOf(put, code)).toBe(placeOf(put, target));
      }),
    );
  });
});

test("a place is told with those that share it", () => {
  const tiers: Tiers = [["101"], ["202", "303"], ["404"]];
  expect(tiers.map((_, i) => placeText(tiers, i))).toEqual(["1", "2–3", "4"]);
});
