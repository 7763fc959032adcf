import fc from "fast-check";
import { expect, test } from "vitest";
import { conditionsEffect } from "./conditions-effect.ts";
import { levelOn, shareThere } from "./curves.ts";
import { dayOfLevel } from "./day-of-level.ts";
import { drawCurves } from "./draw-curves.ts";
import { type Conditions, openRest, REFERENCE, type RestSettings } from "./index.ts";
import { likelyWindow, orderDays } from "./likely-window.ts";
import { timeOfShare } from "./time-of-share.ts";
import { weighCurves } from "./weigh-curves.ts";
import { usualSettings as settings } from "./fixtures/usual-settings.ts";

const rest = openRest(settings);
const at = (over: Partial<Conditions>): RestSettings => ({
  ...settings,
  conditions: { ...REFERENCE, ...over },
});
const middleOf = (over: Partial<RestSettings>): number =>
  openRest({ ...settings, ...over })([], 0).ready.middle ?? 0;

test("R1 two stages: nothing at first, all of it in the end, and its inverse", () => {
  const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  const quick = fc.double({ min: 0.05, max: 0.95, noNaN: true });
  const faster = fc.double({ min: 1.5, max: 40, noNaN: true });
  for (const form of ["two-stage", "peleg"] as const) {
    expect(shareThere(form, 0.4, 6, 0)).toBe(0);
    expect(shareThere(form, 0.4, 6, 1e9)).toBeCloseTo(1, 8);
    fc.assert(
      fc.property(share, quick, faster, (part, f, r) => {
        expect(shareThere(form, f, r, timeOfShare(form, f, r, part))).toBeCloseTo(part, 8);
      }),
    );
  }
  // f (1 − e^(−r t)) + (1 − f)(1 − e^(−t)) by hand at f = 0.4, r = 5, t = 0.2.
  expect(shareThere("two-stage", 0.4, 5, 0.2)).toBeCloseTo(
    0.4 * (1 - Math.exp(-1)) + 0.6 * (1 - Math.exp(-0.2)),
    14,
  );
  // Peleg by hand: half of the plateau at K1 / K2.
  expect(shareThere("peleg", 0.4, 5, 1)).toBe(0.5);
});

test("R2 beforehand six of ten is reached between 5 and 90 days, each doubling as likely, or never", () => {
  const { ready } = rest([], 0);
  expect(ready.never).toBeGreaterThan(0.15);
  expect(ready.high).toBeNull();
  // The middle of 5 to 90 on the log scale.
  expect(Math.abs((ready.middle ?? 0) - Math.sqrt(5 * 90))).toBeLessThan(2);
  const days = dayOfLevel(drawCurves(settings, 20_000), 6).filter((day) => day > 0 && day < Infinity);
  const share = (low: number, high: number): number =>
    days.filter((day) => day >= low && day < high).length / days.length;
  expect(Math.abs(share(5, 90) - 0.95)).toBeLessThan(0.01);
  expect(Math.abs(share(10, 20) / share(20, 40) - 1)).toBeLessThan(0.1);
});

