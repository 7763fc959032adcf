import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { type EveningShelf, eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";

/** Three whiskeys, the first told of on the shelf, and a batch of one part of it to three of the second. */
async function mixed(client: EveningShelf["client"]) {
  const shelf = await eveningShelf(client, { whiskeys: 3, tasters: 2 });
  const at = { household: shelf.household };
  const [malt = "", rye = "", other = ""] = shelf.whiskeyIds;
  await client("editWhiskey", {
    at: { ...at, whiskey: malt },
    body: { version: 1, profile: { tastedAt: null, intensities: { "smoke.smoke": 1, "sweet.honey": 5 } } },
  });
  const recipe = await client("addRecipe", {
    at,
    body: { name: "Mixes", slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: malt } }] },
  });
  const pour = (i: number, ml: number) => ({
    from: { kind: "vessel" as const, vesselId: shelf.vesselIds[i] ?? "" },
    amount: { kind: "volume" as const, ml },
  });
  const batch = await client("addBatch", {
    at,
    body: {
      name: "November",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Flask", capacityMl: 700 },
      pours: [pour(0, 100), pour(1, 300)],
    },
  });
  return {
    shelf: { ...shelf, vesselIds: [...shelf.vesselIds, batch.vesselId] },
    at,
    malt,
    rye,
    other,
    batch,
  };
}

/** A flight of two vessels in which both tasters set smoke, by vessel. */
async function smoked(shelf: EveningShelf, levels: Readonly<Record<number, number>>, reveal: boolean) {
  const { client, household, vesselIds } = shelf;
  const { flight, pourerToken, hostToken } = await setFlight(shelf, Object.keys(levels).map(Number));
  const at = { household, flight: flight.id };
  await client("markPoured", { at, token: pourerToken ?? "" });
  const list = await client("getPourList", { at, token: pourerToken ?? "" });
  for (const [row, taken] of (await takeSheets(shelf, flight.id)).entries()) {
    await client("editSheet", {
      at: { ...at, sheet: taken.sheet.id },
      token: taken.token,
      body: {
        version: taken.sheet.version,
        strengths: Object.entries(levels).map(([vessel, strength]) => ({
          code:
            list.tasters[row]?.glasses.find((one) => one.vesselId === vesselIds[Number(vessel)])?.code ?? "",
          pass: "first" as const,
          section: "palate" as const,
          attribute: "smoke.smoke" as const,
          strength,
        })),
      },
    });
    await lock(shelf, taken);
  }
  if (reveal) await client("revealFlight", { at, token: hostToken, body: {} });
}

