import { expect, test } from "vitest";
import { abv20, celsius } from "../quantity/index.ts";
import { CYLINDER_CHOICES, LABEL_CHOICES, SCALE_CHOICES, THERMOMETER_CHOICES } from "./choices.ts";
import { cylinderVolume } from "./cylinder.ts";
import { hydrometer } from "./hydrometer.ts";
import { standardUncertainty } from "./input.ts";
import type { Input } from "./input.ts";
import { scaleMass } from "./kitchen-scale.ts";
import { labelStrength } from "./label.ts";
import { syringeVolume } from "./syringe.ts";
import { thermometer } from "./thermometer.ts";

const widths = (input: Input): readonly number[] =>
  input.spreads.map((spread) => (spread.shape === "normal" ? spread.standardDeviation : spread.halfWidth));

test("U1: a label by its rule: 0.3 in the US (27 CFR 19.356) and the EU (1169/2011, Annex XII), rectangular", () => {
  const of = (rule?: "us" | "eu" | "fruit" | "printed" | "exact") =>
    widths(labelStrength({ id: "a", abv20: abv20(46), ...(rule === undefined ? {} : { rule }) }));
  expect([of(), of("us"), of("eu"), of("fruit"), of("printed"), of("exact")]).toEqual([
    [0.3],
    [0.3],
    [0.3],
    [1.5],
    [0.05],
    [],
  ]);
  expect(labelStrength({ id: "a", abv20: abv20(46), words: "the label of the rye" })).toMatchObject({
    id: "a",
    kind: "label",
    value: 46,
    words: "the label of the rye",
    low: 0,
    high: 100,
  });
});

test("U1: a cylinder by class and size: the smallest that holds it, class B twice class A (ISO 4788), and the reading", () => {
  expect(widths(cylinderVolume({ id: "v", ml: 80, class: "A" }))).toEqual([0.5, 0.25]);
  expect(widths(cylinderVolume({ id: "v", ml: 80, class: "B" }))).toEqual([1, 0.25]);
  expect(widths(cylinderVolume({ id: "v", ml: 100, class: "A" }))).toEqual([0.5, 0.25]);
  expect(widths(cylinderVolume({ id: "v", ml: 101, class: "A" }))).toEqual([1, 0.5]);
  expect(widths(cylinderVolume({ id: "v", ml: 80, class: "A", capacityMl: 250 }))).toEqual([1, 0.5]);
  expect(widths(cylinderVolume({ id: "v", ml: 80, class: "A", capacityMl: 200 }))).toEqual([1, 0.5]);
  // Filled twice: twice the error of the largest.
  expect(widths(cylinderVolume({ id: "v", ml: 4000, class: "A" }))).toEqual([20, 10]);
  expect(widths(cylinderVolume({ id: "v", ml: 80, class: "jug" }))).toEqual([4]);
  expect(cylinderVolume({ id: "v", ml: 80, class: "jug" }).words).toBe("the jug");
  expect(cylinderVolume({ id: "v", ml: 80, class: "A" }).words).toBe("the measuring cylinder");
  expect(() => cylinderVolume({ id: "v", ml: 80, class: "A", capacityMl: 50 })).toThrow(
    "volume requires a number from 0 to 50, got 80 mL",
  );
  expect(() => cylinderVolume({ id: "v", ml: -1, class: "A" })).toThrow("got -1 mL");
});

test("U1: a syringe by ISO 7886-1: the worked examples of a test laboratory", () => {
  // 4 mL from 10 mL: 1.5 % of 10 and 1 % of 4. 1 mL syringe: below half 1.5 % and 2 %, from half on 5 %.
  expect(widths(syringeVolume({ id: "v", ml: 4, capacityMl: 10 }))[0]).toBeCloseTo(0.19, 12);
  expect(widths(syringeVolume({ id: "v", ml: 5, capacityMl: 10 }))[0]).toBeCloseTo(0.2, 12);
  expect(widths(syringeVolume({ id: "v", ml: 0.4, capacityMl: 1 }))[0]).toBeCloseTo(0.015 + 0.008, 12);
  expect(widths(syringeVolume({ id: "v", ml: 0.5, capacityMl: 1 }))[0]).toBeCloseTo(0.025, 12);
  expect(widths(syringeVolume({ id: "v", ml: 5, capacityMl: 5 }))[0]).toBeCloseTo(0.2, 12);
  expect(() => syringeVolume({ id: "v", ml: 11, capacityMl: 10 })).toThrow(
    "volume requires a number from 0 to 10, got 11 mL",
  );
});

