import fc from "fast-check";
import { expect, test } from "vitest";
import { levelOn } from "./curves.ts";
import { dayOfLevel } from "./day-of-level.ts";
import { drawCurves } from "./draw-curves.ts";
import { MOST_PIECES, openRest, REFERENCE, type RestSettings, type WoodIn } from "./index.ts";
import { usualSettings as settings } from "./fixtures/usual-settings.ts";

const COUNT = 40;
const stays: WoodIn = { caskRatio: 1, thicknessCm: 0.7, use: 1, inDay: 0, outDay: null };
const drawn = (pieces: readonly WoodIn[], over: Partial<RestSettings> = {}) =>
  drawCurves({ ...settings, ...over, pieces }, COUNT);
const days = [0, 0.5, 1, 4, 9, 9.001, 20, 33, 90, 400];
/** The levels of all courses on all days. */
const levels = (curves: ReturnType<typeof drawn>): number[] =>
  days.flatMap((day) => Array.from({ length: COUNT }, (_, i) => levelOn(curves, i, day)));

const share = fc.double({ min: 0.01, max: 20, noNaN: true });
const kind = fc.record({
  thicknessCm: fc.double({ min: 0.05, max: 3, noNaN: true }),
  use: fc.integer({ min: 1, max: 4 }),
  inDay: fc.double({ min: 0, max: 60, noNaN: true }),
});
const course = fc.constantFrom("rises" as const, "rises-and-falls" as const);
const form = fc.constantFrom("two-stage" as const, "peleg" as const);

/** By how many points the two are most apart. */
const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((level, n) => Math.abs(level - (b[n] ?? Number.NaN))));

