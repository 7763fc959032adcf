import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, grams, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { fillVessel } from "./fill-vessel.ts";
import { liquidOfVolume } from "./liquid.ts";
import { mix } from "./mix.ts";

const percent = between(0, 100).map(abv20);

test("A14: filling brings the vessel to its capacity, whatever it held", () => {
  fc.assert(
    fc.property(percent, percent, between(1, 5000), between(0, 1), (held, added, capacity, share) => {
      const capacityMl = millilitres20(capacity);
      const heldMl = millilitres20(capacity * share);
      const answer = fillVessel({ ...liquidOfVolume(heldMl, held), capacityMl, abv20: added });
      if (!answer.ok) throw new Error(answer.issue.message);
      const mixed = mix([
        { volumeMl: heldMl, abv20: held },
        { volumeMl: answer.addMl, abv20: added },
      ]);
      expect(Math.abs(mixed.volumeMl - capacity)).toBeLessThan(1e-9 * capacity);
      expect(Math.abs(answer.after.volumeMl - capacity)).toBeLessThan(1e-9 * capacity);
      expect(Math.abs(answer.addMl - answer.naiveAddMl - mixed.contractionMl)).toBeLessThan(1e-9 * capacity);
    }),
    { numRuns: 1000 },
  );
});

test("A14: a drop of water into nearly full pure ethanol, where a drop adds least", () => {
  const capacityMl = millilitres20(1000);
  const held = liquidOfVolume(millilitres20(999.999), abv20(100));
  const answer = fillVessel({ ...held, capacityMl, abv20: abv20(0) });
  if (!answer.ok) throw new Error(answer.issue.message);
  expect(answer.addMl).toBeGreaterThan(answer.naiveAddMl);
  expect(Math.abs(answer.after.volumeMl - 1000)).toBeLessThan(1e-6);
});

test("A14: an empty vessel takes its capacity, a full one nothing", () => {
  const capacityMl = millilitres20(700);
  const empty = fillVessel({ ethanolG: grams(0), waterG: grams(0), capacityMl, abv20: abv20(46) });
  expect(empty.ok && empty.addMl).toBeCloseTo(700, 9);
  const full = fillVessel({ ...liquidOfVolume(capacityMl, abv20(46)), capacityMl, abv20: abv20(46) });
  expect(full.ok && full.addMl).toBeCloseTo(0, 9);
});

test("A14: a vessel over its capacity is a no that names the capacity", () => {
  const held = liquidOfVolume(millilitres20(750), abv20(46));
  const answer = fillVessel({ ...held, capacityMl: millilitres20(700), abv20: abv20(46) });
  expect(answer).toMatchObject({ ok: false, issue: { code: "vessel_over_capacity", limit: 700 } });
  expect(answer.ok || answer.issue.received).toBeCloseTo(750, 9);
});
