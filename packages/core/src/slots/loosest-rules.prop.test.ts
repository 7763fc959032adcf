import fc from "fast-check";
import { expect, test } from "vitest";
import { mixParts } from "../alcoholometry/index.ts";
import { millilitres20 } from "../quantity/index.ts";
import { everyFilling, worstDistance } from "./fixtures/by-counting.ts";
import { smallFill } from "./fixtures/fill-problems.ts";
import { judge } from "./fixtures/judge.ts";
import { loosestRule } from "./loosest-rule.ts";
import { type LooseProblem, loosestRules } from "./loosest-rules.ts";
import { parseRule } from "./parse-rule.ts";
import { printCondition, printRule } from "./print-rule.ts";
import { roundBound } from "./round-bound.ts";
import type { RuledWhiskey } from "./ruled-whiskey.ts";
import { slotSides } from "./slot-sides.ts";

const RUNS = 150;

/** The recipe has the first whiskeys of a drawn shelf in its slots, and comes to what they come to; nothing of these is unknown. */
const loose = fc
  .tuple(
    smallFill,
    fc.double({ min: 0.2, max: 3, noNaN: true }),
    fc.constantFrom("one" as const, "all" as const),
  )
  .filter(([{ whiskeys, slots }]) => whiskeys.length >= slots.length)
  .map(([{ whiskeys, slots, original }, within, changing]): LooseProblem => {
    const whole = whiskeys.slice(0, slots.length).map((whiskey) => ({
      ...whiskey,
      profile: { "smoke.smoke": 2, "sweet.honey": 5, peach: 4, ...known(whiskey.profile) },
      ageYears: whiskey.ageYears ?? 9,
    }));
    return {
      slots: slots.map(({ parts }, n) => ({ parts, whiskey: whole[n]! })),
      original: {
        profile: Object.fromEntries(
          Object.keys(whole[0]!.profile).map((name) => [name, mean(slots, whole, name)]),
        ),
        abv20: original.abv20 === null ? null : mixParts(strengths(slots, whole), millilitres20(700)).abv20,
        youngestYears: Math.min(...whole.map(({ ageYears }) => ageYears)),
      },
      known: whiskeys,
      within,
      changing,
    };
  });
type Parts = readonly { readonly parts: number }[];
const mean = (slots: Parts, whole: readonly RuledWhiskey[], name: string): number =>
  slots.reduce((sum, { parts }, n) => sum + parts * (whole[n]!.profile[name] as number), 0) /
  slots.reduce((sum, { parts }) => sum + parts, 0);
const strengths = (slots: Parts, whole: readonly RuledWhiskey[]) =>
  slots.map(({ parts }, n) => ({ parts, abv20: whole[n]!.abv20 }));
const known = (profile: RuledWhiskey["profile"]): Record<string, number> =>
  Object.fromEntries(
    Object.entries(profile).flatMap(([name, own]) =>
      own === null ? [] : [[name, typeof own === "number" ? own : own.value]],
    ),
  );

