import { mix } from "@partsproof/core/alcoholometry";
import { abv20, millilitres20 } from "@partsproof/core/quantity";
import { eachDatabase, temporaryHouse, type TemporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

async function bench(house: TemporaryHouse) {
  const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 2 });
  const at = { household: shelf.household };
  const parts = shelf.whiskeyIds.map((whiskeyId) => ({ of: { kind: "whiskey", whiskeyId } }) as const);
  const set = await house.client("addTrialSet", {
    at,
    body: { name: "Bench", parts, plan: "centroid", volumeMl: 30, syringeMl: 0.5 },
  });
  return { shelf, at, parts, set, here: { ...at, trials: set.id } };
}

const heldOf = async (house: TemporaryHouse, household: string, vessel: string): Promise<number> =>
  (await house.client("getVessel", { at: { household, vessel } })).contents.volumeMl;

eachDatabase((database) => {
  describe(`sets of bench trials (${database})`, () => {
    test("B1, B3 a set is planned of the shelf, kept, and says what each bottle gives", async () => {
      await using house = await temporaryHouse(database);
      const { at, set, here, shelf, parts } = await bench(house);
      expect(set.plan.trials).toHaveLength(7);
      expect(set.made).toEqual([]);
      // Equal parts of the first two, 40 and 43 %: the mixture law of core, by OIML R 22 densities.
      const even = set.plan.trials[3];
      expect(even?.ml).toEqual([15, 15, 0]);
      expect(even?.abv20).toBeCloseTo(
        mix([
          { volumeMl: millilitres20(15), abv20: abv20(40) },
          { volumeMl: millilitres20(15), abv20: abv20(43) },
        ]).abv20,
        9,
      );
      expect(set.bottles.map(({ shortMl }) => shortMl)).toEqual([0, 0, 0]);
      for (const [i, { needMl, from }] of set.bottles.entries()) {
        expect(needMl).toBeCloseTo(
          set.plan.trials.reduce((sum, { ml }) => sum + (ml[i] ?? 0), 0),
          9,
        );
        expect(from).toEqual([{ vesselId: shelf.vesselIds[i], label: expect.any(String), ml: needMl }]);
      }
      expect(await house.client("getTrialSet", { at: here })).toEqual(set);
      expect((await house.client("listTrialSets", { at })).items).toEqual([set]);
      const twice = house.client("addTrialSet", {
        at,
        body: { name: "Twice", plan: "centroid", parts: [...parts.slice(0, 1), ...parts.slice(0, 1)] },
      });
      expect(await refusalOf(twice)).toMatchObject({ status: 422, codes: ["of_twice"] });
    });

    test("B6 own mixes for a flight: as they are asked for, with the reason of each glass, and what it names is in use", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, parts } = await bench(house);
      const [, , bottle = ""] = shelf.vesselIds;
      const glasses = [
        { of: { vesselId: bottle }, kind: "anchor", why: "From before." },
        { of: { trial: 2 }, kind: "new", why: "To find out whether more of it helps." },
        { of: { trial: 1 }, kind: "new", why: "Your own." },
      ] as const;
      const asked = {
        name: "Next flight",
        plan: "own" as const,
        parts: parts.slice(0, 2),
        mixes: [
          [2, 1],
          [1, 4],
        ],
        flight: { question: "like_best" as const, glasses: [...glasses] },
      };
      const set = await client("addTrialSet", { at, body: asked });
      expect(set.plan.trials.map(({ pouredShares }) => pouredShares)).toEqual([
        [expect.closeTo(2 / 3, 2), expect.closeTo(1 / 3, 2)],
        [expect.closeTo(1 / 5, 2), expect.closeTo(4 / 5, 2)],
      ]);
      expect(set.plan.notes).toEqual([]);
      const vial = { keepMl: null, insteadOf: null };
      expect(set.flight?.glasses).toEqual([
        {
          trial: null,
          vesselId: bottle,
          label: expect.any(String),
          keepMl: 15,
          insteadOf: null,
          kind: "anchor",
          why: "From before.",
        },
        { trial: 2, vesselId: null, label: "trial 2", ...vial, kind: "new", why: glasses[1].why },
        { trial: 1, vesselId: null, label: "trial 1", ...vial, kind: "new", why: "Your own." },
      ]);
      const here = { ...at, trials: set.id };
      const poured = await client("pourTrials", { at: here, body: { version: set.version } });
      const vials = new Map(poured.made.map(({ trial, vesselId }) => [trial, vesselId]));
      expect(poured.flight?.glasses.map(({ vesselId }) => vesselId)).toEqual([
        bottle,
        vials.get(2),
        vials.get(1),
      ]);
      // What is planned can be set as it stands.
      const pours = (poured.flight?.glasses ?? []).map(({ vesselId }) => ({ vesselId: vesselId ?? "" }));
      const set2 = await client("addTrialSet", {
        at,
        body: {
          ...asked,
          name: "One after",
          mixes: [[1, 1]],
          flight: {
            question: "like_best",
            glasses: [
              { of: { vesselId: vials.get(1) ?? "" }, kind: "anchor", why: "" },
              { of: { trial: 1 }, kind: "new", why: "" },
            ],
          },
        },
      });
      expect((await refusalOf(client("undoTrials", { at: here }))).codes).toEqual(["vial_planned"]);
      await client("removeTrialSet", { at: { ...at, trials: set2.id }, query: { version: set2.version } });
      const made = await client("addFlight", {
        at,
        body: {
          name: "Next flight",
          pouring: "someone else",
          pourer: "Pat",
          pourMl: 10,
          question: "like_best",
          tasterIds: [...shelf.tasterIds],
          glasses: pours,
        },
      });
      expect(made.flight.glassCount).toBe(3);
      const file = await client("exportHousehold", { at });
      expect(file).toBeTruthy();

      const wrong = (body: object) => client("addTrialSet", { at, body: { ...asked, ...body } });
      for (const [body, code] of [
        [{ mixes: undefined }, "mixes_are_own"],
        [{ mixes: [[1]] }, "not_one_each"],
        [{ mixes: [[0, 0]] }, "nothing_poured"],
        [{ plan: "centroid" }, "mixes_are_own"],
        [{ mixes: [[1, 1]] }, "unknown_trial"],
      ] as const)
        expect((await refusalOf(wrong(body))).codes).toContain(code);
      const nowhere = { of: { vesselId: parts[0]?.of.whiskeyId ?? "" }, kind: "anchor" as const, why: "" };
      const lost = wrong({ flight: { question: "like_best", glasses: [nowhere, glasses[1]] } });
      expect(await refusalOf(lost)).toMatchObject({ status: 404 });
    });

    test("B2, B4 pouring fills a vial for each trial and takes it off the shelf; undoing gives it back", async () => {
      await using house = await temporaryHouse(database);
      const { at, set, here, shelf } = await bench(house);
      const [first = ""] = shelf.vesselIds;
      const before = await heldOf(house, shelf.household, first);
      const some = await house.client("pourTrials", {
        at: here,
        body: { version: set.version, trials: [{ trial: 4, amounts: [16, 15, 0] }] },
      });
      expect(some.made).toEqual([
        expect.objectContaining({ trial: 4, label: "Bench, trial 4", leftMl: expect.closeTo(31, 1) }),
      ]);
      expect(await heldOf(house, shelf.household, first)).toBeCloseTo(before - 16, 9);
      const stale = house.client("pourTrials", { at: here, body: { version: set.version } });
      expect((await refusalOf(stale)).codes).toEqual(["stale_edit"]);
      const again = house.client("pourTrials", {
        at: here,
        body: { version: some.version, trials: [{ trial: 4 }] },
      });
      expect((await refusalOf(again)).codes).toEqual(["trial_poured"]);
      const all = await house.client("pourTrials", { at: here, body: { version: some.version } });
      expect(all.made.map(({ trial }) => trial)).toEqual([1, 2, 3, 4, 5, 6, 7]);
      expect(all.bottles.map(({ needMl }) => needMl)).toEqual([0, 0, 0]);
      const kept = house.client("removeTrialSet", { at: here, query: { version: all.version } });
      expect((await refusalOf(kept)).codes).toEqual(["trials_poured"]);
      const back = await house.client("undoTrials", { at: here });
      expect(back.made).toEqual([]);
      expect(await heldOf(house, shelf.household, first)).toBeCloseTo(before, 9);
      const labels = (await house.client("listVessels", { at })).items.map(({ label }) => label);
      expect(labels.filter((label) => label.startsWith("Bench"))).toEqual([]);
      await house.client("removeTrialSet", { at: here, query: { version: back.version } });
      expect((await house.client("listTrialSets", { at })).items).toEqual([]);
    });

    test("B2 by the scale the amounts are grams; what the shelf has not is refused and nothing is poured", async () => {
      await using house = await temporaryHouse(database);
      const { at, parts, shelf } = await bench(house);
      const [first = ""] = shelf.vesselIds;
      const weighed = await house.client("addTrialSet", {
        at,
        body: { name: "By weight", parts, plan: "centroid", scaleG: 0.1 },
      });
      const before = await heldOf(house, shelf.household, first);
      await house.client("pourTrials", {
        at: { ...at, trials: weighed.id },
        body: { version: 1, trials: [{ trial: 1, amounts: [28, 0, 0] }] },
      });
      // 40 % vol weighs 948.05 kg/m³ at 20 °C (OIML R 22, table IIIa).
      expect(before - (await heldOf(house, shelf.household, first))).toBeCloseTo(28 / 0.94805, 2);
      const { volumeMl } = (await house.client("getVessel", { at: { ...at, vessel: first } })).contents;
      await house.client("addTransfer", {
        at,
        body: {
          from: { kind: "vessel", vesselId: first },
          to: { kind: "outside", name: "drain" },
          amount: { kind: "volume", ml: volumeMl - 20 },
        },
      });
      const short = await house.client("getTrialSet", { at: { ...at, trials: weighed.id } });
      expect(short.bottles[0]?.shortMl).toBeGreaterThan(0);
      const poured = house.client("pourTrials", {
        at: { ...at, trials: weighed.id },
        body: { version: short.version },
      });
      expect(await refusalOf(poured)).toMatchObject({ status: 422, codes: ["shelf_short"] });
      expect(await house.client("getTrialSet", { at: { ...at, trials: weighed.id } })).toEqual(short);
    });

    test("B5, T3, H1 vials stand in a flight; how each did is told after the reveal, and the file keeps it", async () => {
      await using house = await temporaryHouse(database);
      const { at, set, here, shelf } = await bench(house);
      const three = [{ trial: 4 }, { trial: 5 }, { trial: 6 }];
      const poured = await house.client("pourTrials", {
        at: here,
        body: { version: set.version, trials: three },
      });
      const made = await house.client("addFlight", {
        at,
        body: {
          name: "Trials",
          question: "like_best",
          pouring: "someone else",
          pourer: "Pat",
          pourMl: 10,
          glasses: poured.made.map(({ vesselId }) => ({ vesselId })),
          tasterIds: [...shelf.tasterIds],
        },
      });
      const flight = { ...at, flight: made.flight.id };
      await house.client("markPoured", { at: flight, token: made.pourerToken ?? "" });
      const codeOf = new Map<string, string[]>();
      for (const { sheet, token } of await takeSheets(shelf, made.flight.id)) {
        const codes = sheet.glasses.map(({ code }) => code);
        codeOf.set(sheet.id, codes);
        await house.client("editSheet", {
          at: { ...flight, sheet: sheet.id },
          token,
          body: { version: sheet.version, ranking: [[codes[0] ?? ""], codes.slice(1)] },
        });
        expect(
          (await house.client("getTrialSet", { at: here })).made.flatMap(({ flights }) => flights),
        ).toEqual([]);
        const back = house.client("undoTrials", { at: here });
        expect((await refusalOf(back)).status).toBe(422);
        await lock(shelf, { sheet, token });
      }
      await house.client("revealFlight", { at: flight, body: {} });
      const shown = await house.client("getTrialSet", { at: here });
      const played = shown.made.map(({ flights }) => flights[0]);
      expect(played.map((one) => one?.orders)).toEqual([2, 2, 2]);
      // Two orders of three glasses, one first and two level: places add up to 6, firsts to 2.
      expect(played.reduce((sum, one) => sum + (one?.meanRank ?? 0), 0)).toBeCloseTo(6, 12);
      expect(played.reduce((sum, one) => sum + (one?.first ?? 0), 0)).toBeCloseTo(2, 12);
      expect(played[0]?.firstByLuck).toBeCloseTo(2 / 3, 12);

      const archive = await house.client("exportHousehold", { at });
      const { id } = await house.client("restoreHousehold", { body: archive });
      const [copy] = (await house.client("listTrialSets", { at: { household: id } })).items;
      expect(copy?.plan).toEqual(shown.plan);
      expect(copy?.made.map(({ trial, leftMl, flights }) => [trial, leftMl, flights[0]?.said])).toEqual(
        shown.made.map(({ trial, leftMl, flights }) => [trial, expect.closeTo(leftMl, 9), flights[0]?.said]),
      );
      expect(copy?.made[0]?.vesselId).not.toBe(shown.made[0]?.vesselId);
    });
  });
});
