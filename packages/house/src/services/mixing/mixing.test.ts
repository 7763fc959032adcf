import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type EveningShelf, eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";

const SMOKE = [8, 0, 1] as const;
const STICK = { piece: { shape: "stick" as const, cm: [1, 1, 16] as [number, number, number] } };

/** Three whiskeys of which one smokes, and a batch of each of these parts. */
async function blends(client: EveningShelf["client"], parts: readonly (readonly number[])[]) {
  const shelf = await eveningShelf(client, { whiskeys: 3, tasters: 2 });
  const at = { household: shelf.household };
  for (const [i, whiskey] of shelf.whiskeyIds.entries())
    await client("editWhiskey", {
      at: { ...at, whiskey },
      body: {
        version: 1,
        profile: { tastedAt: null, intensities: { "smoke.smoke": SMOKE[i] ?? 0, "sweet.honey": 4 } },
      },
    });
  const recipe = await client("addRecipe", {
    at,
    body: {
      name: "Mixes",
      slots: shelf.whiskeyIds.map((whiskeyId) => ({ parts: 1, of: { kind: "whiskey" as const, whiskeyId } })),
    },
  });
  const batches = [];
  for (const [n, own] of parts.entries())
    batches.push(
      await client("addBatch", {
        at,
        body: {
          name: `Mix ${n + 1}`,
          recipeId: recipe.id,
          vessel: { kind: "new", label: `Flask ${n + 1}`, capacityMl: 700 },
          pours: own.flatMap((part, i) =>
            part === 0
              ? []
              : [
                  {
                    from: { kind: "vessel" as const, vesselId: shelf.vesselIds[i] ?? "" },
                    amount: { kind: "volume" as const, ml: 50 * part },
                  },
                ],
          ),
        },
      }),
    );
  return { shelf, at, batches };
}

/** A flight of vessels by number, smoke set in each by all, revealed unless told otherwise. */
async function smoked(shelf: EveningShelf, vesselIds: readonly string[], smoke: number, reveal = true) {
  const { client, household } = shelf;
  const here = { ...shelf, vesselIds };
  const { flight, pourerToken, hostToken } = await setFlight(
    here,
    vesselIds.map((_, i) => i),
  );
  const at = { household, flight: flight.id };
  await client("markPoured", { at, token: pourerToken ?? "" });
  for (const taken of await takeSheets(here, flight.id)) {
    await client("editSheet", {
      at: { ...at, sheet: taken.sheet.id },
      token: taken.token,
      body: {
        version: taken.sheet.version,
        strengths: taken.sheet.glasses.map(({ code }) => ({
          code,
          pass: "first" as const,
          section: "palate" as const,
          attribute: "smoke.smoke" as const,
          strength: smoke,
        })),
      },
    });
    await lock(here, taken);
  }
  if (reveal) await client("revealFlight", { at, token: hostToken, body: {} });
}

eachDatabase((database) => {
  describe(`what mixing does, on ${database}`, () => {
    test("MI1 to MI4 revealed mixes teach, the search goes by it and says so, and can be told not to", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const mixes = [
        [1, 3, 0],
        [1, 4, 1],
        [2, 0, 3],
        [1, 1, 2],
      ];
      const { shelf, at, batches } = await blends(client, mixes);
      const ask = () => client("getMixing", { at });
      expect(await ask()).toMatchObject({
        attributes: [],
        needed: { odds: 10, meanBeforehand: 4, mixes: 3 },
      });
      await smoked(
        shelf,
        batches.map(({ vesselId }) => vesselId),
        8,
        false,
      );
      expect((await ask()).attributes, "sealed").toEqual([]);

      const again = batches.map(({ vesselId }) => vesselId);
      await smoked(shelf, again, 8);
      const board = await ask();
      expect(board.attributes.map(({ attribute }) => attribute)).toEqual(["smoke.smoke"]);
      const [smoke] = board.attributes;
      expect(smoke).toMatchObject({ law: "strongest", exponent: "strongest" });
      expect(smoke?.sentence).toMatch(
        /^smoke: the strongest part rules, .*to 1 over the mean, from 4 blends$/,
      );
      expect(board.headline).toBe(`${smoke?.sentence}.`);
      const first = smoke?.blends.find(({ label }) => label === "Mix 1");
      // By hand: a quarter of 8, as the labels say nothing of one strength; unsure by 1 each, and never below 0.
      expect(first?.foretold.mean).toBeGreaterThan(1.9);
      expect(first?.foretold.mean).toBeLessThan(2.6);
      expect(first?.foretold.strongest).toBeCloseTo(8, 0);

      const wanted = {
        profile: { "smoke.smoke": 4, "sweet.honey": 4 },
        rules: { maxBottles: 3, maxParts: 8 },
      };
      const found = await client("searchShelf", { at, body: wanted });
      expect(found.target.exponents).toEqual({ "smoke.smoke": "strongest" });
      expect(found.mixing).toEqual([
        { attribute: "smoke.smoke", exponent: "strongest", used: true, sentence: smoke?.sentence },
      ]);
      expect(found.provenOptimal).toBe(true);
      // No mix of 8, 0 and 1 has a strongest part of 4: the closest is 1, without the smoke.
      expect(found.recipes[0]?.predicted["smoke.smoke"]).toBe(1);
      expect(found.recipes[0]?.expectedDistance).toBeGreaterThan(found.recipes[0]?.distance ?? 9);
      const same = await client("search", {
        body: (await client("shelfProblem", { at, body: wanted })).problem,
      });
      expect(same.recipes).toEqual(found.recipes);
      const plain = await client("searchShelf", { at, body: { ...wanted, mixing: "mean" } });
      expect(plain.target.exponents).toBeUndefined();
      expect(plain.mixing.map(({ used }) => used)).toEqual([false]);
      expect(plain.recipes[0]?.predicted["smoke.smoke"]).toBeCloseTo(4, 6);
      const wary = await client("searchShelf", { at, body: { ...wanted, distance: "expected" } });
      expect(wary.mixing.map(({ used }) => used)).toEqual([false]);
    });

    test("MI2 what lay on wood, and what is one whiskey alone, teaches nothing", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, batches } = await blends(client, [
        [1, 3, 0],
        [1, 2, 0],
        [1, 0, 0],
      ]);
      const [first] = batches;
      const rest = await client("beginRest", {
        at: { ...at, batch: first?.id ?? "" },
        body: { kind: "oak" },
      });
      await client("putOakIn", { at: { ...at, rest: rest.id }, body: STICK });
      await smoked(
        shelf,
        batches.map(({ vesselId }) => vesselId),
        7,
      );
      const board = await client("getMixing", { at });
      expect(board.silent).toEqual([{ label: "Mix 1", why: "it lay on wood, which has a taste of its own" }]);
      expect(board.attributes[0]?.blends.map(({ label }) => label)).toEqual(["Mix 2"]);
      expect(board.attributes[0]).toMatchObject({ law: "mean", exponent: 1 });
    });
  });
});
