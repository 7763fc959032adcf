import { expect, test } from "vitest";
import { abv20, celsius } from "../quantity/index.ts";
import { adjustStrength, liquidOfVolume } from "../alcoholometry/index.ts";
import { seeded } from "./fixtures/seeded.ts";
import { additionUncertainty } from "./addition-uncertainty.ts";
import { cylinderVolume } from "./cylinder.ts";
import { gaugeUncertainty } from "./gauge-uncertainty.ts";
import { giveOrTake } from "./give-or-take.ts";
import { headline } from "./headline.ts";
import { hydrometer } from "./hydrometer.ts";
import { standardUncertainty } from "./input.ts";
import type { Input } from "./input.ts";
import { scaleMass } from "./kitchen-scale.ts";
import { labelStrength } from "./label.ts";
import { mixUncertainty } from "./mix-uncertainty.ts";
import { monteCarlo } from "./monte-carlo.ts";
import { propagate } from "./propagate.ts";
import { reduceUncertainty } from "./reduce-uncertainty.ts";
import { sampleUncertainty } from "./sample-uncertainty.ts";
import { thermometer } from "./thermometer.ts";
import { weighedPoursUncertainty } from "./weighed-pours-uncertainty.ts";

const free = { low: -Infinity, high: Infinity, kind: "other", words: "" } as const;
const normalInput = (id: string, value: number, standardDeviation: number): Input => ({
  ...free,
  id,
  value,
  spreads: [{ shape: "normal", standardDeviation }],
});
const rectangle = (id: string, value: number, halfWidth: number): Input => ({
  ...free,
  id,
  value,
  spreads: [{ shape: "rectangular", halfWidth }],
});
const label = (id: string, abv: number): Input => labelStrength({ id, abv20: abv20(abv) });

test("U3: GUM H.1.2-like sum: squares of coefficients times uncertainties add", () => {
  const result = propagate((v) => 3 * v("a") - 4 * v("b"), [normalInput("a", 10, 1), normalInput("b", 2, 1)]);
  expect(result.value).toBe(22);
  expect(result.standardUncertainty).toBeCloseTo(5, 12);
  expect(result.interval95[1] - 22).toBeCloseTo(5 * 1.959964, 3);
  expect(result.budget.map((share) => [share.input, share.share])).toEqual([
    ["b", expect.closeTo(16 / 25, 12) as number],
    ["a", expect.closeTo(9 / 25, 12) as number],
  ]);
});

test("U3: a product's relative uncertainties add in squares (JCGM 100, 5.1.6)", () => {
  const result = propagate((v) => v("a") * v("b"), [normalInput("a", 100, 1), normalInput("b", 50, 1)]);
  expect(result.standardUncertainty / 5000).toBeCloseTo(Math.hypot(0.01, 0.02), 9);
});

test("U4: a single rectangular input gives its own 95 %, also through a curve", () => {
  const straight = propagate((v) => 2 * v("a"), [rectangle("a", 46, 0.3)]);
  expect(straight.interval95[0]).toBeCloseTo(92 - 0.57, 4);
  expect(straight.interval95[1]).toBeCloseTo(92 + 0.57, 4);
  const bent = propagate((v) => v("a") ** 2, [rectangle("a", 10, 3)]);
  expect(bent.interval95[0]).toBeCloseTo((10 - 2.85) ** 2, 2);
  expect(bent.interval95[1]).toBeCloseTo((10 + 2.85) ** 2, 2);
  const falling = propagate((v) => -v("a"), [rectangle("a", 10, 3)]);
  expect(falling.interval95[0]).toBeLessThan(falling.interval95[1]);
});

test("U2: a triangle is the sum of two rectangles of half its width", () => {
  const triangle: Input = { ...free, id: "t", value: 0, spreads: [{ shape: "triangular", halfWidth: 2 }] };
  expect(standardUncertainty(triangle)).toBeCloseTo(2 / Math.sqrt(6), 12);
  const result = propagate((v) => v("t"), [triangle]);
  expect(result.interval95[1]).toBeCloseTo(2 * (1 - Math.sqrt(0.05)), 4);
});

