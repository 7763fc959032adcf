import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import type { Pour, Vessel } from "../../protocol/index.ts";
import { openPantry, type Pantry, slotOf } from "../fixtures/pantry.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const from = (vessel: Vessel, ml: number): Pour => ({
  from: { kind: "vessel", vesselId: vessel.id },
  amount: { kind: "volume", ml },
});
const water = (ml: number): Pour => ({ from: { kind: "water" }, amount: { kind: "volume", ml } });

/** Two whiskeys, a full bottle of each, and a recipe of 2 to 1 that rests three weeks. */
async function twoToOne(pantry: Pantry) {
  const rye = await pantry.whiskey("Harbour Rye", 60, { priceMinor: 7000 });
  const malt = await pantry.whiskey("Quay Malt", 46, { priceMinor: 3500 });
  const bottles = { rye: await pantry.bottle(rye), malt: await pantry.bottle(malt) };
  const recipe = await pantry.recipe(
    "Lamplighter",
    [
      [2, rye],
      [1, malt],
    ],
    { restDays: 21 },
  );
  return { rye, malt, bottles, recipe };
}

eachDatabase((database) => {
  describe(`batches (${database})`, () => {
    test("R3 the largest batch: what each bottle allows, what is left, what a vessel and a pour cost", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { recipe } = await twoToOne(pantry);
      const make = (body: { vesselMl: number; headMl?: number; vessels?: number }) =>
        house.client("makeBatch", { at: pantry.at, body: { recipeId: recipe.id, ...body } });
      const fits = await make({ vesselMl: 500, headMl: 20 });
      expect(fits).toMatchObject({ roomMl: 480, finalMl: 480, limitedBy: null });
      const most = await make({ vesselMl: 700, vessels: 3 });
      // Two parts of the rye, one of the malt, as much of each on the shelf: the rye runs out first.
      expect(most.limitedBy).toContain("Harbour Rye");
      expect(most.finalMl).toBe(most.largestMl);
      expect(most.plan?.issues).toEqual([]);
      const rye = most.limits.find(({ label }) => label.includes("Harbour Rye"));
      expect(rye?.allowsMl).toBeCloseTo(most.finalMl, 6);
      expect(most.left.find(({ label }) => label.includes("Rye"))?.leftMl).toBeLessThan(0.01);
      expect(most.left.find(({ label }) => label.includes("Malt"))?.leftMl).toBeCloseTo(
        (rye?.freeMl ?? 0) / 2,
        3,
      );
      const perLitre = most.plan?.result.cost.perLitreMinor ?? 0;
      expect(most.perPourMinor).toBeCloseTo(perLitre * 0.03, 6);
      expect(most.perVesselMinor).toBeCloseTo((perLitre * most.finalMl) / 3000, 6);
      const refused = await refusalOf(make({ vesselMl: 50, headMl: 50 }));
      expect(refused.issues[0]).toMatchObject({ code: "no_room", path: ["headMl"] });
    });

    test("R4 a batch writes its vessel, its pours in order and itself", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [
            from(bottles.malt, 100),
            from(bottles.rye, 200),
            { from: { kind: "water" }, amount: { kind: "mass", g: 20 } },
          ],
        },
      });
      expect(batch).toMatchObject({
        recipeName: "Lamplighter",
        recipeNumber: 1,
        vesselLabel: "Flask",
        restDays: 21,
      });
      expect(batch.poured.map(({ label }) => label)).toEqual([
        "Saltreach Quay Malt",
        "Saltreach Harbour Rye",
        "water",
      ]);
      expect(batch.poured.map(({ ml }) => ml)).toEqual([
        expect.closeTo(100, 6),
        expect.closeTo(200, 6),
        expect.closeTo(20 / 0.99820123, 6), // density of water at 20 °C: 998.20123 kg/m³ (OIML R 22, A1)
      ]);
      const mass = batch.poured.reduce((sum, { g }) => sum + g, 0);
      expect(batch.made.massG).toBeCloseTo(mass, 6);
      expect(batch.now).toEqual(batch.made);
      expect(batch.made.cost.knownMinor).toBeCloseTo(2500, 6);
      expect((await pantry.held(bottles.rye)).contents.volumeMl).toBeCloseTo(500, 6);
      const flask = await house.client("getVessel", { at: { ...pantry.at, vessel: batch.vesselId } });
      expect(flask).toMatchObject({ batchId: batch.id, kind: "blending bottle", contents: batch.now });
      const { items } = await house.client("listTransfers", { at: pantry.at, query: { batchId: batch.id } });
      expect(items).toHaveLength(3);
      expect(await house.client("getBatch", { at: { ...pantry.at, batch: batch.id } })).toEqual(batch);
    });

    test("R4 a batch bigger than its vessel is refused with its full volume, and nothing is half-written", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const no = await refusalOf(
        house.client("addBatch", {
          at: pantry.at,
          body: {
            name: "Too much",
            recipeId: recipe.id,
            vessel: { kind: "new", label: "Flask", capacityMl: 500 },
            pours: [from(bottles.rye, 400), from(bottles.malt, 200), water(100)],
          },
        }),
      );
      expect(no).toMatchObject({
        status: 422,
        issues: [{ code: "vessel_overflow", path: ["vessel"], limit: "500 mL, all that Flask holds" }],
      });
      expect(no.issues[0]?.received).toBeGreaterThan(680);
      expect(no.issues[0]?.received).toBeLessThan(700);
      expect((await house.client("listBatches", { at: pantry.at })).items).toEqual([]);
      expect((await house.client("listVessels", { at: pantry.at })).items).toHaveLength(2);
      expect((await house.client("listTransfers", { at: pantry.at })).items).toHaveLength(2);
      expect(await pantry.held(bottles.rye)).toMatchObject({ sealed: true, version: 1 });
    });

    test("R4 a pour too many refuses the whole batch at its place", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const body = (pours: Pour[]) => ({
        name: "Short",
        recipeId: recipe.id,
        vessel: { kind: "new" as const, label: "Flask", capacityMl: 2000 },
        pours,
      });
      const no = await refusalOf(
        house.client("addBatch", {
          at: pantry.at,
          body: body([from(bottles.malt, 100), from(bottles.rye, 400), from(bottles.rye, 301)]),
        }),
      );
      expect(no.issues).toMatchObject([
        {
          code: "vessel_short",
          path: ["pours", 2, "amount"],
          limit: "300 mL in Saltreach Harbour Rye",
          received: 301,
        },
      ]);
      const strange = { ...bottles.rye, id: recipe.id };
      const unknown = house.client("addBatch", { at: pantry.at, body: body([from(strange, 10)]) });
      expect(await refusalOf(unknown)).toMatchObject({
        status: 404,
        issues: [{ code: "unknown_vessel", path: ["pours", 0, "from", "vesselId"], received: recipe.id }],
      });
      expect((await house.client("listVessels", { at: pantry.at })).items).toHaveLength(2);
    });

    test("R5 a batch rests from its making, is rested when due, and finished when said", async () => {
      await using house = await temporaryHouse(database, { now: "2026-11-01T20:00:00.000Z" });
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const make = (restDays?: number | null) =>
        house.client("addBatch", {
          at: pantry.at,
          body: {
            name: "November",
            recipeId: recipe.id,
            vessel: { kind: "new", label: "Flask", capacityMl: 500 },
            pours: [from(bottles.rye, 50)],
            ...(restDays === undefined ? {} : { restDays }),
          },
        });
      const batch = await make();
      const at = { ...pantry.at, batch: batch.id };
      expect(batch).toMatchObject({ state: "resting", restDueAt: "2026-11-22T20:00:00.000Z" });
      house.clock.set("2026-11-22T19:59:59.999Z");
      expect(await house.client("getBatch", { at })).toMatchObject({ state: "resting" });
      house.clock.set("2026-11-22T20:00:00.000Z");
      expect(await house.client("getBatch", { at })).toMatchObject({ state: "rested" });
      const longer = await house.client("editBatch", { at, body: { version: 1, restDays: 30 } });
      expect(longer).toMatchObject({ state: "resting", restDueAt: "2026-12-01T20:00:00.000Z" });
      const done = await house.client("editBatch", {
        at,
        body: { version: 2, finished: true, note: "Drunk." },
      });
      expect(done).toMatchObject({ state: "finished", note: "Drunk.", version: 3 });
      const again = await house.client("editBatch", { at, body: { version: 3, finished: false } });
      expect(again).toMatchObject({ state: "resting" });
      expect(await make(null)).toMatchObject({ state: "rested", restDays: null, restDueAt: null });
      expect(await make(0)).toMatchObject({ state: "rested", restDays: 0 });
    });

    test("R7 water in steps over days: equal falls, counted by the strength there is, reckoned anew from what is there", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { recipe, bottles } = await twoToOne(pantry);
      const made = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "Slow",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Demijohn", capacityMl: 2000 },
          pours: [from(bottles.rye, 600)],
        },
      });
      const at = { ...pantry.at, batch: made.id };
      const asked = { waterTo: { basis: "abv20" as const, value: 45 }, steps: 3, everyDays: 4 };
      const up = { ...asked, waterTo: { basis: "abv20" as const, value: 61 } };
      const raise = house.client("editBatch", { at, body: { version: 1, reduction: up } });
      expect((await refusalOf(raise)).codes).toEqual(["water_cannot_raise"]);
      const begun = await house.client("editBatch", { at, body: { version: 1, reduction: asked } });
      expect(begun.reduction).toMatchObject({ done: 0, steps: 3, fromAbv20: expect.closeTo(60, 9) });
      const strengths = begun.reduction?.left.map(({ afterAbv20 }) => afterAbv20);
      expect(strengths).toEqual([55, 50, 45].map((one) => expect.closeTo(one, 6)));
      const days = begun.reduction?.left.map(
        ({ dueAt }) => (Date.parse(dueAt) - Date.parse(begun.reduction?.since ?? "")) / 86_400_000,
      );
      expect(days).toEqual([0, 4, 8]);
      const water = begun.reduction?.left[0]?.addMl ?? 0;
      // 60 to 55 % vol: 600 × 60 / 55 is 654.5 mL, and water shrinks into it (OIML R 22): a little more than 54.5 mL.
      expect(water).toBeGreaterThan(54.6);
      expect(water).toBeLessThan(58);
      const poured = await house.client("addTransfer", {
        at: pantry.at,
        body: {
          from: { kind: "outside", name: "tap" },
          to: { kind: "vessel", vesselId: made.vesselId },
          amount: { kind: "volume", ml: water },
        },
      });
      const after = await house.client("getBatch", { at });
      expect(after.reduction).toMatchObject({ done: 1 });
      expect(after.reduction?.left.map(({ afterAbv20 }) => afterAbv20)).toEqual([
        expect.closeTo(50, 6),
        expect.closeTo(45, 6),
      ]);
      await house.client("undoTransfer", { at: { ...pantry.at, transfer: poured.id } });
      expect((await house.client("getBatch", { at })).reduction?.done).toBe(0);
      const none = await house.client("editBatch", { at, body: { version: begun.version, reduction: null } });
      expect(none.reduction).toBeNull();
    });

    test("R6 a batch's vessel must be empty; an emptied one takes the next batch", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const flask = await pantry.vessel("Flask", 500);
      const make = (name: string) =>
        house.client("addBatch", {
          at: pantry.at,
          body: {
            name,
            recipeId: recipe.id,
            vessel: { kind: "existing", vesselId: flask.id },
            pours: [from(bottles.rye, 60), from(bottles.malt, 30)],
          },
        });
      const first = await make("First");
      const no = await refusalOf(make("Second"));
      expect(no).toMatchObject({
        status: 409,
        issues: [{ code: "vessel_not_empty", path: ["vessel", "vesselId"] }],
      });
      expect(no.issues[0]?.received).toBeCloseTo(first.made.volumeMl, 6);
      const empty = () =>
        house.client("addTransfer", {
          at: pantry.at,
          body: {
            from: { kind: "vessel", vesselId: flask.id },
            to: { kind: "outside", name: "glass" },
            amount: { kind: "all" },
          },
        });
      await empty();
      const second = await make("Second");
      expect(await pantry.held(flask)).toMatchObject({ batchId: second.id });
      const old = await house.client("getBatch", { at: { ...pantry.at, batch: first.id } });
      expect(old.now.volumeMl, "nothing of the first is left").toBe(0);
      expect(old.made.volumeMl).toBeCloseTo(first.made.volumeMl, 9);
      await empty();
      await pantry.pour(bottles.malt, flask, 40);
      expect(await pantry.held(flask), "no batch any more").toMatchObject({ batchId: null });
    });

    test("S6 a batch is undone as a whole and gives all back; one that is used is not", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { rye, bottles, recipe } = await twoToOne(pantry);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [from(bottles.rye, 200), from(bottles.malt, 100)],
        },
      });
      const transfer = batch.poured[1]?.transferId ?? "";
      const undo = () => house.client("undoTransfer", { at: { ...pantry.at, transfer } });
      const onTop = await pantry.recipe("On top", [
        [1, rye],
        [1, batch],
      ]);
      expect(await refusalOf(undo())).toMatchObject({
        status: 409,
        issues: [{ code: "batch_in_use", received: ["recipe On top"] }],
      });
      expect(onTop.latest.slots).toHaveLength(2);
      const other = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "Other",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Vial", capacityMl: 100 },
          pours: [from(bottles.rye, 20), from(bottles.malt, 10)],
        },
      });
      const last = other.poured[0]?.transferId ?? "";
      const undone = await house.client("undoTransfer", { at: { ...pantry.at, transfer: last } });
      expect(undone).toMatchObject({ batchId: null, note: "batch Other, undone" });
      expect((await house.client("listBatches", { at: pantry.at })).items.map(({ name }) => name)).toEqual([
        "November",
      ]);
      const vial = await house.client("getVessel", { at: { ...pantry.at, vessel: other.vesselId } });
      expect(vial).toMatchObject({ batchId: null, contents: { volumeMl: 0 } });
      expect((await pantry.held(bottles.rye)).contents.volumeMl).toBeCloseTo(500, 6);
    });

    test("S6 undoing what emptied a vessel brings its batch back", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { bottles, recipe } = await twoToOne(pantry);
      const batch = await house.client("addBatch", {
        at: pantry.at,
        body: {
          name: "November",
          recipeId: recipe.id,
          vessel: { kind: "new", label: "Flask", capacityMl: 500 },
          pours: [from(bottles.rye, 50)],
        },
      });
      const flask = await house.client("getVessel", { at: { ...pantry.at, vessel: batch.vesselId } });
      const emptied = await house.client("addTransfer", {
        at: pantry.at,
        body: {
          from: { kind: "vessel", vesselId: flask.id },
          to: { kind: "outside", name: "drain" },
          amount: { kind: "all" },
        },
      });
      const refilled = await pantry.pour(bottles.malt, flask, 30);
      expect(await pantry.held(flask)).toMatchObject({ batchId: null });
      for (const transfer of [refilled, emptied.id])
        await house.client("undoTransfer", { at: { ...pantry.at, transfer } });
      expect(await pantry.held(flask)).toMatchObject({ batchId: batch.id });
      expect(
        (await house.client("getBatch", { at: { ...pantry.at, batch: batch.id } })).now.volumeMl,
      ).toBeCloseTo(batch.made.volumeMl, 9);
    });

    test("R3 a plan takes opened bottles first, then sealed, and moves nothing", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { rye, bottles, recipe } = await twoToOne(pantry);
      const open = await pantry.bottle(rye, { label: "Open rye", sealed: false, levelMl: 120 });
      const before = await house.client("listVessels", { at: pantry.at });
      const plan = await house.client("planBatch", {
        at: pantry.at,
        body: { recipeId: recipe.id, finalMl: 600 },
      });
      expect(plan.issues).toEqual([]);
      expect(plan.result.volumeMl).toBeCloseTo(600, 6);
      expect(plan.steps.map(({ label, slot }) => [label, slot])).toEqual([
        ["Saltreach Harbour Rye", 0],
        ["Saltreach Quay Malt", 1],
      ]);
      const [first, second] = plan.steps;
      expect(first?.pours.map(({ label }) => label)).toEqual(["Open rye", "Saltreach Harbour Rye"]);
      expect(first?.pours[0]?.ml).toBeCloseTo(120, 6);
      expect(first?.ml).toBeCloseTo(2 * (second?.ml ?? 0), 6);
      expect(first?.pours[1]?.from).toEqual({ kind: "vessel", vesselId: bottles.rye.id });
      expect(open.sealed).toBe(false);
      expect(await house.client("listVessels", { at: pantry.at })).toEqual(before);
    });

    test("R3 a plan says what is short, and how much", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { recipe } = await twoToOne(pantry);
      const plan = await house.client("planBatch", {
        at: pantry.at,
        body: { recipeId: recipe.id, finalMl: 1500 },
      });
      const [rye, malt] = plan.steps;
      expect(rye?.shortMl).toBeCloseTo((rye?.ml ?? 0) - 700, 6);
      expect(malt?.shortMl).toBe(0);
      expect(plan.issues).toMatchObject([
        {
          code: "shelf_short",
          path: ["finalMl"],
          limit: "700.0 mL of Saltreach Harbour Rye free on the shelf",
        },
      ]);
      expect(plan.result.volumeMl, "as if the rest were bought").toBeCloseTo(1500, 6);
    });

    test("R3 water above the strength of the mix cannot raise it", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const rye = await pantry.whiskey("Harbour Rye", 50);
      await pantry.bottle(rye);
      const recipe = await pantry.recipe("High", [[1, rye]], { waterTo: { basis: "abv20", value: 55 } });
      const plan = await house.client("planBatch", {
        at: pantry.at,
        body: { recipeId: recipe.id, finalMl: 300 },
      });
      expect(plan.issues).toMatchObject([
        { code: "water_cannot_raise", path: ["waterTo", "value"], received: 55 },
      ]);
      expect(plan.steps.every(({ slot }) => slot !== null)).toBe(true);
    });

    test("R3 a plan is of the version asked, an unknown one is told", async () => {
      await using house = await temporaryHouse(database);
      const pantry = await openPantry(house.client);
      const { rye, recipe } = await twoToOne(pantry);
      await house.client("addRecipeVersion", {
        at: { ...pantry.at, recipe: recipe.id },
        body: { version: 1, slots: [slotOf([1, rye])] },
      });
      const plan = (recipeNumber?: number) =>
        house.client("planBatch", {
          at: pantry.at,
          body: {
            recipeId: recipe.id,
            finalMl: 100,
            ...(recipeNumber === undefined ? {} : { recipeNumber }),
          },
        });
      expect((await plan()).steps).toHaveLength(1);
      expect((await plan(1)).steps).toHaveLength(2);
      expect(await refusalOf(plan(3))).toMatchObject({
        status: 404,
        issues: [{ code: "unknown_recipe_version", path: ["recipeNumber"], received: 3 }],
      });
    });
  });
});
