import fc from "fast-check";
import { expect, test } from "vitest";
import { everyFilling, worstDistance } from "./fixtures/by-counting.ts";
import { smallFill } from "./fixtures/fill-problems.ts";
import { judge, valueToldOf } from "./fixtures/judge.ts";
import { fillSlots } from "./fill-slots.ts";
import { printCondition } from "./print-rule.ts";

const RUNS = 300;

test("F1 F2 fillings are what going through every choice gives; who is in or out, and by which value, is judged again", {
  timeout: 60_000,
}, () => {
  let filled = 0;
  let rejected = 0;
  let asked = 0;
  let left = 0;
  fc.assert(
    fc.property(smallFill, (problem) => {
      const found = fillSlots(problem, 3);
      const all = problem.slots.reduce((sum, { parts }) => sum + parts, 0);
      const shelf = new Map(problem.whiskeys.map((whiskey) => [whiskey.id, whiskey]));
      const candidates = problem.slots.map(({ rule, parts }) =>
        problem.whiskeys.filter((whiskey) => {
          const needed = ((problem.pouredMl ?? 0) * parts) / all;
          const enough = problem.pouredMl === undefined || (whiskey.availableMl ?? -1) >= needed - 1e-9;
          const words = rule.filter(({ about }) => about !== "same").map(printCondition);
          return enough && words.every((text) => judge(text, whiskey) === "kept");
        }),
      );
      for (const [slot, own] of found.slots.entries()) {
        expect(own.candidates).toEqual(candidates[slot]!.map(({ id }) => id));
        expect(own.candidates.length + own.rejected.length + own.asked.length).toBe(shelf.size);
        const again = (rule: string, id: string): string => {
          const needed = /^at least ([\d.]+) mL on the shelf$/u.exec(rule)?.[1];
          if (needed === undefined) return judge(rule, shelf.get(id)!);
          const { availableMl } = shelf.get(id)!;
          return availableMl === null ? "unknown" : availableMl! < Number(needed) + 0.01 ? "broken" : "kept";
        };
        for (const { id, breaks, missing } of own.rejected) {
          expect(breaks.length).toBeGreaterThan(0);
          for (const { rule, value } of breaks) {
            expect([rule, again(rule, id)]).toEqual([rule, "broken"]);
            const whiskey = shelf.get(id)!;
            const told = rule.endsWith(" mL on the shelf")
              ? (whiskey.availableMl ?? null)
              : valueToldOf(rule, whiskey);
            expect([rule, value]).toEqual([rule, told]);
          }
          for (const { rule } of missing) expect([rule, again(rule, id)]).toEqual([rule, "unknown"]);
          rejected += 1;
        }
        for (const { id, missing } of own.asked) {
          expect(missing.length).toBeGreaterThan(0);
          for (const { rule } of missing) expect([rule, again(rule, id)]).toEqual([rule, "unknown"]);
          asked += 1;
        }
      }
      expect(found.proven).toBe(true);
      const distances: number[] = [];
      everyFilling(problem, candidates, (picked) => distances.push(worstDistance(problem, picked)));
      if (distances.length === 0) {
        expect(found.empty.length).toBeGreaterThan(0);
        expect(found.wanted.map(({ slot }) => slot)).toEqual(found.empty);
        left += 1;
        return;
      }
      filled += 1;
      expect(found.empty).toEqual([]);
      distances.sort((a, b) => a - b);
      expect(found.fillings).toHaveLength(Math.min(3, distances.length));
      for (const [n, { distance, least, ids }] of found.fillings.entries()) {
        expect(Math.abs(distance - distances[n]!)).toBeLessThan(1e-9);
        expect(
          Math.abs(
            distance -
              worstDistance(
                problem,
                ids.map((id) => shelf.get(id!)!),
              ),
          ),
        ).toBeLessThan(1e-9);
        expect(least).toBeLessThanOrEqual(distance + 1e-12);
      }
    }),
    { numRuns: RUNS, seed: 11 },
  );
  expect(filled).toBeGreaterThan(RUNS / 5);
  expect(left).toBeGreaterThan(RUNS / 10);
  expect(rejected).toBeGreaterThan(RUNS);
  expect(asked).toBeGreaterThan(RUNS / 2);
});
