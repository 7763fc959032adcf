import fc from "fast-check";
import { expect, test } from "vitest";
import { abv20, grams, millilitres20 } from "../quantity/index.ts";
import { between } from "./fixtures/between.ts";
import { adjustStrength } from "./adjust-strength.ts";
import { describeLiquid, liquidOfVolume } from "./liquid.ts";
import { mix } from "./mix.ts";
import { reduceInSteps } from "./reduce-in-steps.ts";
import { strengthToLift } from "./strength-to-lift.ts";
import { waterToStrength } from "./water-to-strength.ts";

/** A start, an added liquid at least a point away, and a target between them. */
const task = fc
  .tuple(between(0, 100), between(0, 100), between(0, 0.99), between(1, 5000))
  .filter(([from, add]) => Math.abs(from - add) > 1)
  .map(([from, add, share, ml]) => ({
    ml,
    from,
    add: abv20(add),
    to: abv20(from + share * (add - from)),
    start: liquidOfVolume(millilitres20(ml), abv20(from)),
  }));

test("A25: what is to be added lands on the target, whether it reduces or fortifies", () => {
  fc.assert(
    fc.property(task, ({ start, ml, from, to, add }) => {
      const answer = adjustStrength({ start, to, add });
      if (!answer.ok) throw new Error(answer.issue.message);
      const mixed = mix([
        { volumeMl: millilitres20(ml), abv20: abv20(from) },
        { volumeMl: answer.addMl, abv20: add },
      ]);
      expect(Math.abs(mixed.abv20 - to)).toBeLessThan(1e-9);
      expect(Math.abs((answer.after.abv20 ?? 0) - to)).toBeLessThan(1e-9);
      expect(Math.abs(answer.after.volumeMl - mixed.volumeMl)).toBeLessThan(1e-9 * mixed.volumeMl);
      expect(Math.abs(answer.added.ethanolG + answer.added.waterG - answer.addG)).toBeLessThan(
        1e-12 * mixed.massG,
      );
      expect(Math.abs(answer.after.massG - start.ethanolG - start.waterG - answer.addG)).toBeLessThan(
        1e-12 * answer.after.massG,
      );
    }),
  );
});

test("A25: with water it is waterToStrength", () => {
  fc.assert(
    fc.property(between(1, 100), between(0.05, 1), between(1, 5000), (from, share, ml) => {
      const ask = { from: abv20(from), to: abv20(from * share) };
      const water = waterToStrength({ volumeMl: millilitres20(ml), ...ask });
      const answer = adjustStrength({
        start: liquidOfVolume(millilitres20(ml), ask.from),
        to: ask.to,
        add: abv20(0),
      });
      if (!answer.ok || !water.ok) throw new Error("both have an answer");
      expect(Math.abs(answer.addMl - water.waterMl)).toBeLessThan(1e-9 * water.finalMl);
    }),
  );
});

test("A25: a target the start has already needs nothing, whatever is added", () => {
  const start = liquidOfVolume(millilitres20(500), abv20(46));
  for (const add of [0, 46, 62.4]) {
    expect(adjustStrength({ start, to: abv20(46), add: abv20(add) })).toMatchObject({
      ok: true,
      addMl: 0,
      addG: 0,
    });
  }
});

test("A25: a target not between the two is a no that names the nearest strength", () => {
  const start = liquidOfVolume(millilitres20(500), abv20(46));
  const above = adjustStrength({ start, to: abv20(70), add: abv20(62.4) });
  expect(above).toMatchObject({
    ok: false,
    issue: { code: "target_not_between", limit: 62.4, received: 70 },
  });
  expect(!above.ok && above.nearest.abv20).toBe(62.4);
  const below = adjustStrength({ start, to: abv20(40), add: abv20(62.4) });
  expect(!below.ok && below.nearest.abv20).toBeCloseTo(46, 9);
  expect(!below.ok && below.issue.message).toMatch(
    /^target strength requires a value between the start's 4\d(\.\d+)? % vol and the added 62\.4 % vol, got 40 % vol$/,
  );
  // Found by chance: 2.2e-304 % vol asked for more water than a number can hold.
  expect(adjustStrength({ start, to: abv20(2.2e-304), add: abv20(0) })).toMatchObject({
    ok: false,
    nearest: { abv20: 0 },
  });
  const endless = adjustStrength({ start, to: abv20(0), add: abv20(0) });
  expect(endless).toMatchObject({
    ok: false,
    issue: { code: "target_not_between", limit: 0 },
    nearest: { abv20: 0 },
  });
  expect(adjustStrength({ start, to: abv20(62.4), add: abv20(62.4) }).ok).toBe(false);
});

test("A25: nothing to start from is a no", () => {
  const start = { ethanolG: grams(0), waterG: grams(0) };
  expect(adjustStrength({ start, to: abv20(46), add: abv20(0) })).toEqual({
    ok: false,
    issue: {
      code: "nothing_to_adjust",
      limit: 0,
      received: 0,
      message: "adjusting the strength requires some liquid, got 0 g",
    },
    nearest: { abv20: 46 },
  });
});

test("A27: in steps: the last lands on the target, and all of them together add what one step would", () => {
  fc.assert(
    fc.property(
      task,
      fc.integer({ min: 1, max: 12 }),
      fc.constantFrom("volume", "strength"),
      ({ start, from, to, add }, steps, by) => {
        // A step of less than 1e-9 % vol is no step (A25).
        fc.pre(Math.abs(to - from) > 1e-6);
        const once = adjustStrength({ start, to, add });
        const answer = reduceInSteps({ start, to, add, steps, by });
        if (!answer.ok || !once.ok) throw new Error("both have an answer");
        expect(answer.steps.length).toBe(steps);
        expect(Math.abs((answer.steps.at(-1)?.after.abv20 ?? -1) - to)).toBeLessThan(1e-8);
        const sum = answer.steps.reduce((all, step) => all + step.addMl, 0);
        expect(Math.abs(sum - once.addMl)).toBeLessThan(1e-7 * Math.max(1, once.addMl));
        const mass = answer.steps.reduce((all, step) => all + step.addG, 0);
        expect(Math.abs(mass - once.addG)).toBeLessThan(1e-7 * Math.max(1, once.addG));
      },
    ),
  );
});