eachDatabase((database) => {
  describe(`what whiskeys taste of, learned (${database})`, () => {
    test("PA1 to PA7 a smoky mix teaches that its other part smokes; a sealed flight teaches nothing", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, malt, rye, other } = await mixed(client);
      const learned = (whiskey: string) => client("getLearnedProfile", { at: { ...at, whiskey } });
      const smoke = async (whiskey: string) =>
        (await learned(whiskey)).levels.find(({ attribute }) => attribute === "smoke.smoke");

      const kept = await smoke(malt);
      expect(kept).toMatchObject({ raw: { mean: 1, notes: 1 }, inMixes: 0 });
      expect((await learned(rye)).levels).toEqual([]);
      expect((await learned(rye)).headline).toContain("there is only its label");
      const before = await client("getPalate", { at });
      expect(before.counted).toEqual({ notes: 0, flights: 0, shelf: 1 });
      expect(before.tasters).toMatchObject([{ tasterId: null, offset: 0, stretch: 1 }]);

      // The batch smokes, and so does nothing else: what smokes is the rye, of which nothing was noted by itself.
      await smoked(shelf, { 3: 7, 0: 1 }, true);
      const told = await smoke(rye);
      expect(told).toMatchObject({ raw: null, inMixes: 2 });
      expect(told?.learned.mean).toBeGreaterThan(5);
      expect(told?.learned.sd).toBeLessThan(told?.label.sd ?? 0);
      expect((await smoke(malt))?.learned.mean).toBeLessThan(3.5);
      expect(await smoke(other), "nobody spoke of it").toBeUndefined();
      const after = await client("getPalate", { at });
      expect(after.counted).toEqual({ notes: 4, flights: 1, shelf: 1 });
      expect(after.tasters).toHaveLength(3);
      expect(after.next.map(({ key }) => key)).toContain(`whiskey:${other}`);
      expect(after.headline).toContain(after.next[0]?.label ?? "nothing");
      expect(after.next[0]?.why).toMatch(/A note would take \d+(\.\d)? % off all that is not known/);
      expect((await learned(other)).next?.why).toMatch(
        /^Nothing was said of it yet, only its label\. Its widest level is /,
      );
      // PA7: each by what is its own: the malt's two notes, the shelf's word and two of the batch; its recipe; its widest level.
      const own = await learned(malt);
      expect(own.next?.why).toMatch(
        /^Known from 2 notes of it, what the shelf says and 2 notes of mixes with it\. /,
      );
      expect(own.next?.why).toContain(" 1 recipe hangs on it: Mixes. ");
      const [wide] = own.levels
        .map((one) => one.learned)
        .toSorted((a, b) => b.high - b.low - (a.high - a.low));
      expect(own.next?.why).toContain(
        `: ${wide?.mean.toFixed(1)}, from ${wide?.low.toFixed(1)} to ${wide?.high.toFixed(1)}.`,
      );
      const ryes = (await learned(rye)).next?.why;
      expect(ryes).toMatch(/^Known from 2 notes of mixes with it\. /);
      expect(ryes).not.toContain("hangs on it");
      const blend = after.next.find(({ key }) => key.startsWith("batch:"))?.why;
      expect(blend).toContain(
        "It tells of 2 whiskeys at once; least is said of Saltreach Tide No. B: 2 notes of mixes with it.",
      );
      const reasons = after.next.map(({ why }) => why.replace(/ A note would take .*$/, ""));
      expect(new Set(reasons).size).toBe(reasons.length);
      // A recipe that is written anew without it hangs on it no more.
      const [recipe] = (await client("listRecipes", { at })).items;
      await client("addRecipeVersion", {
        at: { ...at, recipe: recipe?.id ?? "" },
        body: {
          version: recipe?.version ?? 0,
          slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: rye } }],
        },
      });
      expect((await learned(malt)).next?.why).not.toContain("hangs on it");
      expect((await learned(rye)).next?.why).toContain(" 1 recipe hangs on it: Mixes. ");

      // PA6: a search that asks for it knows the rye, of which the shelf says nothing.
      const asked = { like: malt, useIt: true, rules: { maxBottles: 2, maxParts: 4 } };
      const plain = await client("shelfProblem", { at, body: asked });
      expect(plain.levels).toEqual({ from: "shelf", notes: 0 });
      expect(plain.withoutProfile.map(({ id }) => id)).toContain(rye);
      const wise = await client("shelfProblem", { at, body: { ...asked, levels: "learned" } });
      expect(wise.levels).toEqual({ from: "learned", notes: 4 });
      expect(wise.withoutProfile.map(({ id }) => id)).toEqual([other]);
      expect(wise.problem.whiskeys.find(({ id }) => id === rye)?.profile["smoke.smoke"]).toEqual({
        value: told?.learned.mean,
        sd: told?.learned.sd,
      });

      const asLearned = await client("getPalate", { at });
      const seen = await Promise.all([malt, rye, other].map(learned));
      await smoked(shelf, { 3: 0, 0: 9 }, false);
      const sealed = await Promise.all([malt, rye, other].map(learned));
      expect(sealed).toEqual(seen);
      expect(await client("getPalate", { at })).toEqual(asLearned);
    });

    test("PA3 what lay on wood teaches nothing of what was poured into it, and is named", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, rye, batch } = await mixed(client);
      const rest = await client("beginRest", { at: { ...at, batch: batch.id }, body: { kind: "oak" } });
      await client("putOakIn", {
        at: { ...at, rest: rest.id },
        body: { piece: { shape: "stick", cm: [1, 1, 16] } },
      });
      await smoked(shelf, { 3: 7, 0: 1 }, true);
      expect((await client("getLearnedProfile", { at: { ...at, whiskey: rye } })).levels).toEqual([]);
      expect((await client("getPalate", { at })).silent).toEqual([
        { label: "November", why: "it lay on wood, which has a taste of its own" },
      ]);
    });
  });
});
