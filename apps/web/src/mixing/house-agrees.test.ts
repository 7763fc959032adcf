import { temporaryHouse } from "@partsproof/testkit";
import { expect, test } from "vitest";
import { factsOf, reckonRecipe, stockOfContents, stockOfWhiskey } from "./index.ts";

test("what the browser reckons is what the house reckons, a batch as a part and water included", async () => {
  await using house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Agreement" } });
  const at = { household };
  const whiskey = (name: string, value: number, ageYears: number | null, priceMinor: number) =>
    client("addWhiskey", {
      at,
      body: {
        maker: "Saltreach",
        name,
        strength: { basis: "abv20", value },
        ageYears,
        priceMinor,
        grains: [
          { grain: name, percent: 70 },
          { grain: "malted barley", percent: 30 },
        ],
        casks: [{ species: "American oak", held: "bourbon" }],
      },
    });
  const tarn = await whiskey("Tarn", 62.4, 8, 7000);
  const skerry = await whiskey("Skerry", 46, 12, 4000);
  const from = async (whiskeyId: string) => {
    const { id } = await client("addBottle", { at, body: { whiskeyId } });
    return { kind: "vessel" as const, vesselId: id };
  };
  const neat = await client("addRecipe", {
    at,
    body: { name: "Neat", slots: [{ parts: 1, of: { kind: "whiskey", whiskeyId: tarn.id } }] },
  });
  const batch = await client("addBatch", {
    at,
    body: {
      name: "March",
      recipeId: neat.id,
      vessel: { kind: "new", label: "Jug", capacityMl: 500 },
      pours: [
        { from: await from(tarn.id), amount: { kind: "volume", ml: 210 } },
        { from: await from(skerry.id), amount: { kind: "mass", g: 90 } },
        { from: { kind: "water" }, amount: { kind: "volume", ml: 40 } },
      ],
    },
  });
  const body = {
    slots: [
      { parts: 3, of: { kind: "batch" as const, batchId: batch.id } },
      { parts: 2, of: { kind: "whiskey" as const, whiskeyId: skerry.id } },
    ],
    waterTo: { basis: "proof60F" as const, value: 86 },
  };
  const said = await client("previewRecipe", { at, body: { ...body, pouredMl: 700 } });
  const stock = stockOfContents(batch.name, batch.now);
  if (stock === null) throw new Error("the batch requires something in it, got nothing");
  const stocks = new Map([
    [`batch:${batch.id}`, stock],
    [`whiskey:${skerry.id}`, stockOfWhiskey(skerry)],
  ]);
  const ours = reckonRecipe(body, 700, stocks, factsOf([tarn, skerry]));
  if (!ours.ok) throw new Error(ours.why);

  expect(ours.result.abv20).toBeCloseTo(said.result.abv20 ?? Number.NaN, 9);
  expect(ours.result.proof60F).toBeCloseTo(86, 9);
  expect(ours.result.volumeMl).toBeCloseTo(said.result.volumeMl, 6);
  expect(ours.waterMl).toBeCloseTo(said.water?.ml ?? Number.NaN, 6);
  expect(ours.contractionMl).toBeCloseTo(said.contractionMl, 6);
  expect(ours.result.cost.perLitre).toBeCloseTo(said.result.cost.perLitreMinor ?? Number.NaN, 4);
  expect(ours.result.youngestAge.years).toBe(said.result.youngestAge.years);
  expect(ours.result.grainShares.map(({ grain, share }) => [grain, share.toFixed(9)])).toEqual(
    said.result.grainShares.map(({ grain, share }) => [grain, share.toFixed(9)]),
  );
  expect(ours.result.unknownGrainShare).toBeCloseTo(said.result.unknownGrainShare, 9);
});
