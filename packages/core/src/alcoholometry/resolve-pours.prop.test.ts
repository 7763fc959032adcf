import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { mix } from "./mix.ts";
import { mixParts } from "./mix-parts.ts";
import { resolvePours } from "./resolve-pours.ts";
import type { PartPoured, PoursResolved } from "./resolve-pours.ts";

const part = (parts: number, abv: number, pouredMl: number, fixed?: boolean): PartPoured => ({
  parts,
  abv20: abv20(abv),
  pouredMl: millilitres20(pouredMl),
  ...(fixed === undefined ? {} : { fixed }),
});
const parts = fc.array(
  fc.record({
    parts: fc.integer({ min: 1, max: 9 }),
    abv20: between(40, 75).map(abv20),
    pouredMl: between(0, 400).map(millilitres20),
  }),
  { minLength: 2, maxLength: 5 },
);

function solved(answer: ReturnType<typeof resolvePours>): PoursResolved {
  if (!answer.ok) throw new Error(answer.issue.message);
  return answer;
}

test("A30: nothing poured yet: the plan", () => {
  const answer = solved(
    resolvePours({ parts: [part(2, 62.4, 0), part(1, 46, 0)], plannedMl: millilitres20(750) }),
  );
  expect(answer).toMatchObject({
    ratioKept: true,
    strengthKept: true,
    addMl: [500, 250],
    reducingMl: 0,
    worstShareOff: 0,
  });
  const planned = mixParts(
    [
      { parts: 2, abv20: abv20(62.4) },
      { parts: 1, abv20: abv20(46) },
    ],
    millilitres20(750),
  );
  expect(answer.mixture.abv20).toBe(planned.abv20);
});

test("A30: part poured as planned leaves the rest of the plan", () => {
  const answer = solved(
    resolvePours({ parts: [part(2, 62.4, 500), part(1, 46, 100)], plannedMl: millilitres20(750) }),
  );
  expect(answer.addMl).toEqual([0, 150]);
  expect(answer.ratioKept).toBe(true);
});

test("A30: overshot: everything else grows until the ratio is right again", () => {
  fc.assert(
    fc.property(parts, between(1, 500), (all, planned) => {
      const answer = solved(resolvePours({ parts: all, plannedMl: millilitres20(planned) }));
      const totals = all.map((one, n) => one.pouredMl + (answer.addMl[n] ?? 0));
      const unit = (totals[0] ?? 0) / (all[0]?.parts ?? 1);
      for (const [n, one] of all.entries()) {
        expect(answer.addMl[n]).toBeGreaterThanOrEqual(0);
        expect(totals[n]).toBeCloseTo(unit * one.parts, 6);
      }
      expect(answer.ratioKept).toBe(true);
      expect(answer.worstShareOff).toBeLessThan(1e-9);
      // No larger than it must be: some part, or the plan, is at its bound.
      const needed = Math.max(
        planned / all.reduce((sum, one) => sum + one.parts, 0),
        ...all.map((one) => one.pouredMl / one.parts),
      );
      expect(unit).toBeCloseTo(needed, 6);
    }),
  );
});

test("A30: a vessel too small for the ratio is filled exactly; parts with room keep their ratio to one another", () => {
  const answer = solved(
    resolvePours({
      parts: [part(1, 60, 150), part(1, 50, 0), part(2, 45, 0)],
      plannedMl: millilitres20(400),
      capacityMl: millilitres20(450),
    }),
  );
  expect(answer.ratioKept).toBe(false);
  expect(answer.mixture.volumeMl).toBeCloseTo(450, 6);
  expect(answer.addMl[0]).toBe(0);
  expect(answer.addMl[2]).toBeCloseTo(2 * (answer.addMl[1] ?? 0), 9);
  // 150 of about 450.8 poured instead of a quarter.
  expect(answer.worstShareOff).toBeCloseTo(150 / (150 + 3 * (answer.addMl[1] ?? 0)) - 0.25, 12);
});

