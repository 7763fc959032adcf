import fc from "fast-check";
import { expect, test } from "vitest";
import {
  asPouring,
  band,
  choicesAt,
  made,
  poursOf,
  type Pouring,
  standing,
  WATER,
  without,
} from "./index.ts";

/** What a person can do next on the screen: a pour of what is asked for, none of it left, or one of the ways offered. */
const step = fc.record({ way: fc.nat(9), times: fc.constantFrom(0.01, 0.5, 1, 1, 1.02, 3) });

const done = (pouring: Pouring, { way, times }: { way: number; times: number }): Pouring => {
  const now = standing(pouring);
  const ways = choicesAt(pouring, now);
  const add = (...happened: Pouring["happened"]): Pouring => ({
    ...pouring,
    happened: [...pouring.happened, ...happened],
  });
  if (ways.length > 0) return add({ kind: ways[way % ways.length]?.how ?? "stop" });
  if (now.next === null) return pouring;
  const { source, g } = now.next;
  if (way === 0) return without(pouring);
  return way < 4 ? add({ kind: "empty", source }) : add({ kind: "pour", source, g: g * times });
};

test("whatever is poured, run dry, decided or undone, there is a way on, and what is made is what was poured", {
  timeout: 60_000,
}, () => {
  const plan = fc.record({
    parts: fc.array(fc.tuple(fc.double({ min: 1, max: 400, noNaN: true }), fc.constantFrom(40, 46, 62.4)), {
      minLength: 1,
      maxLength: 4,
    }),
    have: fc.constantFrom(null, 0, 5, 700),
    waterTo: fc.constantFrom(null, 40, 43, 70),
    capacityMl: fc.constantFrom(null, 50, 750),
    tare: fc.constantFrom("each" as const, "running" as const),
  });
  fc.assert(
    fc.property(
      plan,
      fc.array(step, { maxLength: 14 }),
      ({ parts, have, waterTo, capacityMl, tare }, steps) => {
        const start: Pouring = {
          v: 1,
          key: "any",
          title: "Any",
          batch: null,
          parts: parts.map(([plannedMl], i) => ({ label: `Part ${i}`, plannedMl })),
          sources: parts.map(([, abv20], part) => ({
            label: `Part ${part}`,
            part,
            abv20,
            from: null,
            haveMl: have,
          })),
          waterTo,
          capacityMl,
          celsius: 20,
          scale: "fine",
          thermometer: "room",
          label: "us",
          tare,
          baseG: 0,
          happened: [],
        };
        const end = steps.reduce(done, start);
        const now = standing(end);
        expect(now.finished || now.next !== null || choicesAt(end, now).length > 0).toBe(true);
        const total = end.happened.reduce((sum, one) => sum + (one.kind === "pour" ? one.g : 0), 0);
        expect(now.poured.reduce((sum, one) => sum + one.g, 0)).toBeCloseTo(total, 6);
        expect(made(end, now) === null).toBe(total <= band(0, "fine").by);
        expect(now.poured.every(({ source }) => source === WATER || source < parts.length)).toBe(true);
        expect(asPouring(JSON.stringify(end))).toStrictEqual(end);
        poursOf(end, now);
      },
    ),
    { numRuns: 200 },
  );
});
