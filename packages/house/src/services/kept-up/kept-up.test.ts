import { mix } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { eachDatabase, temporaryHouse, type TemporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { refusalOf } from "../fixtures/refusal.ts";

const NAMES = ["sweet.honey", "smoke.smoke"] as const;

/** A jug of one litre and three bottles: one sweet, one smoky, one of which nobody has said a thing. */
async function cellar(house: TemporaryHouse) {
  const { id: household } = await house.client("addHousehold", { body: { name: "Test house" } });
  const at = { household };
  const bottle = async (
    name: string,
    value: number,
    honey: number | null,
    smoke: number,
    ageYears: number,
  ) => {
    const { id } = await house.client("addWhiskey", {
      at,
      body: {
        maker: "Saltreach",
        name,
        strength: { basis: "abv20", value },
        ageYears,
        bottleMl: 2000,
        profile:
          honey === null
            ? null
            : { tastedAt: null, intensities: { "sweet.honey": honey, "smoke.smoke": smoke } },
      },
    });
    return { whiskeyId: id, vesselId: (await house.client("addBottle", { at, body: { whiskeyId: id } })).id };
  };
  const sweet = await bottle("Sweet", 40, 8, 0, 12);
  const smoky = await bottle("Smoky", 60, 0, 8, 5);
  const mute = await bottle("Mute", 50, null, 0, 3);
  const jug = await house.client("addVessel", { at, body: { kind: "jug", label: "Jug", capacityMl: 1000 } });
  const move = (from: string, to: string, ml: number) =>
    house.client("addTransfer", {
      at,
      body: {
        from: { kind: "vessel", vesselId: from },
        to: to === "glass" ? { kind: "outside", name: "glass" } : { kind: "vessel", vesselId: to },
        amount: { kind: "volume", ml },
      },
    });
  const days = (count: number) => house.clock.advance({ hours: 24 * count });
  return { at, sweet, smoky, mute, jug, move, days, here: { ...at, vessel: jug.id } };
}

eachDatabase((database) => {
  describe(`kept-up bottles (${database})`, () => {
    test("U1, U2 additions thin out with every pour, half-lives and youngest age; undone transfers are left out", async () => {
      await using house = await temporaryHouse(database);
      const { at, sweet, smoky, jug, move, days, here } = await cellar(house);
      await move(sweet.vesselId, jug.id, 800);
      days(10);
      await move(jug.id, "glass", 200);
      days(10);
      const spilt = await move(jug.id, "glass", 100);
      await house.client("undoTransfer", { at: { ...at, transfer: spilt.id } });
      await move(smoky.vesselId, jug.id, 400);
      days(10);
      // 600 mL of the sweet one and 400 of the smoky: half of both goes.
      const half = (await house.client("getVessel", { at: here })).contents.volumeMl / 2;
      await move(jug.id, "glass", half);
      const told = await house.client("getKeptUp", { at: here });
      expect(told.liquids.map(({ label }) => label)).toEqual(["Saltreach Sweet", "Saltreach Smoky"]);
      expect(told.additions).toEqual([
        expect.objectContaining({ ml: expect.closeTo(800, 9), left: expect.closeTo(0.375, 12) }),
        expect.objectContaining({ left: expect.closeTo(0.5, 12) }),
      ]);
      expect(told.additions.map(({ halfLifeDays }) => halfLifeDays)).toEqual([
        expect.closeTo(30, 9),
        expect.closeTo(10, 9),
      ]);
      expect(told.course.map(({ youngestYears }) => youngestYears)).toEqual([12, 12, 5, 5]);
      // The mixture of 600 mL at 40 % and 400 mL at 60 %, by core's mixing law on OIML R 22.
      const blend = mix([
        { volumeMl: millilitres20(600), abv20: abv20(40) },
        { volumeMl: millilitres20(400), abv20: abv20(60) },
      ]);
      expect(told.course.at(-1)?.abv20).toBeCloseTo(blend.abv20, 9);
      expect(told.course.at(-1)?.volumeMl).toBeCloseTo(blend.volumeMl / 2, 6);
      expect(told.course.at(-1)?.volumeMl).toBeCloseTo(told.now.volumeMl, 9);
      const shares = new Map(
        told.now.composition.map(({ liquidId, shareOfMass }) => [liquidId, shareOfMass]),
      );
      for (const [i, { liquidId }] of told.liquids.entries())
        expect(told.course.at(-1)?.parts[i]).toBeCloseTo(shares.get(liquidId) ?? 0, 9);
      expect((await house.client("getKeptUp", { at: here, query: { points: 2 } })).course).toHaveLength(2);
    });

    test("U3 the closest addition: by hand, a third of the smoky one brings the jug to the target", async () => {
      await using house = await temporaryHouse(database);
      const { sweet, smoky, mute, jug, move, here } = await cellar(house);
      await move(sweet.vesselId, jug.id, 500);
      // Room for 500 mL. Honey 6 and smoke 2 of all is 375 mL sweet of 500 + 250 mL: half and half of what is added.
      const profile = { "sweet.honey": 6, "smoke.smoke": 2 };
      const told = await house.client("nextAddition", { at: here, body: { profile, maxParts: 4 } });
      expect(told).toMatchObject({
        provenOptimal: true,
        unknown: [],
        conflict: [],
        addMl: expect.closeTo(500, 6),
      });
      // As it is: honey 8 and smoke 0, each 2 off.
      expect(told.before).toBeCloseTo(2, 12);
      const [best] = told.recipes;
      expect(best?.distance).toBeCloseTo(0, 9);
      expect(
        new Map(best?.parts.map(({ whiskeyId, parts, ml }) => [whiskeyId, [parts, Math.round(ml)]])),
      ).toEqual(
        new Map([
          [sweet.whiskeyId, [1, 250]],
          [smoky.whiskeyId, [1, 250]],
        ]),
      );
      expect(best?.after.volumeMl).toBeCloseTo(1000, -1);
      expect(told.withoutProfile.map(({ id }) => id)).toEqual([mute.whiskeyId]);
      for (const { from } of best?.parts ?? [])
        expect(from.map(({ vesselId }) => vesselId)).not.toContain(jug.id);
      // Nothing was moved.
      expect((await house.client("getVessel", { at: here })).contents.volumeMl).toBeCloseTo(500, 9);
      expect(NAMES.map((name) => best?.predicted[name])).toEqual([
        expect.closeTo(6, 9),
        expect.closeTo(2, 9),
      ]);
    });

    test("U3, U4 what is unknown of the bottle does not count; no room and no such attribute are refused", async () => {
      await using house = await temporaryHouse(database);
      const { mute, sweet, jug, move, here } = await cellar(house);
      const ask = (body: object) =>
        house.client("nextAddition", { at: here, body: { like: sweet.whiskeyId, ...body } });
      expect((await refusalOf(ask({ addMl: 1001 }))).codes).toEqual(["no_room"]);
      // An empty jug: nothing in it is unknown.
      expect((await ask({ addMl: 100 })).recipes[0]?.distance).toBeCloseTo(0, 9);
      await move(mute.vesselId, jug.id, 100);
      expect((await refusalOf(ask({}))).codes).toEqual(["bottle_unknown"]);
    });
  });
});