test("R3 more wood, warmer and thinner is sooner; weaker spirit and used wood later or never", () => {
  const effects = { dosePower: 0.5, thicknessPower: 1, activation: 25, eachUse: 0.5 };
  const effect = (over: Partial<Conditions>) => conditionsEffect({ ...REFERENCE, ...over }, effects);
  expect(effect({})).toEqual({ rise: 1, speed: 1 });
  expect(effect({ caskRatio: 4 }).rise).toBeCloseTo(2, 12);
  expect(effect({ use: 2 }).rise).toBeCloseTo(0.5, 12);
  expect(effect({ use: 3 }).rise).toBeCloseTo(0.25, 12);
  expect(effect({ abv20: 40 }).rise).toBeCloseTo(0.8, 12);
  expect(effect({ abv20: 43 }).rise).toBeCloseTo(0.86, 12);
  expect(effect({ thicknessCm: 0.35 }).speed).toBeCloseTo(2, 12);
  // From 15 to 25 °C: the reference's factors by activation energy, 15 to 40 kJ/mol.
  for (const [activation, factor] of [
    [15, 1.23],
    [20, 1.32],
    [25, 1.42],
    [30, 1.52],
    [40, 1.75],
  ] as const) {
    const speed = (celsius: number): number =>
      conditionsEffect({ ...REFERENCE, celsius }, { ...effects, activation }).speed;
    expect(speed(25) / speed(15)).toBeCloseTo(factor, 2);
  }
  const plain = middleOf({});
  expect(middleOf(at({ caskRatio: 2 }))).toBeLessThan(plain);
  expect(middleOf(at({ celsius: 28 }))).toBeLessThan(plain);
  expect(middleOf(at({ thicknessCm: 0.2 }))).toBeLessThan(plain);
  const again = openRest(at({ use: 2 }))([], 0).ready;
  expect(again.never).toBeGreaterThan(rest([], 0).ready.never + 0.2);
  expect(openRest(at({ abv20: 42 }))([], 0).ready.never).toBeGreaterThan(rest([], 0).ready.never);
});

test("R4 tannin rises and then falls; what only rises does not", () => {
  const tannin = drawCurves({ ...settings, course: "rises-and-falls" }, 500);
  const plain = drawCurves(settings, 500);
  let falls = 0;
  for (let i = 0; i < 500; i += 1) {
    const days = Array.from({ length: 60 }, (_, n) => 1.2 ** n);
    const levels = (curves: typeof tannin): number[] => days.map((day) => levelOn(curves, i, day));
    const [bent, straight] = [levels(tannin), levels(plain)];
    expect(straight.every((level, n) => n === 0 || level >= (straight[n - 1] ?? 0))).toBe(true);
    const peak = bent.indexOf(Math.max(...bent));
    if (peak > 0 && peak < days.length - 1) falls += 1;
    expect(bent.slice(peak).every((level, n, rest2) => n === 0 || level <= (rest2[n - 1] ?? 0))).toBe(true);
  }
  expect(falls).toBe(500);
});

test("R5 a tasting is Bayes' rule: the same as a grid over one unknown", () => {
  // One unknown, the day of six, all else fixed: the weights against the integral on a fine grid.
  const n = 4001;
  const days = Float64Array.from({ length: n }, (_, i) => 5 * 18 ** (i / (n - 1)));
  const all = (value: number): Float64Array => new Float64Array(n).fill(value);
  const curves = {
    form: "peleg" as const,
    count: n,
    before: all(1),
    rise: all(8),
    quick: all(0.4),
    // 5 / 8 of the rise at the day of six: t / (1 + t) = 5 / 8 at t = 5 / 3.
    slow: days.map((day) => 5 / 3 / day),
    fast: days.map((day) => 10 / day),
    fall: all(0),
    noise: all(1.2),
  };
  const { weight } = weighCurves(curves, [
    { day: 6, level: 3.5 },
    { day: 12, level: 5 },
  ]);
  let [sum, mean] = [0, 0];
  for (const day of days) {
    const level = (t: number): number => 1 + (8 * ((5 / 3 / day) * t)) / (1 + (5 / 3 / day) * t);
    const chance = Math.exp(-(((3.5 - level(6)) / 1.2) ** 2 + ((5 - level(12)) / 1.2) ** 2) / 2);
    sum += chance;
    mean += chance * Math.log(day);
  }
  const found = days.reduce((so, day, i) => so + (weight[i] ?? 0) * Math.log(day), 0);
  expect(found).toBeCloseTo(mean / sum, 10);
});

