import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, grams, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import { makeUp } from "./make-up.ts";
import type { MadeUp } from "./make-up.ts";
import { mix } from "./mix.ts";
import { partsToFill } from "./parts-to-fill.ts";
import { waterToFill } from "./water-to-fill.ts";

const nothing = { ethanolG: grams(0), waterG: grams(0) };
/** What was poured of three liquids: what was held, and two added. Two strengths are at least a point apart. */
const poured = fc
  .tuple(
    between(0, 100),
    between(0, 100),
    between(0, 100),
    between(0, 2000),
    between(1, 2000),
    between(1, 2000),
  )
  .filter(([, a, b]) => Math.abs(a - b) > 1)
  .map(([held, a, b, heldMl, aMl, bMl]) => ({
    held: liquidOfVolume(millilitres20(heldMl), abv20(held)),
    add: [abv20(a), abv20(b)] as const,
    addMl: [aMl, bMl] as const,
    whole: mix([
      { volumeMl: millilitres20(heldMl), abv20: abv20(held) },
      { volumeMl: millilitres20(aMl), abv20: abv20(a) },
      { volumeMl: millilitres20(bMl), abv20: abv20(b) },
    ]),
  }));

function made(answer: ReturnType<typeof makeUp>): MadeUp {
  if (!answer.ok) throw new Error(answer.issue.message);
  return answer;
}

test("A28: the two amounts that made a mixture are found again from its volume or mass and strength", () => {
  fc.assert(
    fc.property(poured, ({ held, add, addMl, whole }) => {
      const apart = Math.abs(add[0] - add[1]);
      for (const final of [{ ml: whole.volumeMl }, { g: whole.massG }]) {
        const answer = made(makeUp({ held, add, to: whole.abv20, final }));
        const slack = (1e-7 * whole.volumeMl) / apart;
        expect(Math.abs(answer.addMl[0] - addMl[0])).toBeLessThan(slack);
        expect(Math.abs(answer.addMl[1] - addMl[1])).toBeLessThan(slack);
        expect(Math.abs(answer.after.volumeMl - whole.volumeMl)).toBeLessThan(1e-9 * whole.volumeMl);
        expect(Math.abs(answer.after.massG - whole.massG)).toBeLessThan(1e-9 * whole.massG);
        expect(Math.abs((answer.after.abv20 ?? 0) - whole.abv20)).toBeLessThan(1e-9);
        for (const n of [0, 1] as const) {
          const { ethanolG, waterG } = liquidOfVolume(answer.addMl[n], add[n]);
          expect(Math.abs(answer.addG[n] - ethanolG - waterG)).toBeLessThan(1e-9 * whole.massG);
        }
      }
    }),
  );
});

test("A28: an empty vessel, a whiskey and water: waterToFill", () => {
  fc.assert(
    fc.property(between(20, 90), between(0.3, 0.95), between(10, 2000), (from, share, ml) => {
      const to = abv20(from * share);
      const finalMl = millilitres20(ml);
      const answer = made(
        makeUp({ held: nothing, add: [abv20(from), abv20(0)], to, final: { ml: finalMl } }),
      );
      const known = waterToFill({ finalMl, from: abv20(from), to });
      if (!known.ok) throw new Error(known.issue.message);
      expect(Math.abs(answer.addMl[0] - known.liquidMl)).toBeLessThan(1e-9 * ml);
      expect(Math.abs(answer.addMl[1] - known.waterMl)).toBeLessThan(1e-9 * ml);
    }),
  );
});

test("A28: a strength the two cannot reach is a no that names the range and gives the nearest, filled", () => {
  const held = liquidOfVolume(millilitres20(500), abv20(46));
  const add = [abv20(62.4), abv20(0)] as const;
  for (const final of [{ ml: millilitres20(700) }, { g: grams(640) }]) {
    const strong = makeUp({ held, add, to: abv20(60), final });
    if (strong.ok) throw new Error("too strong");
    expect(strong.issue.code).toBe("strength_not_reachable");
    const { nearest } = strong;
    expect(nearest?.addMl[1]).toBe(0);
    expect(nearest?.addMl[0]).toBeGreaterThan(100);
    expect("ml" in final ? nearest?.after.volumeMl : nearest?.after.massG).toBeCloseTo(
      "ml" in final ? final.ml : final.g,
      6,
    );
    expect(strong.issue.limit).toBe(nearest?.after.abv20);
    const weak = makeUp({ held, add, to: abv20(10), final });
    expect(!weak.ok && weak.nearest?.addMl[0]).toBe(0);
    expect(!weak.ok && weak.issue.limit).toBeLessThan(40);
    const low = !weak.ok ? weak.issue.limit : 0;
    expect(strong.issue.message).toBe(
      `target strength requires a value from ${low} to ${strong.issue.limit} % vol with these liquids and this final amount, got 60 % vol`,
    );
    // At both ends it can be done, from either order of the two.
    for (const to of [low, strong.issue.limit]) {
      expect(made(makeUp({ held, add, to: abv20(to), final })).after.abv20).toBeCloseTo(to, 8);
      expect(made(makeUp({ held, add: [add[1], add[0]], to: abv20(to), final })).after.abv20).toBeCloseTo(
        to,
        8,
      );
    }
  }
});

