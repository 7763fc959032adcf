import fc from "fast-check";
import { expect, test } from "vitest";
import { mixParts } from "../alcoholometry/index.ts";
import { abv20, millilitres20 } from "../quantity/index.ts";
import { axesOf } from "./axes.ts";

const shelf = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 6 });

test("F3 no mix of a shelf is stronger or weaker than the bound on its mean by volume says", () => {
  fc.assert(
    fc.property(shelf, fc.array(fc.nat(20), { minLength: 6, maxLength: 6 }), (strengths, parts) => {
      const whiskeys = strengths.map((value, n) => ({ id: `${n}`, abv20: abv20(value), profile: {} }));
      const original = { profile: {}, abv20: 50, youngestYears: null };
      const { below, above } = axesOf({ whiskeys, slots: [], original });
      const lines = whiskeys.map((whiskey, n) => ({
        parts: parts[n]! + (n === 0 ? 1 : 0),
        abv20: whiskey.abv20,
      }));
      const all = lines.reduce((sum, line) => sum + line.parts, 0);
      const mean = lines.reduce((sum, line) => sum + line.parts * line.abv20, 0) / all;
      const exact = mixParts(lines, millilitres20(1000)).abv20;
      expect(exact).toBeGreaterThanOrEqual(mean - below);
      expect(exact).toBeLessThanOrEqual(mean + above);
    }),
    { numRuns: 1000, seed: 12 },
  );
});

test("F3 density falls ever faster with strength, from 5 % vol up, which the bound rests on", async () => {
  const { density, massFractionFromAbv20 } = await import("../alcoholometry/index.ts");
  const { celsius } = await import("../quantity/index.ts");
  const at = (percent: number): number => density(massFractionFromAbv20(abv20(percent)), celsius(20));
  for (let percent = 20; percent <= 99; percent += 0.5)
    expect(at(percent - 0.5) + at(percent + 0.5) - 2 * at(percent)).toBeLessThan(0);
});