test("R5 tasting little moves the day later, tasting much moves it sooner, and both narrow it", () => {
  const [little, much] = [2, 5.5].map((level) => rest([{ day: 8, level }], 8).ready) as [
    ReturnType<typeof rest>["ready"],
    ReturnType<typeof rest>["ready"],
  ];
  expect(little.middle ?? 0).toBeGreaterThan(much.middle ?? 0);
  expect(little.never).toBeGreaterThan(much.never);
  const three = rest(
    [
      { day: 4, level: 3 },
      { day: 9, level: 5.5 },
      { day: 13, level: 6.5 },
    ],
    13,
  );
  expect(three.ready.high).not.toBeNull();
  const [low, high] = [three.ready.low, three.ready.high ?? 0];
  expect(high / low).toBeLessThan(6);
  expect(three.leads.middle ?? 0).toBeGreaterThan(three.ready.middle ?? 0);
  expect(three.effective).toBeGreaterThan(500);
});

test("R6 the window holds 80 % of the belief, whether or not it may never come", () => {
  const weight = (n: number): Float64Array => new Float64Array(n).fill(1 / n);
  const soon = Float64Array.from({ length: 100 }, (_, i) => i + 1);
  const whole = likelyWindow(orderDays(soon, weight(100)), 0.8);
  for (const [found, told] of [
    [whole.low, 10],
    [whole.high, 90],
    [whole.middle, 50],
  ] as const)
    expect(Math.abs((found ?? 0) - told)).toBeLessThanOrEqual(1);
  // 30 of 100 never come: from the 20th day on to never.
  const open = soon.map((day) => (day > 70 ? Infinity : day));
  const window = likelyWindow(orderDays(open, weight(100)), 0.8);
  expect(window.high).toBeNull();
  expect(Math.abs(window.low - 20)).toBeLessThanOrEqual(1);
  expect(Math.abs((window.middle ?? 0) - 35)).toBeLessThanOrEqual(1);
  expect(window.never).toBeCloseTo(0.3, 12);
  // Of the 70 that come, 7 left out at either end.
  expect(Math.abs((window.ifEver?.low ?? 0) - 7)).toBeLessThanOrEqual(1);
  expect(Math.abs((window.ifEver?.high ?? 0) - 63)).toBeLessThanOrEqual(1);
  const none = likelyWindow(orderDays(new Float64Array(10).fill(Infinity), weight(10)), 0.8);
  expect(none).toMatchObject({ low: Infinity, high: null, middle: null, ifEver: null, never: 1 });
});

test("R8 the next tastings lie ahead, in order, and tell something; none once it is there as likely as not", () => {
  const plan = rest([], 0).nextTastings();
  expect(plan.length).toBe(3);
  const days = plan.map(({ day }) => day);
  expect(days).toEqual([...new Set(days)].toSorted((a, b) => a - b));
  expect(days[0]).toBeLessThan(14);
  for (const { tells } of plan) expect(tells).toBeGreaterThan(0);
  const next = rest([{ day: 9, level: 4 }], 9).nextTastings(1)[0];
  expect(next?.day).toBeGreaterThan(9);
  const gone = rest(
    [
      { day: 9, level: 8 },
      { day: 12, level: 8.5 },
    ],
    12,
  );
  expect(gone.readyToday).toBeGreaterThan(0.9);
  expect(gone.nextTastings()).toEqual([]);
});

test("R9 asked twice, the same answer", () => {
  const tastings = [{ day: 5, level: 4 }];
  const { ready, effective } = rest(tastings, 5);
  const again = openRest(settings)(tastings, 5);
  expect({ ready: again.ready, effective: again.effective }).toEqual({ ready, effective });
});

test("R10 what is outside is refused with what, where and how much", () => {
  expect(() => openRest(at({ abv20: 96 }))).toThrow("strength requires 20 to 80 % vol, got 96 % vol");
  expect(() => openRest(at({ use: 1.5 }))).toThrow("use requires a whole number, got 1.5");
  expect(() => openRest({ ...settings, leadsAt: 5 })).toThrow("leading level requires 6 to 12, got 5");
  expect(() => rest([{ day: 3, level: 11 }], 3)).toThrow("level of a tasting requires 0 to 10, got 11");
  expect(() => rest([], Number.NaN)).toThrow("today requires 0 to 3650, got NaN");
});
