import fc from "fast-check";
import { describe, expect, test } from "vitest";

import { evenDraw, fillNormal, repeatableRng } from "../statistics/index.ts";
import { type AgainstSum, mixAgainstSum } from "./mix-against-sum.ts";
import { type KnownProfile, mixedProfile } from "./mixed-profile.ts";

const intensity = fc.record({
  mean: fc.double({ min: 0, max: 10, noNaN: true }),
  sd: fc.double({ min: 0.1, max: 3, noNaN: true }),
});
const profile: fc.Arbitrary<KnownProfile> = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), intensity);

/** One mix by itself. */
const alone = (predicted: KnownProfile, observed: KnownProfile): readonly AgainstSum[] =>
  mixAgainstSum([{ predicted, observed }])[0] ?? [];

describe("M1 a mix as the sum of its parts", () => {
  test("worked by hand: three of one and one of another", () => {
    const parts = [
      { label: "Malt", amount: 3, profile: { smoke: { mean: 8, sd: 1 }, rye: { mean: 2, sd: 1 } } },
      { label: "Rye", amount: 1, profile: { smoke: { mean: 0, sd: 1 } } },
    ];
    const { profile: mixed, unknown } = mixedProfile(parts);
    expect(mixed["smoke"]?.mean).toBeCloseTo(6, 12);
    expect(mixed["smoke"]?.sd).toBeCloseTo(Math.sqrt(9 / 16 + 1 / 16), 12);
    expect(Object.keys(mixed)).toEqual(["smoke"]);
    expect(unknown).toEqual({ rye: ["Rye"] });
  });

  test("never outside its parts, whatever the unit; a part of nothing changes nothing", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0.01, max: 50, noNaN: true }), profile), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        profile,
        (drawn, unit, other) => {
          const parts = drawn.map(([amount, of], i) => ({ label: `${i}`, amount, profile: of }));
          const mixed = mixedProfile(parts);
          for (const [attribute, { mean, sd }] of Object.entries(mixed.profile)) {
            const all = parts.map((part) => part.profile[attribute]);
            expect(mean).toBeGreaterThanOrEqual(Math.min(...all.map((one) => one?.mean ?? NaN)) - 1e-9);
            expect(mean).toBeLessThanOrEqual(Math.max(...all.map((one) => one?.mean ?? NaN)) + 1e-9);
            expect(sd).toBeLessThanOrEqual(Math.max(...all.map((one) => one?.sd ?? NaN)) + 1e-9);
          }
          const scaled = mixedProfile(parts.map((part) => ({ ...part, amount: part.amount * unit })));
          for (const [attribute, { mean }] of Object.entries(mixed.profile))
            expect(scaled.profile[attribute]?.mean).toBeCloseTo(mean, 9);
          expect(mixedProfile([...parts, { label: "none", amount: 0, profile: other }])).toEqual(mixed);
        },
      ),
    );
  });

  test("amounts below 0, or none at all, are refused", () => {
    expect(() => mixedProfile([{ label: "a", amount: -1, profile: {} }])).toThrow(/0 or more, got -1/);
    expect(() => mixedProfile([])).toThrow(/above 0/);
  });
});

describe("M2 a mix against the sum of its parts", () => {
  test("worked by hand: 3 apart with a spread of 1 in all is p = 0.0027 (the normal law's three sigma)", () => {
    const [row] = alone({ a: { mean: 5, sd: 0.6 } }, { a: { mean: 8, sd: 0.8 } });
    expect(row?.p).toBeCloseTo(0.002_699_796, 8);
    expect(row?.became).toBe("more");
    expect(row?.difference?.low).toBeCloseTo(3 - 1.959_963_985, 8);
  });

  test("what one side is silent on is named and has no p; the rest pays for having looked at all of it", () => {
    fc.assert(
      fc.property(profile, profile, (predicted, observed) => {
        const rows = alone(predicted, observed);
        expect(rows.map(({ attribute }) => attribute).toSorted()).toEqual(
          [...new Set([...Object.keys(predicted), ...Object.keys(observed)])].toSorted(),
        );
        for (const row of rows) {
          const known = row.predicted !== null && row.observed !== null;
          expect(row.p !== null).toBe(known);
          if (!known) expect(row.became).toBe(row.predicted === null ? "not predicted" : "not observed");
          else expect(row.pTogether).toBeGreaterThanOrEqual(row.p ?? 0);
        }
        const back = new Map(alone(observed, predicted).map((row) => [row.attribute, row]));
        for (const row of rows) expect(back.get(row.attribute)?.p ?? null).toBe(row.p);
      }),
    );
  });

  test("of several mixes looked at together each pays for all of them", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(profile, profile), { minLength: 2, maxLength: 4 }), (pairs) => {
        const together = mixAgainstSum(pairs.map(([predicted, observed]) => ({ predicted, observed })));
        for (const [i, [predicted, observed]] of pairs.entries()) {
          const own = new Map(alone(predicted, observed).map((row) => [row.attribute, row]));
          for (const row of together[i] ?? []) {
            expect(row.p).toBe(own.get(row.attribute)?.p);
            expect(row.pTogether ?? 0).toBeGreaterThanOrEqual(own.get(row.attribute)?.pTogether ?? 0);
          }
        }
      }),
    );
  });

  // Drawn data: 12 attributes that are the sum of their parts, 2,000 times over.
  test("where mixing does nothing, anything at all is called different at most once in twenty", () => {
    const rng = repeatableRng(7);
    const noise = new Float64Array(24);
    let wrong = 0;
    for (let time = 0; time < 2000; time++) {
      fillNormal(noise, rng);
      const truth = Array.from({ length: 12 }, () => 2 + 6 * evenDraw(rng));
      const said = (from: number, sd: number): KnownProfile =>
        Object.fromEntries(
          truth.map((mean, i) => [`x${i}`, { mean: mean + sd * (noise[from + i] ?? 0), sd }]),
        );
      const rows = alone(said(0, 0.7), said(12, 1.2));
      if (rows.some(({ became }) => became !== "not told apart")) wrong += 1;
    }
    expect(wrong / 2000).toBeLessThan(0.065);
    expect(wrong / 2000).toBeGreaterThan(0.035);
  });
});
