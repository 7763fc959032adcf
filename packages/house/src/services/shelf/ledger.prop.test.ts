import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openPantry } from "../fixtures/pantry.ts";
import { Refusal } from "../../protocol/index.ts";

const pours = fc.array(
  fc.record({ from: fc.nat(3), to: fc.nat(4), ml: fc.double({ min: 0.1, max: 400, noNaN: true }) }),
  { minLength: 1, maxLength: 12 },
);

eachDatabase((database) => {
  describe(`the ledger's laws through the door (${database})`, () => {
    test("S5, S6 no vessel leaves its bounds, refusals change nothing, and undoing all restores all", async () => {
      await using house = await temporaryHouse(database);
      let refused = 0;
      let undone = 0;
      await fc.assert(
        fc.asyncProperty(pours, async (asked) => {
          const pantry = await openPantry(house.client);
          const vessels = [
            await pantry.bottle(await pantry.whiskey("Harbour Rye", 62.4)),
            await pantry.bottle(await pantry.whiskey("Quay Malt", 43), { levelMl: 300 }),
            await pantry.vessel("Flask", 500),
            await pantry.vessel("Vial", 50),
          ];
          const levels = async () =>
            (await house.client("listVessels", { at: pantry.at })).items.map(
              ({ id, contents, capacityMl }) => ({
                id,
                capacityMl,
                massG: contents.massG,
                volumeMl: contents.volumeMl,
                shares: contents.composition.map(({ label, shareOfMass }) => [label, shareOfMass]),
              }),
            );
          const start = await levels();
          const done: string[] = [];
          for (const { from, to, ml } of asked) {
            const [source, sink] = [vessels[from], to === 4 ? "drain" : vessels[to]];
            if (!source || !sink || source === sink) continue;
            const before = await levels();
            try {
              done.push(await pantry.pour(source, sink as typeof source | "drain", ml));
            } catch (error) {
              if (!(error instanceof Refusal)) throw error;
              expect(["vessel_short", "vessel_overflow"]).toContain(error.issues[0]?.code);
              expect(await levels()).toEqual(before);
              refused += 1;
            }
            for (const { volumeMl, capacityMl } of await levels()) {
              expect(volumeMl).toBeGreaterThanOrEqual(0);
              expect(volumeMl).toBeLessThanOrEqual(capacityMl * (1 + 1e-6));
            }
          }
          for (const transfer of done.toReversed()) {
            await house.client("undoTransfer", { at: { ...pantry.at, transfer } });
            undone += 1;
          }
          expect(await levels()).toEqual(start);
        }),
        { numRuns: 10, seed: 20_261_125 },
      );
      expect(refused, "refusals met").toBeGreaterThan(5);
      expect(undone, "undone").toBeGreaterThan(15);
    }, 120_000);
  });
});
