import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { ProfileBoard } from "../../protocol/index.ts";
import { eveningShelf, lock, setFlight, type Taken, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const BLANK = { nose: "", palate: "", finish: "" };
const profile = (intensities: Record<string, number | null>) => ({ tastedAt: null, intensities });

/** Two whiskeys of known taste, three to one in a batch, poured blind beside the first of them for three tasters. */
async function evening(house: TemporaryHouse) {
  const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 3 });
  const at = { household: shelf.household };
  const [malt = "", rye = ""] = shelf.whiskeyIds;
  const kept = [
    { "smoke.smoke": 8, "sweet.honey": 2, "fruit.stone": 4 },
    { "smoke.smoke": 0, "sweet.honey": 6, "fruit.stone": null },
  ];
  for (const [i, whiskey] of [malt, rye].entries())
    await house.client("editWhiskey", {
      at: { ...at, whiskey },
      body: { version: 1, profile: profile(kept[i] ?? {}) },
    });
  const recipe = await house.client("addRecipe", {
    at,
    body: {
      name: "Lamplighter",
      slots: [
        { parts: 3, of: { kind: "whiskey", whiskeyId: malt } },
        { parts: 1, of: { kind: "whiskey", whiskeyId: rye } },
      ],
    },
  });
  const from = (i: number, ml: number) =>
    ({
      from: { kind: "vessel", vesselId: shelf.vesselIds[i] ?? "" },
      amount: { kind: "volume", ml },
    }) as const;
  const batch = await house.client("addBatch", {
    at,
    body: {
      name: "November",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Flask", capacityMl: 700 },
      pours: [from(0, 450), from(1, 150)],
    },
  });
  const made = { ...shelf, vesselIds: [...shelf.vesselIds, batch.vesselId] };
  const { flight, pourerToken, hostToken } = await setFlight(made, [2, 0]);
  const key = await house.client("getPourList", {
    at: { ...at, flight: flight.id },
    token: pourerToken ?? "",
  });
  const taken = await takeSheets(made, flight.id);
  await house.client("markPoured", { at: { ...at, flight: flight.id }, token: pourerToken ?? "" });
  /** The code of the batch on a sheet. */
  const codeOf = ({ sheet }: Taken): string =>
    key.tasters.find(({ taster }) => taster === sheet.taster)?.glasses.find(({ label }) => label === "Flask")
      ?.code ?? "";
  const reveal = async (): Promise<void> => {
    for (const one of taken) await lock(made, one);
    await house.client("revealFlight", { at: { ...at, flight: flight.id }, body: {} });
  };
  return { at, shelf: made, malt, recipe, batch, flight, hostToken, taken, codeOf, reveal };
}

const lineOf = (board: ProfileBoard, kind: string, label: string) => {
  const line = board.lines.find((one) => one.kind === kind && one.label.startsWith(label));
  return Object.fromEntries(
    (line?.attributes ?? []).map(({ attribute, mean, sd }) => [attribute, { mean, sd }]),
  );
};

