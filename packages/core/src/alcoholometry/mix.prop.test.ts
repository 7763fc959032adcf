import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { liquidOfVolume } from "./liquid.ts";
import { mix } from "./mix.ts";
import type { Pour } from "./mix.ts";
import { mixParts } from "./mix-parts.ts";

const pourOf = (low: number, high: number): fc.Arbitrary<Pour> =>
  fc.record({
    volumeMl: between(0.1, 5000).map(millilitres20),
    abv20: between(low, high).map(abv20),
  });
const pours = fc.array(pourOf(0, 100), { minLength: 1, maxLength: 8 });
const relative = (x: number, y: number) => Math.abs(x - y) / Math.max(Math.abs(y), Number.MIN_VALUE);

test("A6: mass and ethanol are the sums of the pours', within 1e-12", () => {
  fc.assert(
    fc.property(pours, (all) => {
      const mixed = mix(all);
      const liquids = all.map((pour) => liquidOfVolume(pour.volumeMl, pour.abv20));
      const ethanol = liquids.reduce((sum, liquid) => sum + liquid.ethanolG, 0);
      const mass = liquids.reduce((sum, liquid) => sum + liquid.ethanolG + liquid.waterG, 0);
      expect(Math.abs(mixed.ethanolG - ethanol)).toBeLessThanOrEqual(1e-12 * mass);
      expect(relative(mixed.massG, mass)).toBeLessThan(1e-12);
      expect(relative(mixed.ethanolG + mixed.waterG, mixed.massG)).toBeLessThan(1e-12);
    }),
  );
});

test("A6: the strength found and the volume found hold the ethanol that was poured", () => {
  fc.assert(
    fc.property(pours, (all) => {
      const mixed = mix(all);
      const again = liquidOfVolume(mixed.volumeMl, mixed.abv20);
      expect(Math.abs(again.ethanolG - mixed.ethanolG)).toBeLessThan(1e-10 * mixed.massG);
      expect(Math.abs(again.waterG - mixed.waterG)).toBeLessThan(1e-10 * mixed.massG);
    }),
  );
});

test("A7: the order of the pours does not change a bit", () => {
  const shuffled = pours.chain((all) =>
    fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
  );
  fc.assert(
    fc.property(shuffled, ([all, other]) => {
      expect(mix(other)).toEqual(mix(all));
    }),
  );
});

test("A7: mixing in stages gives the same as mixing at once, within 1e-10", () => {
  fc.assert(
    fc.property(pours, pours, (first, second) => {
      const once = mix([...first, ...second]);
      const staged = mix([mix(first), mix(second)]);
      expect(Math.abs(staged.abv20 - once.abv20)).toBeLessThan(1e-10);
      expect(relative(staged.volumeMl, once.volumeMl)).toBeLessThan(1e-10);
      expect(relative(staged.massG, once.massG)).toBeLessThan(1e-10);
    }),
  );
});

test("A8: a mixture lies between its weakest and its strongest pour", () => {
  fc.assert(
    fc.property(pours, (all) => {
      const strengths = all.map((pour) => pour.abv20);
      const { abv20: strength } = mix(all);
      expect(strength).toBeGreaterThanOrEqual(Math.min(...strengths) - 1e-10);
      expect(strength).toBeLessThanOrEqual(Math.max(...strengths) + 1e-10);
    }),
  );
});

test("A8: more of the stronger pour makes the mixture stronger", () => {
  fc.assert(
    fc.property(between(0, 90), between(1, 10), between(1, 100), between(1, 100), (low, gap, ml, more) => {
      const weak = { volumeMl: millilitres20(100), abv20: abv20(low) };
      const strong = (volume: number) => ({ volumeMl: millilitres20(volume), abv20: abv20(low + gap) });
      expect(mix([weak, strong(ml + more)]).abv20).toBeGreaterThan(mix([weak, strong(ml)]).abv20);
    }),
  );
});

test("A8: adding water dilutes", () => {
  fc.assert(
    fc.property(between(1, 100), between(1, 1000), (strength, waterMl) => {
      const whiskey = { volumeMl: millilitres20(100), abv20: abv20(strength) };
      const water = { volumeMl: millilitres20(waterMl), abv20: abv20(0) };
      expect(mix([whiskey, water]).abv20).toBeLessThan(strength);
    }),
  );
});

test("A9: pours of one strength do not contract", () => {
  fc.assert(
    fc.property(
      between(0, 100),
      fc.array(between(0.1, 5000), { minLength: 1, maxLength: 8 }),
      (strength, volumes) => {
        const same = volumes.map((ml) => ({ volumeMl: millilitres20(ml), abv20: abv20(strength) }));
        const { contractionMl, sumMl } = mix(same);
        expect(Math.abs(contractionMl)).toBeLessThan(ROUNDING * sumMl);
      },
    ),
  );
});

/** What the inverse leaves of a volume, as a share of it: 1e-12 was seen where the density curve has no bend. */
const ROUNDING = 1e-11;

test("A10: pours of 19.6 % vol or more never swell", () => {
  fc.assert(
    fc.property(fc.array(pourOf(19.6, 100), { minLength: 2, maxLength: 6 }), (all) => {
      const { contractionMl, sumMl } = mix(all);
      expect(contractionMl).toBeGreaterThan(-ROUNDING * sumMl);
    }),
    { numRuns: 1000 },
  );
});

test("A10: pours of 19.5 % vol or less never shrink", () => {
  fc.assert(
    fc.property(fc.array(pourOf(0, 19.5), { minLength: 2, maxLength: 6 }), (all) => {
      const { contractionMl, sumMl } = mix(all);
      expect(contractionMl).toBeLessThan(ROUNDING * sumMl);
    }),
    { numRuns: 1000 },
  );
});

test("A10: whatever is mixed swells by less than 0.16 %", () => {
  fc.assert(
    fc.property(fc.array(pourOf(0, 40), { minLength: 2, maxLength: 6 }), (all) => {
      const { contractionMl, sumMl } = mix(all);
      expect(contractionMl).toBeGreaterThan(-0.0016 * sumMl);
    }),
    { numRuns: 1000 },
  );
});

test("A6: parts are volumes in proportion, and scaling the total changes no strength", () => {
  const parts = fc.array(
    fc.record({ parts: fc.integer({ min: 1, max: 12 }), abv20: between(0, 100).map(abv20) }),
    {
      minLength: 1,
      maxLength: 6,
    },
  );
  fc.assert(
    fc.property(parts, between(1, 5000), (lines, totalMl) => {
      const byParts = mixParts(lines, millilitres20(totalMl));
      const asPours = mix(lines.map((line) => ({ volumeMl: millilitres20(line.parts), abv20: line.abv20 })));
      expect(relative(byParts.sumMl, totalMl)).toBeLessThan(1e-12);
      expect(Math.abs(byParts.abv20 - asPours.abv20)).toBeLessThan(1e-10);
    }),
  );
});