test("U5: one label used twice is wrong the same way twice", () => {
  const volumes = ["x", "y"].map((id) => cylinderVolume({ id, ml: 100, class: "A" }));
  const pours = (abvs: readonly Input[]) =>
    volumes.map((volumeMl, n) => ({ volumeMl, abv20: abvs[n] ?? label("?", 0) }));
  const same = mixUncertainty(pours([label("one", 60), label("one", 60)]), "abv20");
  const apart = mixUncertainty(pours([label("one", 60), label("two", 60)]), "abv20");
  expect(same.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 3);
  expect(apart.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(6), 3);
  expect(same.budget.length).toBe(3);
  expect(apart.budget.length).toBe(4);
});

test("U5: one id for two different things throws, and so does a model that asks for what is not there", () => {
  expect(() => propagate((v) => v("a"), [label("a", 46), label("a", 50)])).toThrow(
    "inputs of one id require one value, got 46 and 50 for a",
  );
  expect(() =>
    propagate((v) => v("a"), [label("a", 46), cylinderVolume({ id: "a", ml: 46, class: "A" })]),
  ).toThrow(RangeError);
  expect(() => propagate((v) => v("b"), [label("a", 46)])).toThrow(
    "model requires an input of the list, got b",
  );
});

test("U3: an exact result has no interval and an empty headline", () => {
  const exact = labelStrength({ id: "a", abv20: abv20(46), rule: "exact" });
  const result = propagate((v) => v("a"), [exact]);
  expect(result).toMatchObject({ value: 46, standardUncertainty: 0, interval95: [46, 46] });
  expect(result.budget).toEqual([{ input: "a", kind: "label", share: 0, words: "the label" }]);
  expect(headline(result.budget)).toBe("");
  expect(headline([])).toBe("");
});

test("U3: an input without effect takes no share and no interval", () => {
  const result = propagate(
    (v) => v("a") + Math.min(0, v("b")),
    [rectangle("a", 1, 0.3), rectangle("b", 10, 5)],
  );
  expect(result.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 12);
  expect(result.interval95[1]).toBeCloseTo(1.285, 4);
  expect(result.budget[1]).toMatchObject({ input: "b", share: 0 });
});

test("U3: at the end of an input's range the step goes inside", () => {
  const pure = label("a", 100);
  const result = propagate(
    (v) => {
      expect(v("a")).toBeLessThanOrEqual(100);
      return v("a");
    },
    [pure],
  );
  expect(result.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 9);
  expect(result.interval95[1]).toBe(100);
  const none = propagate((v) => Math.sqrt(v("w")), [{ ...rectangle("w", 0, 1), low: 0 }]);
  expect(none.interval95[0]).toBe(0);
});

test("U7: the headline names the kind that has two thirds of the variance, or the first two", () => {
  const share = (input: string, kind: Input["kind"], part: number) => ({
    input,
    kind,
    share: part,
    words: "",
  });
  expect(headline([share("a", "label", 0.5), share("b", "label", 0.3), share("c", "scale", 0.2)])).toBe(
    "the labels, not your scale",
  );
  expect(headline([share("a", "cylinder", 0.6), share("c", "thermometer", 0.4)])).toBe(
    "the measuring cylinder and the thermometer",
  );
  expect(headline([share("c", "thermometer", 0.4), share("a", "syringe", 0.6)])).toBe(
    "the syringe and the thermometer",
  );
  expect(headline([share("a", "label", 2 / 3), share("c", "other", 1 / 3)])).toBe(
    "the label, not something else",
  );
  expect(headline([share("h", "hydrometer", 1)])).toBe("the hydrometer");
});

