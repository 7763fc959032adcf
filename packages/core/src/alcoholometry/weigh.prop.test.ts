import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, celsius, grams, millilitres20, millilitresRead } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { CONVENTIONAL_AIR } from "./air.data.ts";
import { massFromScale, scaleReading } from "./air-buoyancy.ts";
import { density } from "./density.ts";
import { mix } from "./mix.ts";
import { pouredByWeight } from "./poured-by-weight.ts";
import { pouredBetweenReadings } from "./running-readings.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";
import { volumeAt20FromVolumeAt } from "./volume-at-temperature.ts";
import { volumeFromWeight, weigh } from "./weigh.ts";
import { weighPours } from "./weigh-pours.ts";

const air = fc.constantFrom(undefined, CONVENTIONAL_AIR, { airKgPerM3: 1.1, weightsKgPerM3: 8400 });
const conditions = fc
  .record({ abv: between(0, 100), t: between(0, 40), air })
  .map(({ abv, t, air: around }) => ({
    abv20: abv20(abv),
    celsius: celsius(t),
    ...(around === undefined ? {} : { air: around }),
  }));
const pours = fc.array(
  fc.record({ volumeMl: between(0.1, 2000).map(millilitres20), abv20: between(0, 100).map(abv20) }),
  { minLength: 1, maxLength: 6 },
);

test("A22: scale to mass and back within 1e-12; the scale shows 0.10 to 0.14 % less than the mass of any mixture", () => {
  fc.assert(
    fc.property(between(0.1, 5000), between(770, 1000), (massG, rho) => {
      const shown = scaleReading(grams(massG), rho, CONVENTIONAL_AIR);
      expect(Math.abs(massFromScale(shown, rho, CONVENTIONAL_AIR) - massG)).toBeLessThan(1e-12 * massG);
      expect(1 - shown / massG).toBeGreaterThan(0.001);
      expect(1 - shown / massG).toBeLessThan(0.0015);
    }),
  );
});

test("A22: OIML D 28's weighing equation, worked by hand: 1 kg of 800 kg/m³ shows 1 kg less 1.5 g plus 0.15 g", () => {
  // (1 - 1.2/800) / (1 - 1.2/8000) = 0.9985 / 0.99985.
  expect(scaleReading(grams(1000), 800, CONVENTIONAL_AIR)).toBeCloseTo((1000 * 0.9985) / 0.99985, 9);
  // A thing as dense as the weights weighs what it is.
  expect(scaleReading(grams(1000), 8000, CONVENTIONAL_AIR)).toBe(1000);
  expect(scaleReading(grams(1000), 800, { airKgPerM3: 0, weightsKgPerM3: 8000 })).toBe(1000);
});

test("A22: 100 mL of 40 % vol at 20 °C is 94.805 g, and 94.699 g on a scale", () => {
  // OIML Table I: 33.3 % mass is 948.05 kg/m³ (40 % vol).
  const vacuum = weigh(millilitresRead(100), { abv20: abv20(40) });
  expect(vacuum.grams).toBeCloseTo(94.805, 3);
  expect(vacuum.grams).toBe(vacuum.massG);
  expect(vacuum.ml20).toBeCloseTo(100, 10);
  const inAir = weigh(millilitresRead(100), { abv20: abv20(40), air: CONVENTIONAL_AIR });
  expect(inAir.grams).toBeCloseTo(94.699, 3);
  expect(inAir.massG).toBe(vacuum.massG);
});

test("A23: volume to grams and back within 1e-10, with and without air, at any temperature", () => {
  fc.assert(
    fc.property(between(0.1, 5000), conditions, (ml, at) => {
      const there = weigh(millilitresRead(ml), at);
      const back = volumeFromWeight(there.grams, at);
      expect(Math.abs(back.ml - ml)).toBeLessThan(1e-10 * ml);
      expect(Math.abs(back.massG - there.massG)).toBeLessThan(1e-10 * there.massG);
      expect(
        Math.abs(back.ml20 - volumeAt20FromVolumeAt(millilitresRead(ml), at.celsius, at.abv20)),
      ).toBeLessThan(1e-10 * ml);
      expect(there.massG).toBeCloseTo((ml * there.kgPerM3) / 1000, 8);
      expect(there.kgPerM3).toBe(density(massFractionFromAbv20(at.abv20), at.celsius));
      const { ethanolG, waterG } = there.liquid;
      expect(Math.abs(ethanolG + waterG - there.massG)).toBeLessThan(1e-12 * there.massG);
      expect(ethanolG / there.massG).toBeCloseTo(massFractionFromAbv20(at.abv20), 12);
    }),
  );
});