test("A30: with and without a vessel, any state: what is in stays, the vessel is never overfilled", () => {
  fc.assert(
    fc.property(
      parts,
      between(1, 500),
      between(50, 3000),
      fc.option(between(20, 60)),
      (all, planned, capacity, to) => {
        const answer = resolvePours({
          parts: all,
          plannedMl: millilitres20(planned),
          capacityMl: millilitres20(capacity),
          ...(to === null ? {} : { to: abv20(to) }),
        });
        const result = answer.ok ? answer : answer.nearest;
        if (result === null) {
          expect(answer.ok).toBe(false);
          return;
        }
        expect(result.mixture.volumeMl).toBeLessThan(capacity * (1 + 1e-8));
        for (const more of result.addMl) expect(more).toBeGreaterThanOrEqual(0);
        if (result.strengthKept && to !== null)
          expect(Math.abs(result.mixture.abv20 - to)).toBeLessThan(1e-8);
        if (answer.ok && !answer.ratioKept) expect(answer.mixture.volumeMl).toBeCloseTo(capacity, 5);
      },
    ),
  );
});

test("A30: a fixed part forces less of the others, and only a fixed part that is short breaks the ratio", () => {
  const less = solved(
    resolvePours({ parts: [part(1, 60, 80, true), part(1, 50, 0)], plannedMl: millilitres20(200) }),
  );
  expect(less.addMl).toEqual([0, 80]);
  expect(less.ratioKept).toBe(true);
  const short = solved(
    resolvePours({ parts: [part(1, 60, 80, true), part(1, 50, 120)], plannedMl: millilitres20(200) }),
  );
  expect(short.addMl).toEqual([0, 0]);
  expect(short.ratioKept).toBe(false);
  expect(short.worstShareOff).toBeCloseTo(0.1, 12);
});

test("A30: a part done with before anything is poured leaves nothing to keep a ratio with: a no, not a throw", () => {
  const answer = resolvePours({
    parts: [part(2, 60, 0, true), part(1, 50, 0)],
    plannedMl: millilitres20(150),
  });
  expect(answer.ok).toBe(false);
  expect(answer).toMatchObject({ issue: { code: "nothing_to_pour" }, nearest: null });
  expect(resolvePours({ parts: [part(1, 60, 0)], plannedMl: millilitres20(0) }).ok).toBe(false);
});

test("A30: a vessel that what is in it fills to within rounding takes nothing more", () => {
  const poured = part(1, 60, 100);
  const fullMl = mix([{ volumeMl: millilitres20(100), abv20: abv20(60) }]).volumeMl;
  for (const share of [1 - 4e-10, 1, 1 + 4e-10]) {
    const answer = solved(
      resolvePours({
        parts: [poured, part(1, 50, 0)],
        plannedMl: millilitres20(200),
        capacityMl: millilitres20(fullMl * share),
      }),
    );
    expect(answer.addMl[1]).toBeCloseTo(0, 6);
  }
});

test("A30: a liquid that is no part of the recipe stays in and counts as off", () => {
  const answer = solved(
    resolvePours({
      parts: [part(1, 60, 0), part(1, 50, 0), part(0, 40, 100)],
      plannedMl: millilitres20(100),
    }),
  );
  expect(answer.addMl).toEqual([50, 50, 0]);
  expect(answer.worstShareOff).toBeCloseTo(0.5, 12);
});

test("A30: with a strength: reduced with water or another liquid; a mixture already weaker is not", () => {
  const reduced = solved(
    resolvePours({ parts: [part(1, 60, 0), part(1, 50, 0)], plannedMl: millilitres20(200), to: abv20(46) }),
  );
  expect(reduced.mixture.abv20).toBeCloseTo(46, 9);
  expect(reduced.reducingMl).toBeGreaterThan(30);
  expect(reduced.strengthKept).toBe(true);
  const other = solved(
    resolvePours({
      parts: [part(1, 60, 0), part(1, 50, 0)],
      plannedMl: millilitres20(200),
      to: abv20(46),
      add: abv20(40),
    }),
  );
  expect(other.mixture.abv20).toBeCloseTo(46, 9);
  expect(other.reducingMl).toBeGreaterThan(reduced.reducingMl);
  const weak = solved(
    resolvePours({ parts: [part(1, 40, 100), part(1, 42, 0)], plannedMl: millilitres20(200), to: abv20(46) }),
  );
  expect([weak.strengthKept, weak.reducingMl]).toEqual([false, 0]);
});

