import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Whiskey } from "../../protocol/index.ts";
import { openPantry } from "../fixtures/pantry.ts";

const slots = fc.array(
  fc.record({
    parts: fc.integer({ min: 1, max: 9 }),
    abv: fc.double({ min: 38, max: 75, noNaN: true }),
    levels: fc.array(fc.double({ min: 20, max: 700, noNaN: true }), { minLength: 1, maxLength: 3 }),
    opened: fc.boolean(),
  }),
  { minLength: 1, maxLength: 4 },
);
/** Share of the weakest slot's strength, so that water can always reach it. */
const waterTo = fc.option(fc.double({ min: 0.4, max: 1, noNaN: true }), { nil: null });
const finalMl = fc.double({ min: 10, max: 1500, noNaN: true });

eachDatabase((database) => {
  describe(`plans (${database})`, () => {
    test("R3, R4 a plan that lacks nothing, poured as planned, gives its volume, its strength and its parts", async () => {
      await using house = await temporaryHouse(database);
      let poured = 0;
      await fc.assert(
        fc.asyncProperty(slots, waterTo, finalMl, async (given, share, wanted) => {
          const pantry = await openPantry(house.client);
          const whiskeys: Whiskey[] = [];
          for (const [i, { abv, levels, opened }] of given.entries()) {
            const whiskey = await pantry.whiskey(`Tide ${i}`, abv);
            for (const levelMl of levels) await pantry.bottle(whiskey, { levelMl, sealed: !opened });
            whiskeys.push(whiskey);
          }
          const weakest = Math.min(...given.map(({ abv }) => abv));
          const target = share === null ? null : { basis: "abv20" as const, value: weakest * share };
          const recipe = await pantry.recipe(
            "Lamplighter",
            given.map(({ parts }, i) => [parts, whiskeys[i] ?? fail()] as const),
            { waterTo: target },
          );
          const at = pantry.at;
          const plan = await house.client("planBatch", {
            at,
            body: { recipeId: recipe.id, finalMl: wanted },
          });
          expect(plan.result.volumeMl / wanted).toBeCloseTo(1, 9);
          const short = plan.steps.some(({ shortMl }) => shortMl > 0);
          expect(plan.issues.map(({ code }) => code)).toEqual(
            plan.steps.filter(({ shortMl }) => shortMl > 0).map(() => "shelf_short"),
          );
          if (short) return;
          poured += 1;
          const batch = await house.client("addBatch", {
            at,
            body: {
              name: "As planned",
              recipeId: recipe.id,
              vessel: { kind: "new", label: "Flask", capacityMl: wanted },
              pours: plan.steps.flatMap(({ pours }) => pours.map(({ from, amount }) => ({ from, amount }))),
            },
          });
          expect(Math.abs(batch.made.volumeMl / wanted - 1)).toBeLessThan(1e-6);
          if (target) expect(Math.abs((batch.made.abv20 ?? 0) - target.value)).toBeLessThan(1e-6);
          const perPart = plan.steps.flatMap(({ slot, ml }) =>
            slot === null ? [] : [ml / (given[slot]?.parts ?? fail())],
          );
          for (const ml of perPart) expect(ml / (perPart[0] ?? 1)).toBeCloseTo(1, 9);
        }),
        { numRuns: 15, seed: 20_261_125 },
      );
      expect(poured, "plans that could be poured").toBeGreaterThan(4);
    }, 120_000);
  });
});

function fail(): never {
  throw new Error("one whiskey for each slot required");
}