test("U1 every known whiskey that a rule lets in is within the distance, judged and measured again from the words", {
  timeout: 60_000,
}, () => {
  let let_in = 0;
  let ruled = 0;
  fc.assert(
    fc.property(loose, (problem) => {
      const { slots, eachWithin, together } = loosestRules(problem);
      const fill = {
        whiskeys: problem.known,
        slots: problem.slots.map(({ parts }) => ({ parts, rule: [] })),
        original: problem.original,
      };
      const originals = problem.slots.map(({ whiskey }) => whiskey);
      const shelf = new Map(problem.known.map((one) => [one.id, one]));
      const may: RuledWhiskey[][] = [];
      for (const [n, { rule, lets, notJudged, farthest }] of slots.entries()) {
        may.push([originals[n]!, ...lets.map((id) => shelf.get(id)!)]);
        if (rule === null) continue;
        ruled += 1;
        const printed = printRule(rule);
        expect(parseRule(printed)).toEqual({ ok: true, rule });
        const words = rule.map(printCondition);
        expect(words.every((text) => judge(text, originals[n]!) === "kept")).toBe(true);
        let most = 0;
        for (const one of problem.known) {
          if (one.id === originals[n]!.id || notJudged.includes(one.id)) continue;
          const kept = words.every((text) => judge(text, one) === "kept");
          expect([one.id, kept]).toEqual([one.id, lets.includes(one.id)]);
          if (!kept) continue;
          let_in += 1;
          const distance = worstDistance(fill, originals.with(n, one));
          most = Math.max(most, distance);
          expect(distance).toBeLessThanOrEqual(eachWithin + 1e-9);
        }
        expect(farthest ?? 0).toBeCloseTo(most, 9);
      }
      // All at once: no choice of those let in is farther off than is said.
      if (problem.changing === "all")
        expect(Math.min(together, problem.within + 1e-9)).toBeLessThanOrEqual(problem.within + 1e-9);
      everyFilling(fill, may, (picked) =>
        expect(worstDistance(fill, picked)).toBeLessThanOrEqual(together + 1e-9),
      );
    }),
    { numRuns: RUNS, seed: 90 },
  );
  console.log(`${RUNS} recipes: ${ruled} rules, ${let_in} whiskeys let in`);
  expect(let_in).toBeGreaterThan(RUNS);
});

test("U2 no rule of so many conditions lets in more of the near: every pair of bounds was tried", () => {
  fc.assert(
    fc.property(loose, ({ slots, known: all, within, original }) => {
      const [first] = slots;
      const fill = { whiskeys: all, slots: slots.map(({ parts }) => ({ parts, rule: [] })), original };
      const originals = slots.map(({ whiskey }) => whiskey);
      const others = all.filter(({ id }) => id !== first!.whiskey.id);
      const off = others.map((one) => worstDistance(fill, originals.with(0, one)));
      const near = others.filter((_, n) => off[n]! <= within);
      const far = others.filter((_, n) => off[n]! > within);
      const sides = slotSides(first!.whiskey, Object.keys(original.profile));
      const found = loosestRule(first!.whiskey, sides, near, far, { most: 2 });
      expect(found.proven).toBe(true);
      // A bound leaves out one of the shelf's values and all below it, where the language has a number between.
      const own = sides.map(({ value }) => value(first!.whiskey));
      const bounds = sides.flatMap((side, s) => {
        const values = [...new Set(others.flatMap((one) => side.value(one) ?? []))];
        return values
          .filter((out) => own[s] !== null && out < own[s]!)
          .flatMap((out) => {
            const above = [own[s]!, ...values.filter((value) => value > out)];
            return side.asking(out, Math.min(...above)) === null ? [] : [{ side, out }];
          });
      });
      const kept = (chosen: typeof bounds, one: RuledWhiskey): boolean =>
        chosen.every(({ side, out }) => (side.value(one) ?? -Infinity) > out);
      let best = far.length === 0 ? near.length : -1;
      for (const a of bounds)
        for (const b of bounds)
          if (!far.some((one) => kept([a, b], one)))
            best = Math.max(best, near.filter((one) => kept([a, b], one)).length);
      if (best < 0) {
        expect(found.rule).toBeNull();
        return;
      }
      const values = found.rule!.map(printCondition);
      const count = near.filter((one) => values.every((text) => judge(text, one) === "kept")).length;
      expect(count).toBe(best);
    }),
    { numRuns: RUNS, seed: 91 },
  );
});

test("U3 a bound is the roundest number between", () => {
  expect(roundBound(43, 55)).toBe(45);
  expect(roundBound(43, 44)).toBe(44);
  expect(roundBound(43, 43.5)).toBe(43.5);
  expect(roundBound(43, 43.26)).toBe(43.1);
  expect(roundBound(0.2, 0.3)).toBe(0.3);
  expect(roundBound(-60, -55)).toBe(-55);
  expect(roundBound(-60.2, -59.6)).toBe(-60);
  expect(roundBound(46, 46 + 1e-9)).toBeNull();
});