test("A28: a vessel that holds more than the final amount is a no", () => {
  const held = liquidOfVolume(millilitres20(500), abv20(46));
  const add = [abv20(62.4), abv20(0)] as const;
  const byVolume = makeUp({ held, add, to: abv20(46), final: { ml: millilitres20(400) } });
  expect(byVolume).toMatchObject({
    ok: false,
    issue: { code: "more_than_final_already", limit: 400 },
    nearest: null,
  });
  expect(!byVolume.ok && byVolume.issue.message).toMatch(
    /^making up requires a vessel holding at most the final 400 mL, got (500|499\.99)\d*(\.\d+)? mL$/,
  );
  const byMass = makeUp({ held, add, to: abv20(46), final: { g: grams(400) } });
  expect(!byMass.ok && byMass.issue.message).toMatch(/at most the final 400 g, got 46\d\.\d+ g$/);
  expect(!byMass.ok && byMass.issue.received).toBeCloseTo(describeLiquid(held).massG, 9);
});

test("A16: two liquids of one strength, or a final amount below 0, throw", () => {
  const ask = { held: nothing, to: abv20(46), final: { ml: millilitres20(700) } };
  expect(() => makeUp({ ...ask, add: [abv20(46), abv20(46)] })).toThrow(
    "makeUp requires two liquids of different strength, got 46 % vol twice",
  );
  const add = [abv20(62.4), abv20(0)] as const;
  expect(() => makeUp({ ...ask, add, final: { ml: -1 as never } })).toThrow(
    "final amount requires a finite number of 0 or more, got -1 mL",
  );
  expect(() => makeUp({ ...ask, add, final: { g: -1 as never } })).toThrow("got -1 g");
});

const recipe = fc.array(
  fc.record({ parts: fc.integer({ min: 1, max: 12 }), abv20: between(40, 80).map(abv20) }),
  { minLength: 1, maxLength: 5 },
);

test("A29: parts fill a vessel exactly, keep their ratio and, if asked, land on the strength", () => {
  fc.assert(
    fc.property(recipe, between(1, 5000), fc.option(between(10, 39)), (parts, ml, to) => {
      const answer = partsToFill({
        parts,
        finalMl: millilitres20(ml),
        ...(to === null ? {} : { to: abv20(to) }),
      });
      if (!answer.ok) throw new Error(answer.issue.message);
      expect(Math.abs(answer.mixture.volumeMl - ml)).toBeLessThan(1e-9 * ml);
      const unit = (answer.pours[0]?.volumeMl ?? 0) / (parts[0]?.parts ?? 1);
      for (const [n, part] of parts.entries()) {
        expect(answer.pours[n]?.volumeMl).toBeCloseTo(unit * part.parts, 8);
        expect(answer.pours[n]?.abv20).toBe(part.abv20);
      }
      if (to === null) {
        expect(answer.reducing).toBeNull();
        expect(answer.pours.length).toBe(parts.length);
      } else {
        expect(Math.abs(answer.mixture.abv20 - to)).toBeLessThan(1e-9);
        expect(answer.pours.at(-1)).toEqual(answer.reducing);
        expect(answer.reducing?.abv20).toBe(0);
      }
      expect(mix(answer.pours).abv20).toBe(answer.mixture.abv20);
    }),
  );
});

test("A29: reduced with another liquid than water, and a target that cannot be had", () => {
  const parts = [{ parts: 1, abv20: abv20(60) }];
  const finalMl = millilitres20(700);
  const answer = partsToFill({ parts, finalMl, to: abv20(50), add: abv20(40) });
  expect(answer.ok && answer.reducing?.abv20).toBe(40);
  expect(answer.ok && answer.mixture.abv20).toBeCloseTo(50, 9);
  const no = partsToFill({ parts, finalMl, to: abv20(30), add: abv20(40) });
  expect(no).toMatchObject({ ok: false, issue: { code: "target_not_between" }, nearest: { abv20: 40 } });
  expect(() => partsToFill({ parts, finalMl: millilitres20(0) })).toThrow("final volume requires");
  expect(() => partsToFill({ parts, finalMl: millilitres20(0) })).toThrow("got 0 mL");
});
