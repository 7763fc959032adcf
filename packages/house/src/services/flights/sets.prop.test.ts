import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { binomialTail, quotient } from "@partsproof/core/statistics";
import { DISCRIMINATION } from "@partsproof/core/sensory";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";

const flights = fc.record({
  method: fc.constantFrom("triangle" as const, "duo_trio" as const, "tetrad" as const, "paired" as const),
  sets: fc.integer({ min: 1, max: 4 }),
  tasters: fc.integer({ min: 1, max: 5 }),
  pourMl: fc.constantFrom(1, 7.5, 14.787),
  expects: fc.boolean(),
  // What each set is answered with: a place in the set, or nothing.
  picks: fc.array(fc.option(fc.nat({ max: 3 }), { freq: 5 }), { minLength: 20, maxLength: 20 }),
});

eachDatabase((database) => {
  describe(`any flight in sets (${database})`, () => {
    test("Q2, Q9, Q10, Q13 is balanced, poured as promised, and found by the exact law", async () => {
      const numRuns = database === "sqlite" ? 20 : 4;
      await fc.assert(
        fc.asyncProperty(flights, async ({ method, sets, tasters, pourMl, expects, picks }) => {
          await using house = await temporaryHouse(database);
          const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters });
          const { client, household } = shelf;
          const pair = method === "paired" ? { asked: "drier" } : {};
          const expected =
            method === "paired" && expects ? { expectedVesselId: shelf.vesselIds[0] ?? "" } : {};
          const question = { question: "tell_apart", method, sets, ...pair, ...expected, pourMl } as const;
          const made = await setFlight(shelf, [0, 1], question);
          const at = { household, flight: made.flight.id };
          const list = await client("getPourList", { at, token: made.pourerToken ?? "" });
          await client("markPoured", { at, token: made.pourerToken ?? "" });
          const { orders, chance } = DISCRIMINATION[method];

          let answered = 0;
          let right = 0;
          const timesPicked = new Map(shelf.vesselIds.map((id) => [id, 0]));
          const used = new Map(orders.map((order) => [order, 0]));
          for (const [t, taken] of (await takeSheets(shelf, at.flight)).entries()) {
            const poured = list.tasters[t]?.glasses ?? [];
            const answers = taken.sheet.sets.map(({ set, glasses }, i) => {
              const own = poured.filter((glass) => glass.set === set);
              const order = own.map(({ vesselId }) => (vesselId === shelf.vesselIds[0] ? "A" : "B")).join("");
              used.set(order, (used.get(order) ?? NaN) + 1);
              const pick = picks[t * sets + i] ?? null;
              if (pick === null) return { set, picked: null };
              const codes = glasses.map(({ code }) => code);
              const first = codes[pick % codes.length] ?? "";
              const second = codes[(pick + 1) % codes.length] ?? "";
              const vessel = (code: string) => own.find((glass) => glass.code === code)?.vesselId ?? "";
              answered += 1;
              timesPicked.set(vessel(first), (timesPicked.get(vessel(first)) ?? 0) + 1);
              const same = own.filter(({ vesselId }) => vesselId === vessel(first)).length;
              if (method === "triangle" && same === 1) right += 1;
              if (method === "duo_trio" && vessel(first) === own[0]?.vesselId) right += 1;
              if (method === "tetrad" && vessel(first) === vessel(second)) right += 1;
              return { set, picked: method === "tetrad" ? [first, second] : [first] };
            });
            const { sheet, token } = taken;
            const body = { version: sheet.version, answers };
            await client("editSheet", { at: { ...at, sheet: sheet.id }, token, body });
            await lock(shelf, taken);
          }
          const times = [...used.values()];
          expect(
            Math.max(...times) - Math.min(...times),
            "orders are even to within one",
          ).toBeLessThanOrEqual(1);
          expect(times.reduce((sum, n) => sum + n, 0)).toBe(sets * tasters);

          const finding = await client("revealFlight", { at, body: {} });
          const sides = method === "paired" && !expects ? 2 : 1;
          if (method === "paired") {
            right = expects
              ? (timesPicked.get(shelf.vesselIds[0] ?? "") ?? 0)
              : Math.max(...timesPicked.values());
          }
          expect(finding.sets).toMatchObject({ answered, right: answered === 0 ? 0 : right, sides });
          const tail = binomialTail(answered, right, chance);
          const p = answered === 0 ? null : Math.min(1, sides * quotient(tail.numerator, tail.denominator));
          if (p === null) expect(finding.sets?.luck).toBeNull();
          else expect(finding.sets?.luck?.p).toBeCloseTo(p, 12);

          const { items } = await client("listTransfers", { at: { household }, query: { limit: 200 } });
          const posted = items.filter(({ flightId }) => flightId === at.flight);
          for (const { from, amount } of posted) {
            const own = list.tasters
              .flatMap(({ glasses }) => glasses)
              .filter(({ vesselId }) => from.kind === "vessel" && vesselId === from.vesselId);
            expect(amount.kind === "volume" ? amount.ml : NaN).toBeCloseTo(own.length * pourMl, 9);
          }
          const [a = 0, b = 0] = shelf.vesselIds.map(
            (id) => list.totals.find(({ vesselId }) => vesselId === id)?.ml ?? 0,
          );
          expect(Math.abs(a - b), "poured evenly to within one glass").toBeLessThanOrEqual(
            pourMl * (1 + 1e-9),
          );
          expect(finding.alcoholPerTaster.grams).toBeLessThanOrEqual(
            made.flight.alcoholAtMost.grams * (1 + 1e-9),
          );
        }),
        { numRuns },
      );
    }, 240_000);
  });
});
