import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";

const rules = { maxBottles: 3, maxParts: 8 };

eachDatabase((database) => {
  describe(`a household's search (${database})`, () => {
    test("SH1 the demo: its problem is the shelf's, and its answer is what that problem gives", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { id } = await client("loadDemo");
      const at = { household: id };
      const whiskeys = (await client("listWhiskeys", { at, query: { limit: 200 } })).items;
      const like = whiskeys.find(({ name }) => name === "Lamplighter's Rest")?.id ?? "";
      const body = { like, rules: { ...rules, notGone: true as const } };
      const asked = await client("shelfProblem", { at, body });
      expect(asked.problem.whiskeys.map((one) => one.id)).not.toContain(like);
      expect(asked.problem.shares).toBe("alcohol");
      expect(Object.keys(asked.problem.target.profile)).toHaveLength(16);
      expect(asked.withoutProfile.map(({ label }) => label)).toEqual(["Tannet & Loame Counter Blend"]);

      const vessels = (await client("listVessels", { at, query: { limit: 200 } })).items;
      for (const { id: own, availableMl, pricePerLitre, abv } of asked.problem.whiskeys) {
        const alone = vessels.filter(
          ({ contents, batchId }) =>
            batchId === null &&
            contents.composition.length === 1 &&
            contents.composition[0]?.liquidId === own,
        );
        // What sealed flights keep back is not free.
        expect(availableMl).toBeLessThanOrEqual(
          alone.reduce((sum, { contents }) => sum + contents.volumeMl, 0) + 1e-9,
        );
        const whiskey = whiskeys.find((one) => one.id === own);
        expect(abv).toBe(whiskey?.abv20);
        expect(pricePerLitre).toBeCloseTo(
          (whiskey?.priceMinor ?? 0) / 100 / ((whiskey?.bottleMl ?? 1) / 1000),
          9,
        );
      }
      const answer = await client("searchShelf", { at, body });
      const same = await client("search", { body: asked.problem });
      expect(answer.recipes).toEqual(same.recipes);
      expect(answer).toMatchObject({ provenOptimal: true, gap: 0, currency: "USD" });
      expect(answer.recipes[0]?.distance).toBeLessThan(1);
    });

    test("SH2 unknown stays unknown: what nobody has said is null in a problem, 0 only what somebody said, give or take as notes are", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { id: household } = await client("addHousehold", { body: { name: "Harbour Street" } });
      const at = { household };
      const strength = { basis: "abv20" as const, value: 46 };
      const profile = {
        tastedAt: null,
        intensities: { "smoke.smoke": 0, "sweet.honey": null, "nut.nut": { value: 4, sd: 1 } },
      };
      const facts = { maker: "Quernmouth", name: "Shingle Bank", strength };
      const whiskey = await client("addWhiskey", { at, body: { ...facts, profile } });
      expect(whiskey.profile).toEqual(profile);
      await client("addBottle", { at, body: { whiskeyId: whiskey.id } });
      const target = { "smoke.smoke": 1, "sweet.honey": 5, "nut.nut": 4, "fruit.citrus": 2 };
      const { problem } = await client("shelfProblem", { at, body: { profile: target, rules } });
      expect(problem.whiskeys[0]?.profile).toEqual({
        "smoke.smoke": { value: 0, sd: 1 },
        "sweet.honey": null,
        "nut.nut": { value: 4, sd: 1 },
        "fruit.citrus": null,
      });
      expect(problem.shares).toBe("volume");
      const { unknown } = await client("searchShelf", { at, body: { profile: target, rules } });
      expect(unknown.map(({ attribute }) => attribute)).toEqual(["sweet.honey", "fruit.citrus"]);

      const edited = await client("editWhiskey", {
        at: { ...at, whiskey: whiskey.id },
        body: { version: whiskey.version, profile: null },
      });
      expect(edited.profile).toBeNull();
    });

    test("SH3 a change is of what is there, an attribute is a known one, and there is something to be after", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { id: household } = await client("addHousehold", { body: { name: "Harbour Street" } });
      const at = { household };
      const asked = (body: object) => refusalOf(client("searchShelf", { at, body: { rules, ...body } }));
      expect(await asked({})).toMatchObject({ status: 422, codes: ["target_missing"] });
      expect(await asked({ profile: { "nut.nut": 3 }, change: { "smoke.smoke": 1 } })).toMatchObject({
        codes: ["change_of_nothing"],
      });
      expect(await asked({ profile: { nuts: 3 } })).toMatchObject({
        issues: [{ path: ["profile", "nuts"] }],
      });
      expect(await asked({ profile: { "nut.nut": 3 }, weights: { "nut.nut": 0 } })).toMatchObject({
        codes: ["weights_all_zero"],
      });
      const { problem } = await client("shelfProblem", {
        at,
        body: {
          profile: { "nut.nut": 3, "smoke.smoke": 9 },
          change: { "nut.nut": -5, "smoke.smoke": 0.5 },
          rules,
        },
      });
      expect(problem.target.profile).toEqual({ "nut.nut": 0, "smoke.smoke": 9.5 });
    });
  });
});