test("U7: give or take: rounded up to one digit, two when it begins with 1, the value to the same decimals", () => {
  const of = (value: number, half: number) =>
    giveOrTake({
      value,
      standardUncertainty: half / 2,
      interval95: [value - half, value + half],
      budget: [],
    });
  expect(of(54.3641, 0.2479)).toEqual({ value: "54.4", by: "0.3", decimals: 1 });
  expect(of(54.3641, 0.1401)).toEqual({ value: "54.36", by: "0.15", decimals: 2 });
  expect(of(748.2, 12.3)).toEqual({ value: "748", by: "13", decimals: 0 });
  expect(of(748.2, 33)).toEqual({ value: "748", by: "40", decimals: 0 });
  expect(of(46, 0.3)).toEqual({ value: "46.0", by: "0.3", decimals: 1 });
  expect(of(46, 0)).toEqual({ value: "46.00", by: "0", decimals: 2 });
  expect(of(1, 1e-9)).toEqual({ value: "1.000000", by: "0.000001", decimals: 6 });
});

test("U8: Monte Carlo with a seed gives the same answer again, and agrees with closed forms", () => {
  const one = rectangle("a", 10, 1);
  const first = monteCarlo((v) => v("a"), [one], 20_000, seeded(3));
  expect(monteCarlo((v) => v("a"), [one], 20_000, seeded(3))).toEqual(first);
  expect(first.value).toBeCloseTo(10, 1);
  expect(first.standardUncertainty).toBeCloseTo(1 / Math.sqrt(3), 2);
  expect(first.interval95[0]).toBeCloseTo(9.05, 1);
  const bell = monteCarlo((v) => v("a"), [normalInput("a", 0, 1)], 20_000, seeded(4));
  expect(bell.standardUncertainty).toBeCloseTo(1, 1);
  expect(bell.interval95[1]).toBeCloseTo(1.96, 1);
  const triangle: Input = { ...free, id: "t", value: 0, spreads: [{ shape: "triangular", halfWidth: 2 }] };
  const three = monteCarlo((v) => v("t"), [triangle], 20_000, seeded(5));
  expect(three.standardUncertainty).toBeCloseTo(2 / Math.sqrt(6), 1);
  expect(three.interval95[1]).toBeCloseTo(2 * (1 - Math.sqrt(0.05)), 1);
  const kept = monteCarlo((v) => v("a"), [{ ...one, low: 9.5, high: 10.5 }], 1000, seeded(6));
  expect(kept.interval95).toEqual([9.5, 10.5]);
});

test("U8: too few draws, or a number that is none, throw", () => {
  expect(() => monteCarlo(() => 1, [], 39, seeded(1))).toThrow(
    "draws requires a number from 40 to 100000000, got 39",
  );
  expect(() => monteCarlo(() => 1, [], 40.5, seeded(1))).toThrow("draws requires a whole number, got 40.5");
});

test("U9: weighing: grams off a fine scale hardly matter beside a label", () => {
  const pours = [62.4, 46].map((abv, n) => ({
    grams: scaleMass({ id: `g${n}`, g: 100, class: "fine" }),
    abv20: label(`l${n}`, abv),
  }));
  const result = weighedPoursUncertainty(pours, "abv20");
  expect(headline(result.budget)).toBe("the labels, not your scale");
  const room = thermometer({ id: "t", celsius: celsius(24), class: "kitchen" });
  const inAir = weighedPoursUncertainty(pours, "abv20", {
    celsius: room,
    air: { airKgPerM3: 1.2, weightsKgPerM3: 8000 },
  });
  expect(inAir.value).toBeCloseTo(result.value, 2);
  expect(inAir.budget.length).toBe(5);
});