test("A27: equal volumes are equal, equal falls in strength are equal", () => {
  const start = liquidOfVolume(millilitres20(700), abv20(60));
  const ask = { start, to: abv20(45), add: abv20(0), steps: 3 };
  const byVolume = reduceInSteps({ ...ask, by: "volume" });
  const byStrength = reduceInSteps({ ...ask, by: "strength" });
  if (!byVolume.ok || !byStrength.ok) throw new Error("both have an answer");
  for (const step of byVolume.steps) expect(step.addMl).toBeCloseTo(byVolume.steps[0]?.addMl ?? 0, 9);
  const strengths = byStrength.steps.map((step) => step.after.abv20);
  for (const [n, strength] of [55, 50, 45].entries()) expect(strengths[n]).toBeCloseTo(strength, 8);
  // The same fall takes more water the weaker and larger it has become.
  expect(byStrength.steps[2]?.addMl).toBeGreaterThan(byStrength.steps[0]?.addMl ?? 0);
  expect(byVolume.steps[0]?.after.abv20).toBeLessThan(55);
});

test("A27: a no of one step is a no of several; a number of steps that is none throws", () => {
  const start = liquidOfVolume(millilitres20(700), abv20(46));
  const ask = { start, to: abv20(60), add: abv20(0), by: "volume" } as const;
  expect(reduceInSteps({ ...ask, steps: 2 })).toEqual(adjustStrength(ask));
  for (const steps of [0, 1.5, 101, Number.NaN]) {
    expect(() => reduceInSteps({ ...ask, steps })).toThrow(
      `steps requires a whole number from 1 to 100, got ${steps}`,
    );
  }
  expect(reduceInSteps({ ...ask, to: abv20(40), steps: 100 }).ok).toBe(true);
});

test("A31: the strength a second liquid must have, and how much of it, are each other's inverse", () => {
  fc.assert(
    fc.property(task, ({ start, to, add }) => {
      const amount = adjustStrength({ start, to, add });
      if (!amount.ok) throw new Error(amount.issue.message);
      fc.pre(amount.addMl > 1e-3 * describeLiquid(start).volumeMl);
      const strength = strengthToLift({ start, addMl: amount.addMl, to });
      if (!strength.ok) throw new Error(strength.issue.message);
      // A small addition has to be found from what little it does.
      const share = amount.addMl / amount.after.volumeMl;
      expect(Math.abs(strength.abv20 - add)).toBeLessThan(1e-9 / share);
      const mixed = describeLiquid({
        ethanolG: grams(start.ethanolG + liquidOfVolume(amount.addMl, strength.abv20).ethanolG),
        waterG: grams(start.waterG + liquidOfVolume(amount.addMl, strength.abv20).waterG),
      });
      expect(Math.abs((mixed.abv20 ?? 0) - to)).toBeLessThan(1e-9);
    }),
  );
});

test("A31: at the ends it takes water, or pure ethanol, exactly", () => {
  const start = liquidOfVolume(millilitres20(500), abv20(46));
  for (const add of [0, 100]) {
    const addMl = millilitres20(100);
    const to = mix([
      { volumeMl: millilitres20(500), abv20: abv20(46) },
      { volumeMl: addMl, abv20: abv20(add) },
    ]).abv20;
    const answer = strengthToLift({ start, addMl, to });
    expect(answer.ok && Math.abs(answer.abv20 - add)).toBeLessThan(1e-9);
  }
});

test("A31: an amount too small even of pure ethanol, or of water, is a no with what that comes to", () => {
  const start = liquidOfVolume(millilitres20(500), abv20(46));
  const up = strengthToLift({ start, addMl: millilitres20(10), to: abv20(58) });
  const most = mix([
    { volumeMl: millilitres20(500), abv20: abv20(46) },
    { volumeMl: millilitres20(10), abv20: abv20(100) },
  ]).abv20;
  expect(up).toMatchObject({ ok: false, issue: { code: "amount_too_small", received: 58 } });
  expect(!up.ok && up.nearest.abv20).toBeCloseTo(most, 9);
  expect(!up.ok && up.issue.limit).toBeCloseTo(most, 9);
  expect(!up.ok && up.issue.message).toMatch(
    /^target strength requires at most the 47\.\d+ % vol that 10 mL of ethanol makes, got 58 % vol$/,
  );
  const down = strengthToLift({ start, addMl: millilitres20(10), to: abv20(40) });
  expect(!down.ok && down.issue.message).toMatch(
    /^target strength requires at least the 45\.\d+ % vol that 10 mL of water makes, got 40 % vol$/,
  );
  expect(() => strengthToLift({ start, addMl: millilitres20(0), to: abv20(58) })).toThrow(
    "added volume requires",
  );
  expect(() => strengthToLift({ start, addMl: millilitres20(0), to: abv20(58) })).toThrow("got 0 mL");
});

test("A27: the last step aims at the target itself, also where rounding would go below 0", () => {
  const start = liquidOfVolume(millilitres20(1), abv20(2.4491727041146263e-222));
  const ask = { start, to: abv20(0), add: abv20(40), steps: 3, by: "strength" } as const;
  expect(reduceInSteps(ask).ok).toBe(true);
});
