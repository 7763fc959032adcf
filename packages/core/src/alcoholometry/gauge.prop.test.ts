import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, celsius, kgPerM3, proof60F } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { density } from "./density.ts";
import { gauge } from "./gauge.ts";
import type { Gauged } from "./gauge.ts";
import type { HydrometerReading } from "./hydrometer.ts";
import { proof60FFromAbv20 } from "./proof.ts";
import { readingOf } from "./reading-of.ts";
import { T60F } from "./reference-temperatures.ts";
import { massFractionFromAbv20 } from "./strength-by-volume.ts";

const scale = fc.constantFrom("abv20", "proof60F", "density20");

function gauged(reading: HydrometerReading, t: number): Gauged {
  const answer = gauge(reading, celsius(t));
  if (!answer.ok) throw new Error(answer.issue.message);
  return answer;
}

test("A21: what an instrument shows in a known liquid gauges back to the liquid within 1e-10 % vol", () => {
  fc.assert(
    fc.property(scale, between(1, 99), between(0, 40), (kind, abv, t) => {
      const reading = readingOf(kind, abv20(abv), celsius(t));
      if (reading === null) return;
      expect(Math.abs(gauged(reading, t).abv20 - abv)).toBeLessThan(1e-10);
    }),
    { numRuns: 1000 },
  );
});

test("A20: a reading rises with the strength, and falls with the warmth for the strength it means", () => {
  fc.assert(
    fc.property(
      between(20, 80),
      between(0.1, 10),
      between(0, 39),
      between(0.1, 1),
      (abv, more, t, warmer) => {
        const at = (value: number, temperature: number): number =>
          gauged({ scale: "abv20", value: abv20(value) }, temperature).abv20;
        expect(at(abv + more, t)).toBeGreaterThan(at(abv, t));
        expect(at(abv, t + warmer)).toBeLessThan(at(abv, t));
      },
    ),
  );
});

test("A20: at its own temperature an instrument is right: 20 °C for % vol and density, 60 °F for proof", () => {
  fc.assert(
    fc.property(between(0, 100), (abv) => {
      const reading = { scale: "abv20", value: abv20(abv) } as const;
      const answer = gauged(reading, 20);
      expect(answer.abv20).toBeCloseTo(abv, 10);
      expect(answer.proof60F).toBeCloseTo(proof60FFromAbv20(abv20(abv)), 9);
      expect(answer.massFraction).toBeCloseTo(massFractionFromAbv20(abv20(abv)), 12);
      expect(gauged({ scale: "proof60F", value: proof60F(2 * abv) }, T60F).proof60F).toBeCloseTo(2 * abv, 9);
    }),
  );
  const rho = density(massFractionFromAbv20(abv20(46)), celsius(20));
  const byDensity = gauged({ scale: "density20", value: rho }, 20);
  expect(byDensity.abv20).toBeCloseTo(46, 9);
  expect([byDensity.kgPerM3, byDensity.kgPerM3At20]).toEqual([
    expect.closeTo(rho, 9) as number,
    expect.closeTo(rho, 9) as number,
  ]);
});

test("A20: the density given is that at the reading's temperature, smaller by the glass's growth than the mark", () => {
  const answer = gauged({ scale: "density20", value: kgPerM3(930) }, 30);
  expect(answer.kgPerM3).toBeCloseTo(930 / (1 + 25e-6 * 10), 9);
  expect(answer.kgPerM3At20).toBeGreaterThan(answer.kgPerM3);
  expect(answer.kgPerM3At20).toBeCloseTo(density(answer.massFraction, celsius(20)), 9);
  const cold = gauged({ scale: "density20", value: kgPerM3(930) }, 10);
  expect(cold.kgPerM3).toBeCloseTo(930 / (1 - 25e-6 * 10), 9);
  // A proof hydrometer's glass is right at 60 °F, 4.44 °C colder.
  const rhoMark = density(massFractionFromAbv20(abv20(50)), celsius(T60F));
  const proof = gauged({ scale: "proof60F", value: proof60FFromAbv20(abv20(50)) }, 20);
  expect(proof.kgPerM3).toBeCloseTo(rhoMark / (1 + (25e-6 * 80) / 18), 6);
});

test("A20: a reading no mixture gives is a no that names the bound and the nearest", () => {
  const cold = gauge({ scale: "abv20", value: abv20(100) }, celsius(10));
  expect(cold).toMatchObject({
    ok: false,
    issue: { code: "reading_lighter_than_any", limit: expect.closeTo(797.76, 1) as number },
    nearest: { ok: true, abv20: 100, massFraction: 1 },
  });
  expect(!cold.ok && cold.issue.message).toBe(
    "reading requires at least 797.76 kg/m³ at 10 °C, got 789.44 kg/m³",
  );
  const warm = gauge({ scale: "density20", value: kgPerM3(1000) }, celsius(25));
  expect(warm).toMatchObject({
    ok: false,
    issue: { code: "reading_heavier_than_any", limit: expect.closeTo(997.05, 1) as number },
    nearest: { abv20: 0, massFraction: 0 },
  });
  expect(!warm.ok && warm.issue.message).toBe(
    "reading requires at most 997.04 kg/m³ at 25 °C, got 999.88 kg/m³",
  );
  const frozen = gauge({ scale: "density20", value: kgPerM3(995) }, celsius(-10));
  expect(frozen.ok).toBe(false);
  expect(!frozen.ok && frozen.nearest.massFraction).toBeGreaterThan(0.15);
});

test("A21: an instrument off its scale shows nothing", () => {
  expect(readingOf("abv20", abv20(0), celsius(5))).toBeNull();
  expect(readingOf("abv20", abv20(100), celsius(25))).toBeNull();
  expect(readingOf("density20", abv20(0), celsius(5))).toMatchObject({ scale: "density20" });
});

test("A16: gauging outside -20 to 40 °C, and readings that are none, throw", () => {
  const reading = { scale: "abv20", value: abv20(46) } as const;
  expect(() => gauge(reading, celsius(41))).toThrow(
    "temperature requires a number from -20 to 40, got 41 °C",
  );
  expect(() => gauge(reading, celsius(-21))).toThrow("got -21 °C");
  expect(() => gauge({ scale: "density20", value: -1 as never }, celsius(20))).toThrow(
    "reading requires a finite number of 0 or more, got -1 kg/m³",
  );
  expect(() => readingOf("abv20", abv20(46), celsius(41))).toThrow("got 41 °C");
});