eachDatabase((database) => {
  describe(`profiles on ${database}`, () => {
    test("Y1 to Y6 what the parts predict, what sheets say, and what mixing did to the sum", async () => {
      const house = await temporaryHouse(database);
      const { at, recipe, malt, flight, taken, codeOf, reveal } = await evening(house);
      const ask = () => house.client("getRecipeProfile", { at: { ...at, recipe: recipe.id } });
      const before = await ask();
      // By hand: (3 × 8 + 1 × 0) / 4 = 6 with sd √(9 + 1) / 4, and (3 × 2 + 1 × 6) / 4 = 3.
      const predicted = lineOf(before, "predicted", "Lamplighter");
      expect(predicted["smoke.smoke"]?.mean).toBeCloseTo(6, 9);
      expect(predicted["smoke.smoke"]?.sd).toBeCloseTo(Math.sqrt(10) / 4, 9);
      expect(predicted["sweet.honey"]?.mean).toBeCloseTo(3, 9);
      expect(predicted["fruit.stone"]).toBeUndefined();
      expect(before.lines[0]?.unknown).toEqual([
        { attribute: "fruit.stone", parts: ["Saltreach Tide No. B"] },
      ]);
      expect(before.against).toEqual([]);
      for (const one of taken) {
        const code = codeOf(one);
        const set = (attribute: "smoke.smoke" | "sweet.honey" | "wood.old", strength: number | null) =>
          ({ code, pass: "first", section: "palate", attribute, strength }) as const;
        const sheetAt = { ...at, flight: flight.id, sheet: one.sheet.id };
        await house.client("addEntry", {
          at: sheetAt,
          token: one.token,
          body: {
            key: `0123456789abcdefgh${one.sheet.id.slice(-4)}`,
            after: 0,
            notes: [
              {
                code,
                first: { ...BLANK, palate: "smoke, apricot, an old cigar box" },
                second: BLANK,
                score: null,
              },
            ],
            strengths: [set("smoke.smoke", 0), set("sweet.honey", 3), set("wood.old", 4)],
          },
        });
        // The cigar box was no cigar box: taken back by hand, though the words are still there.
        await house.client("addEntry", {
          at: sheetAt,
          token: one.token,
          body: {
            key: `0123456789abcdefgi${one.sheet.id.slice(-4)}`,
            after: 1,
            strengths: [set("wood.old", null)],
          },
        });
      }
      expect(await ask(), "Y2 a sealed flight changes nothing").toEqual(before);
      await reveal();
      const after = await ask();
      const observed = lineOf(after, "observed", "November");
      expect(observed["smoke.smoke"]?.mean).toBe(0);
      expect(observed["sweet.honey"]?.mean).toBeCloseTo(3, 6);
      expect(observed["fruit.stone"]?.mean).toBeGreaterThan(3);
      expect(observed["wood.old"]).toBeUndefined();
      const [compared] = after.against;
      const became = Object.fromEntries(compared?.rows.map((row) => [row.attribute, row.became]) ?? []);
      expect(became).toEqual({
        "smoke.smoke": "less",
        "sweet.honey": "not told apart",
        "fruit.stone": "not predicted",
      });
      expect(after.headline).toBe(compared?.sentence);
      expect(after.headline).toMatch(/^November has less smoke than the sum of its parts, by more than luck/);
      const line = after.lines.find(({ kind }) => kind === "observed");
      expect(line?.counted).toEqual({ flights: 1, glasses: 3, tasters: 3 });
      expect(Object.keys(line?.sections ?? {})).toEqual(["palate"]);
      const whiskey = await house.client("getWhiskeyProfile", { at: { ...at, whiskey: malt } });
      expect(lineOf(whiskey, "kept", "Saltreach")["smoke.smoke"]).toEqual({ mean: 8, sd: 1 });
      expect(whiskey.lines.filter(({ kind }) => kind === "observed")).toEqual([]);
    });

    test("V4 a word taught later is heard in what was written before", async () => {
      const house = await temporaryHouse(database);
      const { at, recipe, flight, taken, codeOf, reveal } = await evening(house);
      const [one] = taken;
      if (one === undefined) throw new Error("a sheet required");
      await house.client("editSheet", {
        at: { ...at, flight: flight.id, sheet: one.sheet.id },
        token: one.token,
        body: {
          version: one.sheet.version,
          notes: [
            { code: codeOf(one), first: { ...BLANK, nose: "grandad's van" }, second: BLANK, score: null },
          ],
        },
      });
      await reveal();
      const ask = () => house.client("getRecipeProfile", { at: { ...at, recipe: recipe.id } });
      expect(lineOf(await ask(), "observed", "November")).toEqual({});
      await house.client("teachWord", { at, body: { phrase: "grandad's van", means: "earth.earth" } });
      expect(Object.keys(lineOf(await ask(), "observed", "November"))).toEqual(["earth.earth"]);
    });

    test("Y7 a flight's profiles come with its reveal; a guest is told what was observed and no more", async () => {
      const house = await temporaryHouse(database);
      const { at, flight, hostToken, taken, codeOf, reveal } = await evening(house);
      const flightAt = { ...at, flight: flight.id };
      for (const [i, one] of taken.entries())
        await house.client("editSheet", {
          at: { ...flightAt, sheet: one.sheet.id },
          token: one.token,
          body: {
            version: one.sheet.version,
            strengths: [
              {
                code: codeOf(one),
                pass: "first",
                section: "nose",
                attribute: "smoke.smoke",
                strength: 5 + i,
              },
            ],
          },
        });
      const early = await refusalOf(house.client("getFlightProfiles", { at: flightAt }));
      expect([early.status, early.issues[0]?.code]).toEqual([409, "not_revealed"]);
      const { link } = await house.client("openJoining", {
        at: flightAt,
        token: hostToken,
        body: { role: "watcher" },
      });
      const guest = await house.client("join", {
        body: {
          ticket: { kind: "link", link },
          key: "0123456789abcdefghijkl",
          name: "Wren",
          ofLegalAge: true,
        },
      });
      await reveal();
      const own = await house.client("getFlightProfiles", { at: flightAt });
      expect(own.lines.map(({ kind, label }) => [kind, label])).toEqual([
        ["predicted", "November"],
        ["observed", "November"],
      ]);
      expect(own.scales.map(({ taster }) => taster).toSorted()).toEqual(["Taster 1", "Taster 2", "Taster 3"]);
      const told = await house.fetch(
        new Request(
          `http://house.test/api/households/${at.household}/flights/${flight.id}/finding/profiles`,
          {
            headers: { authorization: `Bearer ${guest.token}` },
          },
        ),
        { from: "network", address: "192.0.2.7", secure: true },
      );
      expect(told.status).toBe(200);
      const board = (await told.json()) as ProfileBoard;
      expect(board.lines.map(({ kind }) => kind)).toEqual(["observed"]);
      expect(board.against).toEqual([]);
    });
  });
});
