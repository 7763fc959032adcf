import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flightLack, type NextFlight, nextFlight, type Parts, sameParts } from "./index.ts";

const ids = ["malt", "wheat", "islander", "kettle"] as const;
const whiskeys = ids.map((id, i) => ({
  id,
  profile: { smoke: { value: (7 * i) % 9, sd: 0 }, sweet: { value: (5 * i + 2) % 9, sd: 0 } },
}));
const tried = [
  { id: "one", parts: { malt: 1, wheat: 1 } },
  { id: "two", parts: { islander: 1 } },
  { id: "three", parts: { malt: 2, kettle: 1 } },
];
const history = {
  whiskeys,
  tried,
  rankings: Array.from({ length: 4 }, () => [["three"], ["one"], ["two"]]),
};
const WANTED = { glasses: 5, maxParts: 6, start: 1 };

/** 30 mL of a mix; 15 mL of a whiskey that stands ready; a mix that does is poured from its own vessel. */
const takes = (parts: Parts, ready: boolean): Record<string, number> => {
  const used = Object.entries(parts);
  const all = used.reduce((sum, [, part]) => sum + part, 0);
  if (ready) return used.length === 1 ? { [used[0]?.[0] ?? ""]: 15 } : {};
  return Object.fromEntries(used.map(([id, part]) => [id, (30 * part) / all]));
};
const shelfOf = (leftMl: Record<string, number>) => ({ leftMl, takes });

function needs(glasses: NextFlight["glasses"], ready: readonly Parts[] = []): Map<string, number> {
  const all = new Map<string, number>();
  const stands = (parts: Parts): boolean => ready.some((one) => sameParts(one, parts));
  for (const { parts } of glasses)
    for (const [id, ml] of Object.entries(takes(parts, stands(parts)))) all.set(id, (all.get(id) ?? 0) + ml);
  return all;
}