test("R11 pieces in on the same days give what one of their summed area gives", () => {
  const shares = fc.array(share, { minLength: 2, maxLength: 5 });
  const inFor = fc.option(fc.double({ min: 0, max: 100, noNaN: true }));
  fc.assert(
    fc.property(shares, kind, inFor, course, form, (each, { inDay, ...wood }, held, goes, by) => {
      const outDay = held === null ? null : inDay + held;
      const over = { course: goes, form: by };
      const one = { ...wood, inDay, outDay, caskRatio: each.reduce((sum, ratio) => sum + ratio, 0) };
      const several = each.map((caskRatio) => ({ ...one, caskRatio }));
      expect(apart(levels(drawn(several, over)), levels(drawn([one], over)))).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});

test("R11 one wood in from day 0 that stays is the wood of the conditions", () => {
  fc.assert(
    fc.property(share, kind, course, form, (caskRatio, { thicknessCm, use }, goes, by) => {
      const wood = { caskRatio, thicknessCm, use };
      const over = { course: goes, form: by };
      const plain = drawCurves({ ...settings, ...over, conditions: { ...REFERENCE, ...wood } }, COUNT);
      expect(apart(levels(drawn([{ ...stays, ...wood }], over)), levels(plain))).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});

test("R11 a piece taken out at once adds nothing, one that was in for a while adds something", () => {
  fc.assert(
    fc.property(share, kind, course, (caskRatio, wood, goes) => {
      const at = (outDay: number) => drawn([stays, { ...wood, caskRatio, outDay }], { course: goes });
      expect(levels(at(wood.inDay))).toEqual(levels(drawn([stays], { course: goes })));
      expect(levelOn(at(wood.inDay + 5), 0, 70)).toBeGreaterThan(levelOn(at(wood.inDay), 0, 70));
    }),
    { numRuns: 40 },
  );
});

test("R11 until a piece is out it is as though it stayed; then what only rises stands where it is", () => {
  const out = drawn([{ ...stays, outDay: 9 }]);
  const stayed = drawn([stays]);
  for (let i = 0; i < COUNT; i += 1) {
    for (const day of [1, 5, 9]) expect(levelOn(out, i, day)).toBe(levelOn(stayed, i, day));
    expect(levelOn(out, i, 200)).toBe(levelOn(out, i, 9));
    expect(levelOn(stayed, i, 200)).toBeGreaterThan(levelOn(out, i, 200));
  }
});

test("R11 two pieces by hand: alone 3 and 4 points, at the power 0.5 together 5", () => {
  const one = (value: number): Float64Array => Float64Array.of(value);
  const curves = {
    form: "peleg" as const,
    count: 1,
    before: one(1),
    rise: one(1),
    quick: one(0.4),
    slow: one(1),
    fast: one(6),
    fall: one(0),
    noise: one(1),
    pieces: {
      dosePower: one(0.5),
      each: [
        // Half of its 6 points after its one day: 1 / (1 + 1); twice as fast, three of four parts of its 16 / 3 after 1.5 days.
        { inDay: 0, outDay: 1, rise: one(6), speed: one(1) },
        { inDay: 2, outDay: Infinity, rise: one(16 / 3), speed: one(2) },
      ],
    },
  };
  expect(levelOn(curves, 0, 2)).toBeCloseTo(4, 12);
  expect(levelOn(curves, 0, 3.5)).toBeCloseTo(1 + Math.hypot(3, 4), 12);
  // The first day on which 5.5 points are there: 4.5² = 3² + x², x = √11.25 of 16 / 3, and share s is at s / (1 − s) / 2 days.
  const part = Math.sqrt(11.25) / (16 / 3);
  const day = 2 + part / (1 - part) / 2;
  expect(Math.abs((dayOfLevel(curves, 5.5)[0] ?? 0) / day - 1)).toBeLessThan(1e-4);
  expect(dayOfLevel(curves, 7.2)[0]).toBe(Infinity);
});

test("R11 the day of a level is the first on which it is there, with pieces and where it falls again", () => {
  for (const goes of ["rises", "rises-and-falls"] as const) {
    const curves = drawn(
      [
        { ...stays, outDay: 6 },
        { ...stays, caskRatio: 2, thicknessCm: 0.2, inDay: 25, outDay: 60 },
      ],
      { course: goes },
    );
    let late = 0;
    for (const [i, day] of dayOfLevel(curves, 4.5).entries()) {
      const grid = Array.from({ length: 1500 }, (_, n) => (n + 1) / 10);
      const first = grid.find((when) => levelOn(curves, i, when) >= 4.5) ?? Infinity;
      if (first < Infinity) expect(day).toBeLessThanOrEqual(first + 0.02);
      if (day > 0 && day < Infinity) expect(levelOn(curves, i, day)).toBeCloseTo(4.5, 2);
      if (day > 25 && day < 60) late += 1;
    }
    expect(late).toBeGreaterThan(3);
  }
});

test("R11 the belief is that of the summed area to the last digit; less time in, later or never", () => {
  const tastings = [{ day: 6, level: 3.5 }];
  const read = (pieces: readonly WoodIn[] | null, caskRatio = 1) => {
    const conditions = { ...REFERENCE, caskRatio };
    const { ready, leads, effective } = openRest({ ...settings, conditions, ...(pieces && { pieces }) })(
      tastings,
      8,
    );
    return { ready, leads, effective };
  };
  const half = { ...stays, caskRatio: 0.5 };
  expect(read([half, half])).toEqual(read(null));
  expect(read([half, half, { ...half, inDay: 3, outDay: 3 }])).toEqual(read(null));
  const one = read([half, { ...half, outDay: 7 }]);
  expect(one.ready.never).toBeGreaterThan(read(null).ready.never + 0.02);
  // The same tasting with all of it in says the same of the days before, so one piece out is never worse than both out.
  expect(
    read([
      { ...half, outDay: 7 },
      { ...half, outDay: 7 },
    ]).ready.never,
  ).toBeGreaterThan(one.ready.never);
});

test("R11, R10 pieces that cannot be are refused", () => {
  const open = (pieces: readonly WoodIn[]) => openRest({ ...settings, pieces });
  expect(() => open([])).toThrow("pieces with days of their own requires 1 to 12, got 0");
  const many = Array.from({ length: MOST_PIECES + 1 }, (_, n) => ({ ...stays, inDay: n }));
  expect(() => open(many)).toThrow("pieces with days of their own requires 1 to 12, got 13");
  expect(() => open([{ ...stays, inDay: 5, outDay: 4 }])).toThrow("day out requires 5 to 3650, got 4");
  expect(() => open([{ ...stays, caskRatio: 0, inDay: 1 }])).toThrow(/caskRatio requires/);
});