test("A30: reducing to the strength counts in what the vessel holds", () => {
  const answer = solved(
    resolvePours({
      parts: [part(1, 60, 120), part(1, 60, 0)],
      plannedMl: millilitres20(200),
      capacityMl: millilitres20(250),
      to: abv20(46),
    }),
  );
  expect(answer.mixture.volumeMl).toBeCloseTo(250, 6);
  expect(answer.mixture.abv20).toBeCloseTo(46, 8);
  expect(answer.ratioKept).toBe(false);
});

test("A30: a vessel too small for what is in it is a no with the nearest that fits", () => {
  const reducedTooMuch = resolvePours({
    parts: [part(1, 60, 100), part(1, 60, 100)],
    plannedMl: millilitres20(200),
    capacityMl: millilitres20(220),
    to: abv20(46),
  });
  if (reducedTooMuch.ok) throw new Error("does not fit");
  expect(reducedTooMuch.issue.code).toBe("vessel_too_small");
  expect(reducedTooMuch.issue.message).toMatch(
    /^the vessel requires at least the 26\d\.\d mL that what is in it, reduced, comes to, got 220 mL$/,
  );
  expect(reducedTooMuch.nearest?.mixture.volumeMl).toBeCloseTo(220, 6);
  expect(reducedTooMuch.nearest?.strengthKept).toBe(false);
  expect(reducedTooMuch.nearest?.addMl).toEqual([0, 0]);
  const over = resolvePours({
    parts: [part(1, 60, 100), part(1, 60, 150)],
    plannedMl: millilitres20(200),
    capacityMl: millilitres20(220),
  });
  expect(over).toMatchObject({ ok: false, issue: { received: 220 }, nearest: null });
  expect(!over.ok && over.issue.message).toBe(
    "the vessel requires at least the 250.0 mL that what is in it comes to, got 220 mL",
  );
  expect(!over.ok && over.issue.limit).toBeCloseTo(250, 9);
});

test("A30: an exact fit is a fit", () => {
  const first = solved(
    resolvePours({ parts: [part(2, 60, 0), part(1, 45, 0)], plannedMl: millilitres20(300) }),
  );
  const exact = { capacityMl: first.mixture.volumeMl };
  const again = solved(
    resolvePours({ parts: [part(2, 60, 0), part(1, 45, 0)], plannedMl: millilitres20(300), ...exact }),
  );
  expect(again.ratioKept).toBe(true);
  const done = solved(
    resolvePours({ parts: [part(2, 60, 200), part(1, 45, 100)], plannedMl: millilitres20(300), ...exact }),
  );
  expect(done.addMl).toEqual([0, 0]);
});

test("A16: amounts and parts outside their domain throw", () => {
  const ask = { parts: [part(1, 60, 0)], plannedMl: millilitres20(100) };
  expect(() => resolvePours({ ...ask, plannedMl: -1 as never })).toThrow(
    "planned volume requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => resolvePours({ ...ask, capacityMl: 0 as never })).toThrow("capacity requires");
  expect(() => resolvePours({ ...ask, capacityMl: 0 as never })).toThrow("got 0 mL");
  expect(() => resolvePours({ ...ask, parts: [part(-1, 60, 0)] })).toThrow(
    "parts requires a finite number of 0 or more, got -1",
  );
  expect(() => resolvePours({ ...ask, parts: [{ ...part(1, 60, 0), pouredMl: -1 as never }] })).toThrow(
    "volume requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => resolvePours({ ...ask, parts: [part(0, 60, 10)] })).toThrow(
    "parts requires a sum above 0, got 0",
  );
});
