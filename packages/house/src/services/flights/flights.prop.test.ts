import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";

const WHISKEYS = 5;

const flights = fc.record({
  glasses: fc.array(fc.nat({ max: WHISKEYS - 1 }), { minLength: 2, maxLength: 8 }),
  distractors: fc.array(fc.nat({ max: WHISKEYS - 1 }), { maxLength: 3 }),
  tasters: fc.integer({ min: 1, max: 6 }),
  pourMl: fc.constantFrom(1, 7.5, 15, 14.787, 29.57),
  guesses: fc.array(fc.nat({ max: 10 }), { minLength: 8, maxLength: 8 }),
});

const counted = (names: readonly string[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const name of names.toSorted()) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
};

eachDatabase((database) => {
  describe(`any flight (${database})`, () => {
    test("F2, F5, F11, F13 after the reveal every code is a glass of the flight, and the ledger has poured it", async () => {
      const numRuns = database === "sqlite" ? 25 : 6;
      await fc.assert(
        fc.asyncProperty(flights, async ({ glasses, distractors, tasters, pourMl, guesses }) => {
          await using house = await temporaryHouse(database);
          const shelf = await eveningShelf(house.client, { whiskeys: WHISKEYS, tasters });
          const { client, household } = shelf;
          const made = await setFlight(shelf, glasses, { distractors, pourMl });
          const at = { household, flight: made.flight.id };
          const offered = [...glasses, ...distractors].map((i) => shelf.nameIds[i] ?? "");
          const onOffer = new Map(made.flight.namesOnOffer.map(({ nameId, count }) => [nameId, count]));
          expect(onOffer).toEqual(counted(offered));

          await client("markPoured", { at, token: made.pourerToken ?? "" });
          for (const taken of await takeSheets(shelf, at.flight)) {
            const left = [...offered];
            const sheet = { ...at, sheet: taken.sheet.id };
            const written = taken.sheet.glasses.map(({ code }, i) => ({
              code,
              nameId: left.splice((guesses[i] ?? 0) % left.length, 1)[0] ?? "",
            }));
            const { token } = taken;
            const body = { version: taken.sheet.version, guesses: written };
            await client("editSheet", { at: sheet, token, body });
            await lock(shelf, taken);
          }
          const finding = await client("revealFlight", { at, body: {} });

          const poured = counted(glasses.map((i) => shelf.nameIds[i] ?? ""));
          expect(counted(finding.glasses.map(({ nameId }) => nameId))).toEqual(poured);
          const codes = finding.sheets.flatMap((sheet) => sheet.glasses.map(({ code }) => code));
          expect(new Set(codes).size).toBe(glasses.length * tasters);
          for (const sheet of finding.sheets) {
            expect(counted(sheet.glasses.map(({ nameId }) => nameId)), "every taster the same").toEqual(
              poured,
            );
            expect(sheet.glasses.map(({ glass }) => glass).toSorted((a, b) => a - b)).toEqual([
              ...glasses.keys(),
            ]);
            expect(sheet.right).toBe(
              sheet.glasses.filter(({ nameId, guessNameId }) => nameId === guessNameId).length,
            );
            expect(sheet.luck?.p).toBeGreaterThan(0);
            expect(sheet.luck?.p).toBeLessThanOrEqual(1);
          }
          for (const [name, times] of poured) expect(onOffer.get(name)).toBeGreaterThanOrEqual(times);
          const most = finding.flight.alcoholAtMost.grams;
          expect(finding.alcoholPerTaster.grams).toBeLessThanOrEqual(most * (1 + 1e-9));

          const { items } = await client("listTransfers", { at: { household }, query: { limit: 200 } });
          const transfers = items.filter(({ flightId }) => flightId === at.flight);
          expect(transfers).toHaveLength(poured.size);
          for (const { from, to, amount } of transfers) {
            expect(to).toEqual({ kind: "outside", name: "glass" });
            const i = from.kind === "vessel" ? shelf.vesselIds.indexOf(from.vesselId) : -1;
            const times = glasses.filter((glass) => glass === i).length;
            expect(amount.kind === "volume" ? amount.ml : 0).toBeCloseTo(times * tasters * pourMl, 9);
          }
        }),
        { numRuns },
      );
    }, 240_000);
  });
});
