import { eachDatabase, temporaryHouse, type TemporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type EveningShelf, eveningShelf, setFlight } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

/** Leaves so many mL in a vessel. */
async function leave({ client }: TemporaryHouse, household: string, vessel: string, ml: number) {
  const at = { household };
  const { volumeMl } = (await client("getVessel", { at: { ...at, vessel } })).contents;
  await client("addTransfer", {
    at,
    body: {
      from: { kind: "vessel", vesselId: vessel },
      to: { kind: "outside", name: "drain" },
      amount: { kind: "volume", ml: volumeMl - ml },
    },
  });
}

/** Two bottles of the first whiskey, the first of them named for a glass beside three mixes that take 90 mL of it. */
async function twoBottles(house: TemporaryHouse, first: number, second: number) {
  const { client } = house;
  const shelf: EveningShelf = await eveningShelf(client, { whiskeys: 2, tasters: 2 });
  const { household, whiskeyIds, vesselIds } = shelf;
  const at = { household };
  const [named = ""] = vesselIds;
  const other = (
    await client("addBottle", { at, body: { whiskeyId: whiskeyIds[0] ?? "", label: "Beside it" } })
  ).id;
  await leave(house, household, named, first);
  await leave(house, household, other, second);
  const set = await client("addTrialSet", {
    at,
    body: {
      name: "Next flight",
      plan: "own",
      parts: whiskeyIds.map((whiskeyId) => ({ of: { kind: "whiskey" as const, whiskeyId } })),
      mixes: [
        [3, 1],
        [1, 1],
        [1, 3],
      ],
      volumeMl: 60,
      flight: {
        question: "like_best",
        pourMl: 15,
        glasses: [
          { of: { vesselId: named }, kind: "anchor", why: "" },
          { of: { trial: 1 }, kind: "new", why: "" },
          { of: { trial: 2 }, kind: "new", why: "" },
          { of: { trial: 3 }, kind: "new", why: "" },
        ],
      },
    },
  });
  return { shelf, at, here: { ...at, trials: set.id }, set, named, other };
}

eachDatabase((database) => {
  describe(`what stands beside bench trials (${database})`, () => {
    test("B7 trials leave in the bottle that is named for a glass what the glass takes: another bottle gives the rest", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, here, set, named, other } = await twoBottles(house, 60, 45);
      expect(set.bottles[0]).toMatchObject({ needMl: 90, keptMl: 15, shortMl: 0 });
      expect(set.bottles[0]?.from).toEqual([
        { vesselId: named, label: expect.any(String), ml: expect.closeTo(45, 6) },
        { vesselId: other, label: "Beside it", ml: expect.closeTo(45, 6) },
      ]);
      expect(set.flight?.glasses[0]).toMatchObject({ vesselId: named, keepMl: 15, insteadOf: null });
      const poured = await client("pourTrials", { at: here, body: { version: set.version } });
      const left = (await client("getVessel", { at: { ...at, vessel: named } })).contents.volumeMl;
      expect(left).toBeCloseTo(15, 6);
      // So all of it can be set as a flight.
      const vesselIds = (poured.flight?.glasses ?? []).map(({ vesselId }) => vesselId ?? "");
      const made = await setFlight({ ...shelf, vesselIds }, [0, 1, 2, 3], { pourMl: 7 });
      expect(made.flight.glassCount).toBe(4);
    });

    test("B7 where all bottles together hold too little beside it, pouring is refused with what stays where, and nothing is poured", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { here, set } = await twoBottles(house, 60, 35);
      expect(set.bottles[0]).toMatchObject({ needMl: 90, keptMl: 15, shortMl: expect.closeTo(10, 6) });
      const refused = await refusalOf(client("pourTrials", { at: here, body: { version: set.version } }));
      expect(refused.status).toBe(422);
      expect(refused.issues).toEqual([
        expect.objectContaining({
          code: "shelf_short",
          path: ["trials"],
          limit: expect.stringMatching(
            /^at most the 80\.0 mL of Saltreach Tide No\. A that are free on the shelf, beside 15\.0 mL that stay in .+ for glass 1$/,
          ),
          received: 90,
        }),
      ]);
      expect(await client("getTrialSet", { at: here })).toEqual(set);
    });

    test("B7 a named bottle that holds too little by now gives way to the fullest other of the same whiskey, and says so", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, here, named, other } = await twoBottles(house, 60, 200);
      const label = (await client("getVessel", { at: { ...at, vessel: named } })).label;
      for (const ml of [4, 0]) {
        await leave(house, shelf.household, named, ml);
        const now = await client("getTrialSet", { at: here });
        expect(now.flight?.glasses[0]).toMatchObject({
          vesselId: other,
          label: "Beside it",
          keepMl: 15,
          insteadOf: label,
        });
        expect(now.bottles[0]).toMatchObject({ keptMl: 15, shortMl: 0 });
      }
      // No bottle of it is left that holds more: the named one stays, with what is in it.
      await leave(house, shelf.household, other, 0);
      const none = await client("getTrialSet", { at: here });
      expect(none.flight?.glasses[0]).toMatchObject({ vesselId: named, keepMl: 0, insteadOf: null });
      expect(none.bottles[0]).toMatchObject({ keptMl: 0, shortMl: 90 });
    });
  });
});
