import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { RecipeFile, ResultFile } from "../../protocol/index.ts";
import { refusalOf } from "../fixtures/refusal.ts";

/** A household with whiskeys by name, each with a full bottle. */
async function shelfOf(
  { client }: TemporaryHouse,
  name: string,
  whiskeys: readonly (readonly [name: string, abv: number, honey: number | null, more?: object])[],
) {
  const household = await client("addHousehold", { body: { name, currency: "EUR" } });
  const at = { household: household.id };
  const ids: Record<string, string> = {};
  for (const [own, value, honey, more = {}] of whiskeys) {
    const profile = honey === null ? null : { tastedAt: null, intensities: { "sweet.honey": honey } };
    const whiskey = await client("addWhiskey", {
      at,
      body: { maker: "Saltreach", name: own, strength: { basis: "abv20", value }, profile, ...more },
    });
    ids[own] = whiskey.id;
    await client("addBottle", { at, body: { whiskeyId: whiskey.id } });
  }
  return { at, ids };
}

const oak = { casks: [{ species: "American oak", held: "nothing" }] } as const;
const rye = {
  kind: "rye",
  grains: [
    { grain: "rye", percent: 95 },
    { grain: "malted barley", percent: 5 },
  ],
} as const;

/** As another house may write it: a later version with fields that nobody here knows. */
const passedOn: RecipeFile = {
  format: "parts-and-proof/recipe",
  version: 2,
  name: "Towards the Lamp",
  glassware: { shape: "tulip", id: "not of this house" },
  slots: [
    {
      parts: 2,
      whiskey: {
        maker: "Dunnage Row",
        name: "Barn Door",
        abv: 58,
        profile: { "sweet.honey": 6 },
        warehouse: "dunnage",
      },
      rule: "55% OR stronger, only American oak",
      reason: "weight",
      stirred: true,
    },
    { parts: 1, rule: "rye >= 51 %, not the same maker as slot 1", reason: "spice" },
  ],
  original: { profile: { "sweet.honey": 5 }, abv: 56 },
  restDays: 21,
  credits: ["Wren"],
  lineage: [{ name: "The first one", sha256: "a".repeat(64) }],
};