test("U1: a scale by class: two readings rounded, its repeatability, its slope; your own figures go first", () => {
  expect(widths(scaleMass({ id: "g", g: 100, class: "fine" }))).toEqual([0.05, 0.05, 0.1, 0.05]);
  expect(widths(scaleMass({ id: "g", g: 100, class: "kitchen" }))).toEqual([0.5, 0.5, 0.5, 0.2]);
  expect(widths(scaleMass({ id: "g", g: 100, class: "pocket" }))).toEqual([0.005, 0.005, 0.01, 0.05]);
  expect(widths(scaleMass({ id: "g", g: 100, class: "fine", stepG: 0.2, repeatG: 0, ofLoad: 0 }))).toEqual([
    0.1, 0.1,
  ]);
  expect(scaleMass({ id: "g", g: 100, class: "fine" }).spreads.map(({ shape }) => shape)).toEqual([
    "rectangular",
    "rectangular",
    "normal",
    "rectangular",
  ]);
  expect(() => scaleMass({ id: "g", g: -1, class: "fine" })).toThrow(
    "mass requires a finite number of 0 or more, got -1 g",
  );
  expect(() => scaleMass({ id: "g", g: 1, class: "fine", stepG: -1 })).toThrow("scale step requires");
});

test("U1: a thermometer by class, a hydrometer by division", () => {
  const t = (kind: "laboratory" | "kitchen" | "room") =>
    widths(thermometer({ id: "t", celsius: celsius(20), class: kind }));
  expect([t("laboratory"), t("kitchen"), t("room")]).toEqual([[0.2], [1], [2]]);
  const h = { id: "h", reading: 46, low: 0, high: 100 };
  expect(widths(hydrometer({ ...h, division: 1 }))).toEqual([1, 0.5]);
  expect(widths(hydrometer({ ...h, division: 1, error: 0.2 }))).toEqual([0.2, 0.5]);
  expect(() => hydrometer({ ...h, division: -1 })).toThrow(
    "division requires a finite number of 0 or more, got -1",
  );
});

test("U2: standard uncertainty: a rectangle's half width over the root of 3, spreads in squares", () => {
  expect(standardUncertainty(labelStrength({ id: "a", abv20: abv20(46) }))).toBeCloseTo(
    0.3 / Math.sqrt(3),
    15,
  );
  const scale = scaleMass({ id: "g", g: 100, class: "fine" });
  expect(standardUncertainty(scale)).toBeCloseTo(Math.sqrt((3 * 0.05 ** 2) / 3 + 0.1 ** 2), 12);
  const bad: Input = { ...scale, spreads: [{ shape: "rectangular", halfWidth: -1 }] };
  expect(() => standardUncertainty(bad)).toThrow("half width requires a finite number of 0 or more, got -1");
});

test("U1: the words of a choice say the figure it stands for", () => {
  for (const rule of ["us", "eu", "fruit"] as const) {
    const [width] = widths(labelStrength({ id: "a", abv20: abv20(46), rule }));
    expect(LABEL_CHOICES[rule]).toContain(`${width} % vol`);
  }
  for (const kind of ["laboratory", "kitchen", "room"] as const) {
    const [width] = widths(thermometer({ id: "t", celsius: celsius(20), class: kind }));
    expect(THERMOMETER_CHOICES[kind]).toContain(`${width} °C`);
  }
  for (const kind of ["pocket", "fine", "kitchen"] as const) {
    const [half = 0] = widths(scaleMass({ id: "g", g: 100, class: kind }));
    expect(SCALE_CHOICES[kind]).toContain(`${2 * half} g`);
  }
  expect(Object.keys(CYLINDER_CHOICES)).toEqual(["A", "B", "jug"]);
});
