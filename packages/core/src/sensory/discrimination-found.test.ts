import fc from "fast-check";
import { expect, test } from "vitest";
import { differenceP, DISCRIMINATION, discriminationFound, discriminationSets } from "./index.ts";
import { seeded } from "./fixtures/seeded.ts";

const methods = Object.keys(DISCRIMINATION) as (keyof typeof DISCRIMINATION)[];

/**
 * Fewest right answers at the 5 % level, one-sided: triangle, FAO training package, appendix A (the values of ISO 4120 table A.1);
 * duo-trio, ISO 10399 table A.1, and n = 5 by hand (1/32). Where they were read: docs/sources/statistics.md.
 */
const FEWEST = {
  triangle: { 5: 4, 6: 5, 7: 5, 8: 6, 9: 6, 10: 7, 12: 8, 24: 13, 30: 15 },
  duo_trio: { 5: 5, 6: 6, 7: 7, 8: 7, 9: 8, 10: 9, 12: 10, 20: 15 },
} as const;

test.each(Object.entries(FEWEST))(
  "F1 %s: the fewest right answers are those of the published table",
  (method, table) => {
    for (const [n, fewest] of Object.entries(table)) {
      const found = discriminationFound({
        method: method as keyof typeof FEWEST,
        sides: 1,
        answered: Number(n),
        right: fewest,
      });
      expect(found.needed, `${n} answered`).toBe(fewest);
    }
  },
);

test("F1 p is exact, one-sided, and twice the tail for a pair of which nothing was said beforehand", () => {
  expect(discriminationFound({ method: "triangle", sides: 1, answered: 3, right: 3 }).fraction).toBe("1/27");
  // (C(6,5) + 1)/64, twice.
  expect(discriminationFound({ method: "paired", sides: 2, answered: 6, right: 5 }).fraction).toBe("7/32");
  expect(discriminationFound({ method: "paired", sides: 2, answered: 4, right: 2 }).p).toBe(1);
  fc.assert(
    fc.property(
      fc.constantFrom(...methods),
      fc.integer({ min: 1, max: 60 }),
      fc.nat(),
      (method, answered, pick) => {
        const right = pick % (answered + 1);
        const test = method === "paired" ? "two_afc" : method;
        const { p } = discriminationFound({ method, sides: 1, answered, right });
        expect(p).toBeCloseTo(differenceP({ test, right, of: answered }), 12);
      },
    ),
  );
});

test("F2 whatever was found, it is never said that two whiskeys are the same", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...methods),
      fc.constantFrom(1 as const, 2 as const),
      fc.integer({ min: 1, max: 40 }),
      fc.nat(),
      (method, sided, answered, pick) => {
        const sides = method === "paired" ? sided : 1;
        const any = pick % (answered + 1);
        const right = sides === 2 ? Math.max(any, answered - any) : any;
        const { p, sentence, needed } = discriminationFound({ method, sides, answered, right });
        expect(sentence).not.toMatch(/taste|are the same|no difference|identical|cannot be told/);
        expect(sentence).toContain("exact binomial law");
        expect(sentence.includes("hard to put down to luck (")).toBe(p < 0.05);
        expect(sentence.includes("does not rule luck out (")).toBe(p >= 0.05 && p < 0.2);
        expect(sentence.includes("could well be luck (")).toBe(p >= 0.2);
        expect(sentence.includes("does not show that nobody can")).toBe(p >= 0.05);
        expect(needed !== null && right >= needed).toBe(p <= 0.05);
      },
    ),
  );
});

test("F1 counts that cannot be throw, and so does a two-sided test of anything but a pair's larger count", () => {
  const ask = { method: "triangle", sides: 1, answered: 3, right: 4 } as const;
  expect(() => discriminationFound(ask)).toThrow("requires 0 to n right of n answered, got 4 of 3");
  expect(() => discriminationFound({ ...ask, answered: 0, right: 0 })).toThrow(RangeError);
  expect(() => discriminationFound({ ...ask, right: 3, sides: 2 })).toThrow(
    "paired comparison, got 3 of 3 by triangle",
  );
  expect(() => discriminationFound({ method: "paired", sides: 2, answered: 3, right: 1 })).toThrow(
    "larger count",
  );
});

test("T1 what a layout of sets leaves unbalanced is said, and tells neither whiskey from the other", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...methods),
      fc.integer({ min: 1, max: 40 }),
      fc.nat(),
      (method, sets, seed) => {
        const { said, orderImbalance, glasses } = discriminationSets(method, sets, seeded(seed));
        expect(said[0]?.startsWith("Each of")).toBe(orderImbalance === 0);
        expect(said[1]).toBe(
          glasses.A === glasses.B
            ? "Both are poured equally often."
            : "One of the two is poured in one glass more than the other.",
        );
        expect(said.join(" ")).not.toMatch(/\b[AB]\b/);
      },
    ),
  );
});
