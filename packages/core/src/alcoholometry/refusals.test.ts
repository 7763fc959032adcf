import { expect, test } from "vitest";
import { abv20, celsius, grams, kgPerM3, millilitres20, proof60F } from "../quantity/index.ts";
import { density } from "./density.ts";
import { evaporated } from "./evaporated.ts";
import { fillVessel } from "./fill-vessel.ts";
import { freezingPoint } from "./freezing-point.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import { massFractionFromDensity } from "./mass-fraction-from-density.ts";
import { mixParts } from "./mix-parts.ts";
import { proof60FFromMassFraction } from "./proof.ts";
import { readingOf } from "./reading-of.ts";
import { resolvePours } from "./resolve-pours.ts";
import { abv20FromMassFraction } from "./strength-by-volume.ts";
import { strengthFromMassAndVolume } from "./strength-from-mass-and-volume.ts";
import { strengthToLift } from "./strength-to-lift.ts";
import { temperaturesFromDensity } from "./temperature-from-density.ts";
import { gaugingFigures } from "./us-gauging-figures.ts";
import { volumeAtFromVolumeAt20 } from "./volume-at-temperature.ts";
import { waterToStrength } from "./water-to-strength.ts";

const beyond = 1.5 as never;
const none = -1 as never;
const cold = -21 as never;
const spirit = liquidOfVolume(millilitres20(500), abv20(46));
const room = { ...spirit, abv20: abv20(46) };
const part = { parts: 1, abv20: abv20(46), pouredMl: millilitres20(0) };

const fraction = "mass fraction requires a number from 0 to 1, got 1.5";
const tooCold = "temperature requires a number from -20 to 40, got -21 °C";

test.each<readonly [string, () => unknown, string]>([
  ["density, fraction", () => density(beyond, celsius(20)), fraction],
  ["freezingPoint", () => freezingPoint(beyond), fraction],
  ["proof60FFromMassFraction", () => proof60FFromMassFraction(beyond), fraction],
  ["abv20FromMassFraction", () => abv20FromMassFraction(beyond), fraction],
  ["temperaturesFromDensity", () => temperaturesFromDensity(beyond, kgPerM3(900)), fraction],
  ["massFractionFromDensity, temperature", () => massFractionFromDensity(kgPerM3(900), cold), tooCold],
  [
    "massFractionFromDensity, density",
    () => massFractionFromDensity(none, celsius(20)),
    "density requires a finite number of 0 or more, got -1 kg/m³",
  ],
  ["readingOf", () => readingOf("abv20", abv20(46), cold), tooCold],
  [
    "volumeAtFromVolumeAt20",
    () => volumeAtFromVolumeAt20(none, celsius(20), abv20(46)),
    "volume requires a finite number of 0 or more, got -1 mL",
  ],
  [
    "gaugingFigures",
    () => gaugingFigures(201 as never),
    "strength requires a number from 0 to 200, got 201 proof",
  ],
  [
    "describeLiquid, water",
    () => describeLiquid({ ethanolG: grams(1), waterG: none }),
    "mass of water requires a finite number of 0 or more, got -1 g",
  ],
  [
    "fillVessel, capacity",
    () => fillVessel({ ...room, capacityMl: none }),
    "capacity requires a finite number of 0 or more, got -1 mL",
  ],
  [
    "mixParts, a part",
    () => mixParts([{ parts: none, abv20: abv20(46) }], millilitres20(1)),
    "parts requires a finite number of 0 or more, got -1",
  ],
  [
    "resolvePours, a part",
    () => resolvePours({ parts: [{ ...part, parts: none }], plannedMl: millilitres20(1) }),
    "parts requires a finite number of 0 or more, got -1",
  ],
  [
    "strengthFromMassAndVolume, temperature",
    () => strengthFromMassAndVolume({ onScale: grams(94), ml: 100 as never, celsius: cold }),
    tooCold,
  ],
  [
    "strengthToLift, volume",
    () => strengthToLift({ start: spirit, addMl: none, to: abv20(50) }),
    "added volume requires a finite number of 5e-324 or more, got -1 mL",
  ],
])("A16: %s refuses with its own words", (_, refused, message) => {
  // The whole message: nothing may follow the unit.
  expect(refused).toThrow(new RangeError(message));
});

test("A14: the message of a vessel over its capacity", () => {
  const answer = fillVessel({ ...room, capacityMl: millilitres20(400) });
  expect(!answer.ok && answer.issue.message).toMatch(
    /^filling requires a vessel holding at most its 400 mL, got (500|499\.9+\d|500\.0+\d) mL$/,
  );
});

test("A12: the message of a target without alcohol", () => {
  const answer = waterToStrength({ volumeMl: millilitres20(700), from: abv20(43), to: abv20(0) });
  expect(!answer.ok && answer.issue.message).toBe(
    "target strength requires more than 0 % vol (no amount of water gets there), got 0 % vol",
  );
});

test("A14: a gap of rounding is filled with the gap itself, never with less than nothing", () => {
  const capacityMl = millilitres20(1000);
  const nearly = liquidOfVolume(millilitres20(1000 * (1 - 2e-12)), abv20(46));
  const answer = fillVessel({ ...nearly, capacityMl, abv20: abv20(46) });
  expect(answer.ok && answer.addMl).toBeGreaterThan(0);
  expect(answer.ok && answer.addMl).toBeLessThan(1e-8);
  const over = liquidOfVolume(millilitres20(1000 * (1 + 2e-12)), abv20(46));
  expect(fillVessel({ ...over, capacityMl, abv20: abv20(46) })).toMatchObject({
    ok: true,
    addMl: 0,
    naiveAddMl: 0,
  });
});

test("A30: nothing poured yet and a vessel too small for the plan: the vessel is filled in ratio", () => {
  const answer = resolvePours({
    parts: [
      { ...part, parts: 2, abv20: abv20(60) },
      { ...part, parts: 1 },
    ],
    plannedMl: millilitres20(300),
    capacityMl: millilitres20(150),
  });
  if (!answer.ok) throw new Error(answer.issue.message);
  expect(answer.ratioKept).toBe(true);
  expect(answer.addMl[0]).toBeCloseTo(2 * (answer.addMl[1] ?? 0), 9);
  expect(answer.mixture.volumeMl).toBeCloseTo(150, 6);
});

test("A30: something poured of one part only, and a vessel too small for the plan", () => {
  const answer = resolvePours({
    parts: [{ ...part, pouredMl: millilitres20(50) }, part],
    plannedMl: millilitres20(300),
    capacityMl: millilitres20(150),
  });
  if (!answer.ok) throw new Error(answer.issue.message);
  expect(answer.addMl[0]).toBeCloseTo(25, 6);
  expect(answer.addMl[1]).toBeCloseTo(75, 6);
});

test("A31: what has gone is named by its ethanol", () => {
  const before = { volumeMl: millilitres20(700), abv20: abv20(60) };
  const gone = evaporated(before, { volumeMl: millilitres20(640), abv20: abv20(59) });
  if (!gone.ok) throw new Error(gone.issue.message);
  expect(gone.massFractionGone).toBeCloseTo(gone.ethanolG / (gone.ethanolG + gone.waterG), 12);
  expect(gone.massFractionGone).toBeGreaterThan(0.5);
  expect(gone.massFractionGone).toBeLessThan(0.8);
});

test("A34: half the proof is the parts of alcohol", () => {
  expect(gaugingFigures(proof60F(86)).alcohol).toBe(43);
});