describe("L15 the glasses of a flight together take no more than is left", () => {
  test("whatever is left of what", () => {
    const some = fc.record(
      Object.fromEntries(ids.map((id) => [id, fc.double({ min: 0, max: 120, noNaN: true })])),
    );
    fc.assert(
      fc.property(some, fc.integer({ min: 2, max: 8 }), (leftMl, glasses) => {
        const next = nextFlight(history, { ...WANTED, glasses, shelf: shelfOf(leftMl) });
        for (const [id, ml] of needs(next.glasses)) expect(ml).toBeLessThanOrEqual((leftMl[id] ?? 0) + 1e-6);
        expect(next.glasses.length === glasses || next.scarce.length > 0).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("two glasses that each need all that is left of the same two: only one of them", () => {
    const two = { whiskeys: whiskeys.slice(0, 2), tried: [], rankings: [] };
    const wanted = {
      glasses: 3,
      maxParts: 2,
      start: 1,
      keeps: (parts: Parts) => Object.keys(parts).length === 2,
    };
    expect(nextFlight(two, wanted).glasses).toHaveLength(1);
    const more = { ...wanted, maxParts: 3 };
    expect(nextFlight(two, more).glasses).toHaveLength(3);
    const { glasses, scarce, stop } = nextFlight(two, { ...more, shelf: shelfOf({ malt: 20, wheat: 20 }) });
    expect(glasses).toHaveLength(1);
    expect(scarce).toEqual(["malt", "wheat"]);
    expect(stop.advised).toBe(false);
  });

  test("with plenty left, and of what is not named, the flight is as without a shelf", () => {
    const free = nextFlight(history, WANTED);
    expect(free.scarce).toEqual([]);
    for (const leftMl of [{}, Object.fromEntries(ids.map((id) => [id, 700]))])
      expect(nextFlight(history, { ...WANTED, shelf: shelfOf(leftMl) })).toEqual(free);
  });

  test("target and anchor come first; a mix that stands ready takes nothing of the bottles", () => {
    const leftMl = { malt: 15, wheat: 60, islander: 15, kettle: 0 };
    const ready = new Set(["two", "three"]);
    const next = nextFlight(history, { ...WANTED, ready, target: "two", shelf: shelfOf(leftMl) });
    expect(next.glasses.map(({ kind }) => kind).slice(0, 2)).toEqual(["anchor", "target"]);
    expect(next.glasses[0]?.parts).toEqual({ malt: 2, kettle: 1 });
    for (const { parts } of next.glasses.slice(2)) expect(parts).not.toHaveProperty("islander");
    for (const [id, ml] of needs(next.glasses, [{ islander: 1 }, { malt: 2, kettle: 1 }]))
      expect(ml).toBeLessThanOrEqual((leftMl[id as keyof typeof leftMl] ?? 0) + 1e-6);
  });

  test("an anchor that would have to be mixed and cannot gives way to the next best", () => {
    expect(nextFlight(history, WANTED).glasses[0]?.parts).toEqual({ malt: 2, kettle: 1 });
    const next = nextFlight(history, { ...WANTED, shelf: shelfOf({ kettle: 5 }) });
    expect(next.glasses[0]).toMatchObject({ kind: "anchor", parts: { malt: 1, wheat: 1 } });
    expect(next.scarce).toEqual(["kettle"]);
  });

  test("L8 an amount that is none", () => {
    expect(() => nextFlight(history, { ...WANTED, shelf: shelfOf({ malt: -1 }) })).toThrow(
      "malt requires 0 mL or more left, got -1 mL",
    );
  });
});

describe("L16 glasses that somebody means to pour: with which whiskey, and by how much, they go beyond what is left", () => {
  const some = fc.record(
    Object.fromEntries(ids.map((id) => [id, fc.double({ min: 0, max: 120, noNaN: true })])),
  );
  const recipe = fc
    .record(Object.fromEntries(ids.map((id) => [id, fc.integer({ min: 0, max: 4 })])))
    .filter((parts) => Object.values(parts).some((part) => part > 0));

  test("nothing where a proposal is kept as it is", () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 2, max: 8 }), (leftMl, glasses) => {
        const next = nextFlight(history, { ...WANTED, glasses, shelf: shelfOf(leftMl) });
        const meant = next.glasses.map(({ parts }) => ({ parts, stands: false }));
        expect(flightLack(meant, shelfOf(leftMl))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test("what all glasses need together less what is left, each recipe once, whatever their order", () => {
    fc.assert(
      fc.property(some, fc.array(recipe, { maxLength: 5 }), (leftMl, own) => {
        const meant = own.map((parts) => ({ parts, stands: false }));
        const lacks = flightLack([...meant, ...meant], shelfOf(leftMl));
        expect(
          flightLack(meant.toReversed(), shelfOf(leftMl))
            .map(({ id }) => id)
            .toSorted(),
        ).toEqual(lacks.map(({ id }) => id).toSorted());
        const need = new Map<string, number>();
        const seen: Parts[] = [];
        for (const parts of own) {
          if (seen.some((one) => sameParts(one, parts))) continue;
          seen.push(parts);
          for (const [id, ml] of Object.entries(takes(parts, false))) need.set(id, (need.get(id) ?? 0) + ml);
        }
        for (const id of ids) {
          const lack = lacks.find((one) => one.id === id);
          const over = (need.get(id) ?? 0) - (leftMl[id] ?? 0);
          expect((lack?.needMl ?? 0) - (lack?.leftMl ?? 0)).toBeCloseTo(Math.max(0, over), 6);
        }
      }),
    );
  });

  test("what stands ready takes its pour first, of what is there; a mix that does takes nothing", () => {
    const meant = [
      { parts: { malt: 1, wheat: 1 }, stands: false },
      { parts: { malt: 1 }, stands: true },
      { parts: { islander: 1, kettle: 1 }, stands: true },
    ];
    expect(flightLack(meant, shelfOf({ malt: 20, wheat: 15, islander: 0, kettle: 0 }))).toEqual([
      { id: "malt", needMl: 30, leftMl: 20 },
    ]);
    expect(flightLack(meant.slice(1), shelfOf({ malt: 3 }))).toEqual([]);
    expect(() => flightLack(meant, shelfOf({ malt: -1 }))).toThrow(
      "malt requires 0 mL or more left, got -1 mL",
    );
  });
});
