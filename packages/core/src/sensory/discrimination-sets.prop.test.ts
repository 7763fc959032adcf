import fc from "fast-check";
import { expect, test } from "vitest";
import { seeded } from "./fixtures/seeded.ts";
import {
  DISCRIMINATION,
  type DiscriminationMethod,
  discriminationSets,
  flightCodes,
  flightGlasses,
} from "./index.ts";

const methods = Object.keys(DISCRIMINATION) as DiscriminationMethod[];
const letters = (order: string): string => order.split("").toSorted().join("");

// Triangle: six orders (ISO 4120); duo-trio: four with the reference in turn, two with one reference (ISO 10399); paired: two
// (ISO 5495); tetrad: 4!/(2!·2!) = 6.
test("T1 the orders on file are all there are", () => {
  expect(new Set(DISCRIMINATION.triangle.orders)).toEqual(
    new Set(["AAB", "ABA", "BAA", "ABB", "BAB", "BBA"]),
  );
  expect(new Set(DISCRIMINATION.duo_trio.orders)).toEqual(new Set(["AAB", "ABA", "BAB", "BBA"]));
  expect(new Set(DISCRIMINATION.paired.orders)).toEqual(new Set(["AB", "BA"]));
  expect(new Set(DISCRIMINATION.tetrad.orders).size).toBe(6);
  expect(new Set(DISCRIMINATION.tetrad.orders.map(letters))).toEqual(new Set(["AABB"]));
});

test("T1 orders are used equally often to within one, and neither whiskey is favoured by more than one set", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...methods),
      fc.integer({ min: 1, max: 40 }),
      fc.nat(),
      (method, sets, seed) => {
        const { orders, orderImbalance, glasses } = discriminationSets(method, sets, seeded(seed));
        const all = DISCRIMINATION[method].orders;
        expect(orders.length).toBe(sets);
        for (const order of orders) expect(all).toContain(order);
        const times = all.map((order) => orders.filter((one) => one === order).length);
        expect(orderImbalance).toBe(Math.max(...times) - Math.min(...times));
        expect(orderImbalance).toBe(sets % all.length === 0 ? 0 : 1);
        expect(glasses.A + glasses.B).toBe(orders.join("").length);
        expect(Math.abs(glasses.A - glasses.B)).toBeLessThanOrEqual(1);
      },
    ),
  );
});

test("T1 one reference: only its two orders, and every order of a single set can come up", () => {
  expect(new Set(discriminationSets("duo_trio", 8, seeded(1), "A").orders)).toEqual(new Set(["AAB", "ABA"]));
  const seen = new Set(
    Array.from({ length: 200 }, (_, seed) => discriminationSets("triangle", 1, seeded(seed)).orders[0]),
  );
  expect(seen.size).toBe(6);
  expect(() => discriminationSets("triangle", 6, seeded(1), "A")).toThrow(
    "duo_trio for a constant reference, got triangle",
  );
  expect(() => discriminationSets("paired", 0, seeded(1))).toThrow("a whole 1 or more sets, got 0");
});

test("T2 fresh codes for every taster, none twice in a flight", () => {
  fc.assert(
    fc.property(fc.array(fc.nat(12), { maxLength: 20 }), fc.nat(), (glasses, seed) => {
      const codes = flightCodes(glasses, seeded(seed), new Set(["482"]));
      expect(codes.map((one) => one.length)).toEqual(glasses);
      expect(new Set(codes.flat()).size).toBe(codes.flat().length);
      expect(codes.flat()).not.toContain("482");
    }),
  );
  expect(() =>
    flightCodes(
      Array.from({ length: 73 }, () => 12),
      seeded(1),
    ),
  ).toThrow("from 0 to 867 codes, got 876");
});

test("T3 repeats and a control: roles, twins and limits", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 6 }),
      fc.nat(5),
      fc.boolean(),
      fc.nat(),
      (whiskeys, some, control, seed) => {
        const repeats = Math.min(some, whiskeys, 11 - whiskeys);
        const { glasses, twins } = flightGlasses({ whiskeys, repeats, control, rng: seeded(seed) });
        expect(glasses.length).toBe(whiskeys + repeats + Number(control));
        expect(twins.length).toBe(repeats);
        for (const [a, b] of twins) {
          expect(glasses[a]).toMatchObject({ whiskey: a, role: "tasted" });
          expect(glasses[b]).toMatchObject({ whiskey: a, role: "repeat" });
        }
        expect(glasses.filter(({ role }) => role === "control")).toEqual(
          control ? [{ whiskey: whiskeys, role: "control" }] : [],
        );
      },
    ),
  );
  const ask = { whiskeys: 4, repeats: 5, control: false, rng: seeded(1) };
  expect(() => flightGlasses(ask)).toThrow("a whole 0 to 4 repeats, got 5");
  expect(() => flightGlasses({ ...ask, whiskeys: 0 })).toThrow("a whole 1 or more whiskeys, got 0");
  expect(() => flightGlasses({ ...ask, whiskeys: 8 })).toThrow("at most 12 glasses, got 13");
});
