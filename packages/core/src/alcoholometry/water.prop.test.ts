import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { mix } from "./mix.ts";
import { waterToFill } from "./water-to-fill.ts";
import { waterToStrength } from "./water-to-strength.ts";

/** A start and a target no stronger than it. */
const fromTo = fc
  .tuple(between(1, 100), between(0.01, 1))
  .map(([from, share]) => ({ from: abv20(from), to: abv20(from * share) }));
const water = abv20(0);

test("A11: the water lands on the target and the volume is as said", () => {
  fc.assert(
    fc.property(fromTo, between(1, 5000), ({ from, to }, ml) => {
      const volumeMl = millilitres20(ml);
      const answer = waterToStrength({ volumeMl, from, to });
      if (!answer.ok) throw new Error(answer.issue.message);
      const mixed = mix([
        { volumeMl, abv20: from },
        { volumeMl: answer.waterMl, abv20: water },
      ]);
      expect(Math.abs(mixed.abv20 - to)).toBeLessThan(1e-9);
      expect(Math.abs(mixed.volumeMl - answer.finalMl)).toBeLessThan(1e-9 * answer.finalMl);
      expect(Math.abs(answer.waterMl - answer.naiveWaterMl - mixed.contractionMl)).toBeLessThan(
        1e-9 * answer.finalMl,
      );
    }),
  );
});

test("A13: liquid and water fill exactly the volume asked at the target", () => {
  fc.assert(
    fc.property(fromTo, between(1, 5000), ({ from, to }, ml) => {
      const answer = waterToFill({ finalMl: millilitres20(ml), from, to });
      if (!answer.ok) throw new Error(answer.issue.message);
      const mixed = mix([
        { volumeMl: answer.liquidMl, abv20: from },
        { volumeMl: answer.waterMl, abv20: water },
      ]);
      expect(Math.abs(mixed.volumeMl - ml)).toBeLessThan(1e-9 * ml);
      expect(Math.abs(mixed.abv20 - to)).toBeLessThan(1e-9);
    }),
  );
});

test("A11, A13: the two sums are each other's inverse", () => {
  fc.assert(
    fc.property(fromTo, between(1, 5000), ({ from, to }, ml) => {
      const reduced = waterToStrength({ volumeMl: millilitres20(ml), from, to });
      if (!reduced.ok) throw new Error(reduced.issue.message);
      const filled = waterToFill({ finalMl: reduced.finalMl, from, to });
      if (!filled.ok) throw new Error(filled.issue.message);
      expect(Math.abs(filled.liquidMl - ml)).toBeLessThan(1e-9 * ml);
      expect(Math.abs(filled.waterG - reduced.waterG)).toBeLessThan(1e-9 * reduced.finalMl);
    }),
  );
});

test("A11: a whiskey needs more water than the head sum says", () => {
  fc.assert(
    fc.property(between(45, 75), between(0.6, 0.98), (from, share) => {
      const ask = { volumeMl: millilitres20(700), from: abv20(from), to: abv20(from * share) };
      const answer = waterToStrength(ask);
      if (!answer.ok) throw new Error(answer.issue.message);
      expect(answer.waterMl).toBeGreaterThan(answer.naiveWaterMl);
    }),
  );
});