test("A24: what was weighed is what was poured: back to the same volumes and mixture", () => {
  fc.assert(
    fc.property(pours, conditions, (all, { abv20: _, ...bench }) => {
      const onScale = weighPours(all, bench);
      const back = pouredByWeight(
        all.map((pour, n) => ({ grams: onScale[n]?.grams ?? grams(0), abv20: pour.abv20 })),
        bench,
      );
      const asPoured = mix(all);
      expect(Math.abs(back.mixture.abv20 - asPoured.abv20)).toBeLessThan(1e-9);
      expect(Math.abs(back.mixture.massG - asPoured.massG)).toBeLessThan(1e-10 * asPoured.massG);
      for (const [n, pour] of back.pours.entries()) {
        expect(Math.abs(pour.volumeMl - (all[n]?.volumeMl ?? 0))).toBeLessThan(1e-9 * pour.volumeMl);
        expect(pour.abv20).toBe(all[n]?.abv20);
      }
    }),
  );
});

test("A24: the running total is the sum so far, and the mass does not depend on the room", () => {
  const all = [
    { volumeMl: millilitres20(500), abv20: abv20(62.4) },
    { volumeMl: millilitres20(250), abv20: abv20(46) },
    { volumeMl: millilitres20(100), abv20: abv20(0) },
  ];
  const cold = weighPours(all, { celsius: celsius(10) });
  const warm = weighPours(all, { celsius: celsius(30) });
  let running = 0;
  for (const [n, { grams: one, runningG, massG, ml }] of cold.entries()) {
    running += one;
    expect(runningG).toBeCloseTo(running, 10);
    expect(one).toBe(massG);
    expect(massG).toBeCloseTo(warm[n]?.massG ?? 0, 9);
    expect(ml).toBeLessThan(warm[n]?.ml ?? 0);
  }
  // In air the room matters a little: a warm liquid is larger and lifted more.
  const [coldInAir] = weighPours(all, { celsius: celsius(10), air: CONVENTIONAL_AIR });
  const [warmInAir] = weighPours(all, { celsius: celsius(30), air: CONVENTIONAL_AIR });
  expect(warmInAir?.grams).toBeLessThan(coldInAir?.grams ?? 0);
});

test("A24: tare as you go: grams between readings, starting from the vessel's", () => {
  const answer = pouredBetweenReadings([412.5, 512.5, 512.5, 562]);
  expect(answer).toEqual({ ok: true, grams: [100, 0, 49.5] });
  expect(pouredBetweenReadings([-3, 7])).toEqual({ ok: true, grams: [10] });
  expect(pouredBetweenReadings([0])).toEqual({ ok: true, grams: [] });
});

test("A24: a reading that falls is a no that names it; no reading, or one that is none, throws", () => {
  expect(pouredBetweenReadings([412.5, 512.5, 500])).toEqual({
    ok: false,
    issue: {
      code: "reading_falls",
      limit: 512.5,
      received: 500,
      message: "scale reading 3 requires at least the 512.5 g before it, got 500 g",
    },
    index: 2,
  });
  expect(() => pouredBetweenReadings([])).toThrow("scale readings require at least one, got none");
  expect(() => pouredBetweenReadings([0, Number.NaN])).toThrow(
    "scale reading requires a number from -1000000000 to 1000000000, got NaN g",
  );
});

test("A16: weighing outside the domain throws", () => {
  expect(() => weigh(-1 as never, { abv20: abv20(40) })).toThrow(
    "volume requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => volumeFromWeight(-1 as never, { abv20: abv20(40) })).toThrow(
    "weight requires a finite number of 0 or more, got -1 g",
  );
  expect(() => scaleReading(-1 as never, 900, CONVENTIONAL_AIR)).toThrow(
    "mass requires a finite number of 0 or more, got -1 g",
  );
  expect(() => massFromScale(-1 as never, 900, CONVENTIONAL_AIR)).toThrow(
    "scale reading requires a finite number of 0 or more, got -1 g",
  );
  expect(() => scaleReading(grams(1), 9, CONVENTIONAL_AIR)).toThrow(
    "density of the liquid requires a number from 10 to 30000, got 9 kg/m³",
  );
  expect(() => scaleReading(grams(1), 900, { airKgPerM3: 2.1, weightsKgPerM3: 8000 })).toThrow(
    "density of air requires a number from 0 to 2, got 2.1 kg/m³",
  );
  expect(() => scaleReading(grams(1), 900, { airKgPerM3: 1.2, weightsKgPerM3: 1 })).toThrow(
    "density of the weights requires a number from 1000 to 30000, got 1 kg/m³",
  );
});
