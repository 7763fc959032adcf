import fc from "fast-check";
import { expect, test } from "vitest";
import { factorial, matchLaw, quotient, reduced } from "./index.ts";

/** Every way to put a different slot on each object, one after another: nothing but a definition. */
function goThroughAll(truth: readonly string[], slots: readonly string[]): bigint[] {
  const cases = Array.from({ length: truth.length + 1 }, () => 0n);
  const used = slots.map(() => false);
  const label = (object: number, right: number): void => {
    if (object === truth.length) {
      cases[right] = (cases[right] ?? 0n) + 1n;
      return;
    }
    slots.forEach((slot, i) => {
      if (used[i]) return;
      used[i] = true;
      label(object + 1, right + (slot === truth[object] ? 1 : 0));
      used[i] = false;
    });
  };
  label(0, 0);
  return cases;
}

const spread = (counts: Record<string, number>): string[] =>
  Object.entries(counts).flatMap(([label, times]) => Array.from({ length: times }, () => label));

const total = (counts: Record<string, number>): number => spread(counts).length;

// "toString" and "__proto__" are labels a careless look-up would take for offered ones.
const counts = (most: number) =>
  fc
    .dictionary(fc.constantFrom("a", "b", "c", "d", "toString", "__proto__"), fc.nat({ max: 3 }))
    .filter((c) => total(c) <= most);
const boards = fc
  .tuple(counts(5), counts(7))
  .filter(([rows, columns]) => total(columns) >= total(rows))
  .map(([rows, columns]) => ({ rows, columns }));

test("M3 any rows and columns give what going through every labelling gives", () => {
  fc.assert(
    fc.property(boards, ({ rows, columns }) => {
      expect(matchLaw({ rows, columns }).exactly).toEqual(goThroughAll(spread(rows), spread(columns)));
    }),
    { numRuns: 400 },
  );
});

const large = fc.dictionary(fc.constantFrom("a", "b", "c", "d", "e", "f"), fc.nat({ max: 8 }), {
  minKeys: 1,
});
const largeBoards = fc
  .tuple(large, large)
  .filter(([rows, columns]) => total(columns) >= total(rows) && total(columns) > 0);

test("M1, M4, M5 total, mean and tails of boards too large to go through", () => {
  fc.assert(
    fc.property(largeBoards, ([rows, columns]) => {
      const law = matchLaw({ rows, columns });
      const [n, m] = [total(rows), total(columns)];
      expect(law.total).toBe(factorial(m) / factorial(m - n));
      const matches = Object.entries(rows).reduce((sum, [l, r]) => sum + BigInt(r * (columns[l] ?? 0)), 0n);
      expect(law.mean).toBe(quotient(matches, BigInt(m)));
      for (let k = 0; k <= n + 1; k += 1) {
        const { numerator, denominator } = law.fractionAtLeast(k);
        expect(reduced(numerator, denominator)).toEqual({ numerator, denominator });
        expect(law.pAtLeast(k)).toBe(quotient(numerator, denominator));
        expect(law.pAtLeast(k)).toBeLessThanOrEqual(law.pAtLeast(k - 1));
        expect(law.exactly[k] ?? 0n).toBeGreaterThanOrEqual(0n);
      }
      expect(law.pAtLeast(0)).toBe(1);
      expect(law.pAtLeast(n + 1)).toBe(0);
    }),
  );
});