test("U9: reducing: what to add is as uncertain as the label; where it lands counts the measure too", () => {
  const volumeMl = cylinderVolume({ id: "v", ml: 500, class: "B" });
  const water = labelStrength({ id: "water", abv20: abv20(0), rule: "exact" });
  const ask = { volumeMl, start: label("start", 62.4), add: water, to: abv20(46) };
  const addMl = reduceUncertainty(ask, "addMl");
  const answer = adjustStrength({
    start: liquidOfVolume(500 as never, abv20(62.4)),
    to: abv20(46),
    add: abv20(0),
  });
  expect(addMl.value).toBeCloseTo(answer.ok ? answer.addMl : 0, 9);
  const measure = (ml: number) => cylinderVolume({ id: "add", ml, class: "B" });
  const strength = reduceUncertainty({ ...ask, measure }, "abv20");
  expect(strength.value).toBeCloseTo(46, 9);
  expect(strength.budget.length).toBe(4);
  const finalMl = reduceUncertainty({ ...ask, measure }, "finalMl");
  expect(finalMl.value).toBeCloseTo(answer.ok ? answer.after.volumeMl : 0, 6);
  expect(() => reduceUncertainty(ask, "abv20")).toThrow(
    "abv20 requires a measure for what is added, got none",
  );
  expect(() => reduceUncertainty({ ...ask, to: abv20(70) }, "addMl")).toThrow("target strength requires");
});

test("U9: gauging: the thermometer and the hydrometer, and errors stop at water and ethanol", () => {
  const reading = hydrometer({ id: "h", reading: 46, division: 0.2, low: 0, high: 100 });
  const kitchen = thermometer({ id: "t", celsius: celsius(25), class: "room" });
  const result = gaugeUncertainty("abv20", reading, kitchen, "abv20");
  expect(headline(result.budget)).toBe("the thermometer, not the hydrometer");
  expect(gaugeUncertainty("abv20", reading, kitchen, "proof60F").value).toBeCloseTo(2 * result.value, 0);
  const strong = hydrometer({ id: "h", reading: 99.9, division: 1, low: 0, high: 100 });
  const at20 = thermometer({ id: "t", celsius: celsius(20), class: "kitchen" });
  expect(gaugeUncertainty("abv20", strong, at20, "abv20").interval95[1]).toBe(100);
  const cold = thermometer({ id: "t", celsius: celsius(10), class: "kitchen" });
  expect(() => gaugeUncertainty("abv20", strong, cold, "abv20")).toThrow("reading requires at least");
});

test("U9: a sample by scale and cylinder: the cylinder", () => {
  const sample = {
    onScale: scaleMass({ id: "g", g: 93.6, class: "pocket" }),
    ml: cylinderVolume({ id: "ml", ml: 100, class: "A" }),
    celsius: thermometer({ id: "t", celsius: celsius(20), class: "kitchen" }),
  };
  const result = sampleUncertainty(sample);
  expect(headline(result.budget)).toBe("the measuring cylinder, not the thermometer");
  expect(result.standardUncertainty).toBeGreaterThan(1);
  const inAir = sampleUncertainty({ ...sample, air: { airKgPerM3: 1.2, weightsKgPerM3: 8000 } });
  expect(inAir.value).toBeLessThan(result.value);
  const heavy = { ...sample, onScale: scaleMass({ id: "g", g: 105, class: "pocket" }) };
  expect(() => sampleUncertainty(heavy)).toThrow("reading requires at most");
});

test("U3: effects too small to be squared leave the result where it is", () => {
  const result = propagate((v) => 1e-200 * v("a"), [rectangle("a", 1, 0.1)]);
  expect(result.interval95).toEqual([1e-200, 1e-200]);
});

test("U9: what must be added is never below 0, and a target that is not between is refused", () => {
  const celsius20 = thermometer({ id: "t", celsius: celsius(20), class: "room" });
  const start = (abv: number) => [
    {
      by: "volume" as const,
      amount: cylinderVolume({ id: "ml", ml: 100, class: "B" }),
      abv20: label("start", abv),
    },
  ];
  const water = labelStrength({ id: "water", abv20: abv20(0), rule: "exact" });
  const ask = (from: number, to: number) =>
    additionUncertainty({ start: start(from), add: water, to: abv20(to) }, { celsius: celsius20 });
  const near = ask(46.05, 46);
  expect(near.value).toBeGreaterThan(0);
  expect(near.interval95[0]).toBeGreaterThanOrEqual(0);
  expect(() => ask(45, 46)).toThrow("target strength requires a value between");
});