eachDatabase((database) => {
  describe(`passing on (${database})`, () => {
    test("X3 a file is looked at, taken in, and goes out again to the byte with what is not known of it; edited, it names where it came from", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { at, ids } = await shelfOf(house, "Second", [["Barn Door", 58, 6]]);
      const seen = await client("previewTakeIn", { at, body: { recipe: passedOn } });
      expect(seen).toMatchObject({
        name: "Towards the Lamp",
        already: null,
        credits: ["Wren"],
      });
      expect(seen.unknownFields.toSorted()).toEqual([
        "glassware",
        "slots.1.stirred",
        "slots.1.whiskey.warehouse",
      ]);
      // The maker differs, so the one on this shelf is another.
      expect(seen.slots.map(({ here, rule }) => [here, rule])).toEqual([
        [null, "55 % or stronger, only American oak"],
        [null, "rye >= 51 %, not the same maker as slot 1"],
      ]);
      expect((await client("listRecipes", { at })).items).toEqual([]);
      const other = { ...passedOn, name: "Another" };
      const wrong = client("takeInRecipe", { at, body: { recipe: other, sha256: seen.sha256 } });
      expect(await refusalOf(wrong)).toMatchObject({ status: 409, codes: ["other_file"] });
      const recipe = await client("takeInRecipe", { at, body: { recipe: passedOn, sha256: seen.sha256 } });
      expect(recipe.latest.slots).toMatchObject([
        { parts: 2, of: { kind: "open", named: { name: "Barn Door", abv: 58 } }, reason: "weight", from: 1 },
        { parts: 1, of: { kind: "open", named: null }, rule: passedOn.slots[1]?.rule, from: 2 },
      ]);
      const twice = client("takeInRecipe", { at, body: { recipe: passedOn, sha256: seen.sha256 } });
      expect(await refusalOf(twice)).toMatchObject({ status: 409, codes: ["recipe_already_here"] });

      const own = { ...at, recipe: recipe.id };
      const out = await client("exportRecipe", { at: own, body: {} });
      expect((await client("checkRecipe", { body: out })).sha256).toBe(seen.sha256);
      // Open slots stand for no liquid yet.
      const plan = client("planBatch", { at, body: { recipeId: recipe.id, finalMl: 700 } });
      expect(await refusalOf(plan)).toMatchObject({ status: 422, codes: ["slot_open"] });
      expect((await client("getRecipeProfile", { at: own })).lines).toEqual([]);

      const [first, second] = recipe.latest.slots;
      const changed = await client("addRecipeVersion", {
        at: own,
        body: {
          version: recipe.version,
          restDays: 21,
          slots: [
            { ...second!, rule: "rye >= 60 %" },
            { ...first!, of: { kind: "whiskey", whiskeyId: ids["Barn Door"] ?? "" } },
          ],
        },
      });
      expect(changed.latest.number).toBe(2);
      const edited = await client("exportRecipe", { at: own, body: { credits: ["Wren", "Ash"] } });
      expect(edited).toMatchObject({
        glassware: passedOn["glassware"],
        credits: ["Wren", "Ash"],
        lineage: [{ name: "Towards the Lamp", sha256: seen.sha256 }, ...(passedOn.lineage ?? [])],
        slots: [
          { rule: "rye >= 60 %", reason: "spice" },
          {
            whiskey: { maker: "Saltreach", name: "Barn Door" },
            rule: passedOn.slots[0]?.rule,
            stirred: true,
          },
        ],
      });
    });

    test("X4 a recipe is filled from the shelf here: who can stand where, who cannot by which value, what is not known, what could be bought", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { at, ids } = await shelfOf(house, "Second", [
        ["Strong Oak", 57, 5, oak],
        ["Weak Oak", 46, 5, oak],
        ["Nobody Knows", 60, 5],
        ["Rye", 54, 5, { ...rye, maker: "Ninepenny Mill" }],
      ]);
      const { sha256 } = await client("previewTakeIn", { at, body: { recipe: passedOn } });
      const recipe = await client("takeInRecipe", { at, body: { recipe: passedOn, sha256 } });
      const own = { ...at, recipe: recipe.id };
      const answer = await client("fillFromShelf", { at: own, body: { waterTo: 46 } });
      expect(answer.recipe).toEqual({ name: "Towards the Lamp", sha256 });
      expect(answer.slots[0]).toMatchObject({
        candidates: [ids["Strong Oak"]],
        asked: [{ id: ids["Nobody Knows"], missing: [{ rule: "only American oak", fact: "casks" }] }],
      });
      // Ids of one moment sort as they are drawn.
      expect(answer.slots[0]?.rejected.toSorted((a, b) => a.breaks.length - b.breaks.length)).toEqual(
        expect.arrayContaining([
          { id: ids["Weak Oak"], breaks: [{ rule: "55 % or stronger", value: 46 }], missing: [] },
          {
            id: ids["Rye"],
            breaks: [{ rule: "55 % or stronger", value: 54 }],
            missing: [{ rule: "only American oak", fact: "casks" }],
          },
        ]),
      );
      expect(answer).toMatchObject({
        proven: true,
        empty: [],
        best: { ids: [ids["Strong Oak"], ids["Rye"]] },
      });
      expect(answer.best?.waterMl).toBeGreaterThan(100);
      expect(answer.names[ids["Rye"] ?? ""]).toBe("Ninepenny Mill Rye");
      // Without the rye the second slot stays empty; a rye that is known and still sold could be bought.
      const bought = await client("addWhiskey", {
        at,
        body: {
          maker: "Loft",
          name: "Other Rye",
          strength: { basis: "abv20", value: 55 },
          ...rye,
          grains: [...rye.grains],
          profile: { tastedAt: null, intensities: { "sweet.honey": 4 } },
        },
      });
      const short = await client("fillFromShelf", { at: own, body: { without: [ids["Rye"] ?? ""] } });
      expect(short).toMatchObject({ empty: [2], couldBuy: 1, wanted: [{ slot: 2 }] });
      expect(short.bought[0]?.ids).toEqual([ids["Strong Oak"], bought.id]);
    });

    test("X4 a rule asks where a whiskey comes from: region or country, elsewhere, not known", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { at, ids } = await shelfOf(house, "Second", [
        ["Island", 57, 5, { place: "Saltreach Island, the north" }],
        ["Inland", 55, 5, { place: "Marlpit, the north" }],
        ["South", 56, 5, { place: "the south" }],
        ["Somewhere", 56, 5],
      ]);
      const slots = [
        { parts: 1, of: { kind: "open" as const, named: { name: "A", abv: 55 } }, rule: 'from "the north"' },
        {
          parts: 1,
          of: { kind: "open" as const, named: { name: "B", abv: 57 } },
          rule: "from Saltreach Island",
        },
      ];
      const recipe = await client("addRecipe", { at, body: { name: "Northern", slots } });
      const own = { ...at, recipe: recipe.id };
      const filled = await client("fillFromShelf", { at: own, body: {} });
      expect(filled.best?.ids).toEqual([ids["Inland"], ids["Island"]]);
      expect(filled.slots[0]).toMatchObject({
        rejected: [{ id: ids["South"], breaks: [{ rule: 'from "the north"', value: "the south" }] }],
        asked: [{ id: ids["Somewhere"], missing: [{ rule: 'from "the north"', fact: "place" }] }],
      });
      expect(filled.slots[1]?.rejected.map(({ breaks }) => breaks[0]?.value).toSorted()).toEqual([
        "Marlpit, the north",
        "the south",
      ]);
      // The file says where the recipe's own whiskey comes from, and what came in says so still.
      const named = await client("addRecipe", {
        at,
        body: { name: "Own", slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: ids["Island"] ?? "" } }] },
      });
      const file = await client("exportRecipe", { at: { ...at, recipe: named.id }, body: {} });
      expect(file.slots[0]?.whiskey?.place).toBe("Saltreach Island, the north");
    });

    test("X5 loosest rules are found from the household's own whiskeys, and from a shelf's file alike", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { at, ids } = await shelfOf(house, "First", [
        ["Lamp", 58, 6, oak],
        ["Near", 56, 6, oak],
        ["Far", 43, 1, oak],
      ]);
      const slots = [{ parts: 1, of: { kind: "whiskey" as const, whiskeyId: ids["Lamp"] ?? "" } }];
      const recipe = await client("addRecipe", { at, body: { name: "One", slots } });
      const found = await client("loosenFromShelf", {
        at: { ...at, recipe: recipe.id },
        body: { within: 1 },
      });
      expect(found.slots).toMatchObject([
        {
          named: "Lamp",
          rule: "45 % or stronger",
          proven: true,
          lets: [ids["Near"]],
          keepsOut: [ids["Far"]],
        },
      ]);
      const file = await client("exportRecipe", { at: { ...at, recipe: recipe.id }, body: {} });
      const whiskeys = [
        { id: "near", abv: 56, profile: { "sweet.honey": 6 } },
        { id: "far", abv: 43, profile: { "sweet.honey": 1 } },
      ];
      const alike = await client("loosenRules", { body: { recipe: file, shelf: { whiskeys }, within: 1 } });
      expect(alike.slots).toMatchObject([{ rule: "45 % or stronger", lets: ["near"], keepsOut: ["far"] }]);
    });

    test("X6 X7 X8 a result comes back, is looked at, pooled once, and taken out again; nobody is named", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const first = await shelfOf(house, "First", [["Lamp", 58, 6, oak]]);
      const slots = [
        {
          parts: 1,
          of: { kind: "whiskey" as const, whiskeyId: first.ids["Lamp"] ?? "" },
          rule: "50 % or stronger",
        },
      ];
      const mine = await client("addRecipe", { at: first.at, body: { name: "One", slots } });
      const file = await client("exportRecipe", { at: { ...first.at, recipe: mine.id }, body: {} });
      expect(file.slots[0]?.rule).toBe("50 % or stronger");
      const second = await shelfOf(house, "Second", [["Stair", 52, 5]]);
      const { sha256 } = await client("previewTakeIn", { at: second.at, body: { recipe: file } });
      const theirs = await client("takeInRecipe", { at: second.at, body: { recipe: file, sha256 } });
      const filled = await client("addRecipe", {
        at: second.at,
        body: {
          name: "One, from here",
          slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: second.ids["Stair"] ?? "" }, from: 1 }],
          lineage: [{ name: "One", sha256 }],
        },
      });
      const made = await client("makeResult", {
        at: { ...second.at, recipe: filled.id },
        body: { kitchen: "Harbour Street", notes: "went quickly" },
      });
      expect(made.result).toEqual({
        format: "parts-and-proof/result",
        version: 1,
        recipe: { name: "One", sha256 },
        kitchen: "Harbour Street",
        slots: [{ slot: 1, parts: 1, whiskey: { maker: "Saltreach", name: "Stair", abv: 52 } }],
        flights: [],
        notes: "went quickly",
      });
      // Or as a link, whatever address it names and whatever stands around it.
      expect(made.link).toMatch(/^http:\/\/127\.0\.0\.1:4480\/passed-on#1\.[\w-]+$/u);
      const look = (text: string) => client("previewResult", { at: first.at, body: { text } });
      const linked = await look(`Here: <${(made.link ?? "").replace("127.0.0.1:4480", "gone.example")}> !`);
      expect([linked.sha256, linked.result]).toEqual([made.sha256, made.result]);
      expect((await look(made.canonical)).sha256).toBe(made.sha256);
      const cut = (made.link ?? "").slice(0, -9);
      expect(await refusalOf(look(cut))).toMatchObject({ status: 422, codes: ["link_damaged"] });
      expect((await refusalOf(look("nothing in it"))).codes).toEqual(["link_not_found"]);
      const { link } = await client("shareRecipe", { body: { recipe: passedOn, as: "link" } });
      expect((await refusalOf(look(link))).issues[0]).toMatchObject({
        code: "result_wrong",
        path: ["text", "format"],
      });
      const neither = client("previewResult", { at: first.at, body: {} });
      expect((await refusalOf(neither)).status).toBe(422);

      // A recipe taken in and not filled names the same file.
      const bare = await client("makeResult", { at: { ...second.at, recipe: theirs.id }, body: {} });
      expect(bare.result.recipe.sha256).toBe(sha256);
      const none = client("makeResult", { at: { ...first.at, recipe: mine.id }, body: {} });
      expect(await refusalOf(none)).toMatchObject({ status: 409, codes: ["recipe_not_passed_on"] });

      const sheets = [
        { taster: 1, place: 1, of: 3, level: 1 },
        { taster: 2, place: 1, of: 3, level: 1 },
        { taster: 1, place: 2.5, of: 4, level: 2 },
      ];
      const result: ResultFile = { ...made.result, flights: [{ asked: "liked", sheets }] };
      const seen = await client("previewResult", { at: first.at, body: { result } });
      expect(seen).toMatchObject({
        about: { recipeId: mine.id, name: "One" },
        flights: 1,
        sheets: 3,
        tasters: 2,
        already: false,
      });
      const body = { result, sha256: seen.sha256 };
      const pooled = await client("takeInResult", { at: first.at, body });
      // By hand: two of three first, 1/3 each, and one that is not, 1/4 by luck: 2/3 · ... as in core.
      expect(pooled.liked).toMatchObject({ sheets: 3, tasters: 2, first: 2 });
      expect(pooled.liked?.luck.p).toBeCloseTo(2 / 9, 12);
      expect(pooled).toMatchObject({
        passedOn: 1,
        kitchens: [{ kitchen: "Harbour Street", notes: "went quickly" }],
      });
      expect(await refusalOf(client("takeInResult", { at: first.at, body }))).toMatchObject({
        codes: ["result_already_here"],
      });
      const told = await client("exportRecipe", {
        at: { ...first.at, recipe: mine.id },
        body: { withFindings: true },
      });
      expect(told.findings).toMatchObject({ flights: 1, sheets: 3 });
      expect(JSON.stringify(told)).not.toMatch(/Harbour Street|went quickly/u);

      // The household's file brings all of it along.
      const archive = await client("exportHousehold", { at: first.at });
      const again = await client("restoreHousehold", { body: archive });
      const { items } = await client("listRecipes", { at: { household: again.id } });
      const restored = await client("getRecipeResults", {
        at: { household: again.id, recipe: items[0]?.id ?? "" },
      });
      expect(restored.liked).toEqual(pooled.liked);

      const [kitchen] = pooled.kitchens;
      const rest = await client("removeResult", {
        at: { ...first.at, recipe: mine.id, result: kitchen?.resultId ?? "" },
      });
      expect(rest).toMatchObject({ kitchens: [], headline: "Nobody has sent a result yet." });

      const nobodys = { ...result, recipe: { name: "Somebody's", sha256: "b".repeat(64) } };
      const lost = await client("previewResult", { at: first.at, body: { result: nobodys } });
      expect(lost.about).toBeNull();
      const unplaced = client("takeInResult", {
        at: first.at,
        body: { result: nobodys, sha256: lost.sha256 },
      });
      expect(await refusalOf(unplaced)).toMatchObject({ codes: ["result_of_no_recipe"] });
      const placed = { result: nobodys, sha256: lost.sha256, recipeId: mine.id };
      expect((await client("takeInResult", { at: first.at, body: placed })).kitchens).toHaveLength(1);
    });

    test("X1 a batch in a slot goes out named, with its strength and what it was made of; X9 an open slot says what may stand there", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { at, ids } = await shelfOf(house, "First", [
        ["Lamp", 58, 6],
        ["Wick", 46, 3],
      ]);
      const of = (name: string) => ({ kind: "whiskey" as const, whiskeyId: ids[name] ?? "" });
      const base = await client("addRecipe", {
        at,
        body: { name: "Base", slots: [{ parts: 2, of: of("Lamp"), rule: "55 % or stronger" }] },
      });
      const vessels = (await client("listVessels", { at })).items;
      const lamp = vessels.find(({ contents }) => contents.composition[0]?.liquidId === ids["Lamp"]);
      const batch = await client("addBatch", {
        at,
        body: {
          name: "Base one",
          recipeId: base.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [
            { from: { kind: "vessel", vesselId: lamp?.id ?? "" }, amount: { kind: "volume", ml: 200 } },
          ],
        },
      });
      const slots = [
        { parts: 3, of: { kind: "batch" as const, batchId: batch.id } },
        { parts: 1, of: of("Wick") },
      ];
      const recipe = await client("addRecipe", { at, body: { name: "Whole", slots } });
      const file = await client("exportRecipe", { at: { ...at, recipe: recipe.id }, body: {} });
      expect(file.slots[0]).toMatchObject({
        parts: 3,
        whiskey: { name: "Base one", abv: expect.closeTo(58, 6) },
        blend: { name: "Base", slots: [{ parts: 2, whiskey: { name: "Lamp" }, rule: "55 % or stronger" }] },
      });
      await client("checkRecipe", { body: file });
      const open = { parts: 1, of: { kind: "open" as const, named: null } };
      const asked = (slot: object) =>
        refusalOf(client("addRecipe", { at, body: { name: "Open", slots: [{ ...open, ...slot }] } }));
      expect(await asked({})).toMatchObject({ codes: ["slot_open_without_rule"] });
      expect(await asked({ rule: "not the same maker as slot 2" })).toMatchObject({
        codes: ["rule_slot_unknown"],
      });
      expect((await asked({ rule: "wheat" })).issues[0]?.path).toEqual(["slots", 0, "rule"]);
    });
  });
});
