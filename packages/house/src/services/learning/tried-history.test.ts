import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { lackOf, meantGlasses, plannedTrials } from "../../protocol/index.ts";
import { type EveningShelf, eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const profile = (intensities: Record<string, number>) => ({ tastedAt: null, intensities });

/** Two whiskeys, a batch of two and one of three parts to one, a recipe of both. */
async function around(client: EveningShelf["client"]) {
  const shelf = await eveningShelf(client, { whiskeys: 3, tasters: 2 });
  const at = { household: shelf.household };
  const [malt = "", rye = "", other = ""] = shelf.whiskeyIds;
  for (const [i, whiskey] of [malt, rye].entries())
    await client("editWhiskey", {
      at: { ...at, whiskey },
      body: { version: 1, profile: profile({ "smoke.smoke": 8 - 6 * i, "sweet.honey": 2 + 4 * i }) },
    });
  const slot = (parts: number, whiskeyId: string) => ({
    parts,
    of: { kind: "whiskey" as const, whiskeyId },
  });
  const recipe = await client("addRecipe", {
    at,
    body: { name: "Lamplighter", targetWhiskeyId: other, slots: [slot(3, malt), slot(1, rye)] },
  });
  const from = (i: number, ml: number) =>
    ({
      from: { kind: "vessel", vesselId: shelf.vesselIds[i] ?? "" },
      amount: { kind: "volume", ml },
    }) as const;
  const batch = await client("addBatch", {
    at,
    body: {
      name: "November",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Flask", capacityMl: 700 },
      pours: [from(0, 300), from(1, 100)],
    },
  });
  return {
    shelf: { ...shelf, vesselIds: [...shelf.vesselIds, batch.vesselId] },
    at,
    malt,
    rye,
    other,
    recipe,
    batch,
  };
}

const silent = { nose: "", palate: "", finish: "", overall: "" };

interface Ranked {
  readonly reveal: boolean;
  /** Of each glass, in the order of the ranking; whoever comes second gives one less. */
  readonly scores?: readonly number[];
  readonly more?: Parameters<typeof setFlight>[2];
}

/** A flight poured, ranked alike by both tasters, best first by vessel number, scored or not, and locked. */
async function ranked(
  shelf: EveningShelf,
  best: readonly number[],
  { reveal, scores, more }: Ranked,
): Promise<{ readonly reveal: () => Promise<unknown> }> {
  const { client, household, vesselIds } = shelf;
  const made = await setFlight(shelf, [...best], more);
  const at = { household, flight: made.flight.id };
  const token = made.pourerToken ?? "";
  await client("markPoured", { at, token });
  const list = await client("getPourList", { at, token });
  for (const [row, taken] of (await takeSheets(shelf, at.flight)).entries()) {
    const codes = best.map(
      (vessel) =>
        list.tasters[row]?.glasses.find(({ vesselId }) => vesselId === vesselIds[vessel])?.code ?? "",
    );
    const notes = (scores ?? []).map((score, i) => ({
      code: codes[i] ?? "",
      first: silent,
      second: silent,
      score: score - row,
    }));
    await client("editSheet", {
      at: { ...at, sheet: taken.sheet.id },
      token: taken.token,
      body: { version: taken.sheet.version, ranking: codes.map((code) => [code]), notes },
    });
    await lock(shelf, taken);
  }
  const lift = () => client("revealFlight", { at, token: made.hostToken, body: {} });
  if (reveal) await lift();
  return { reveal: lift };
}

eachDatabase((database) => {
  describe(`what was tried around a recipe (${database})`, () => {
    test("N1 N2 rankings of revealed flights alone, batches by what was poured, the target, and a flight to pour", async () => {
      await using house = await temporaryHouse(database);
      const { shelf, at, malt, rye, other, recipe, batch } = await around(house.client);
      const ask = () => house.client("getTried", { at: { ...at, recipe: recipe.id } });
      const before = await ask();
      expect(before).toMatchObject({ counted: { flights: 0, rankings: 0 }, by: "liking" });
      expect(before.asked.tried).toEqual([{ id: `whiskey:${other}`, parts: { [other]: 1 } }]);

      await ranked(shelf, [3, 0, 1], { reveal: true });
      const told = await ask();
      const blend = `batch:${batch.id}`;
      expect(told.asked.tried).toContainEqual({ id: blend, parts: { [malt]: 3, [rye]: 1 } });
      const order = [[blend], [`whiskey:${malt}`], [`whiskey:${rye}`]];
      expect(told.asked.rankings).toEqual(
        expect.arrayContaining(shelf.tasterIds.map((taster) => ({ taster, order }))),
      );
      expect(told.asked.rankings).toHaveLength(2);
      expect(told).toMatchObject({ counted: { flights: 1, rankings: 2, tasters: 2 } });
      expect(told.asked.mixes).toEqual([malt, rye]);
      expect(told.names[blend]).toBe("November");
      expect(told.vessels.find(({ id }) => id === blend)?.vesselId).toBe(batch.vesselId);

      const { glasses } = await house.client("nextFlight", { body: told.asked });
      expect(glasses.map(({ kind }) => kind)).toEqual(["anchor", "target", "new", "new", "new"]);
      expect(glasses[0]?.parts).toEqual({ [malt]: 3, [rye]: 1 });
      for (const { parts } of glasses.slice(2))
        expect([malt, rye]).toEqual(expect.arrayContaining(Object.keys(parts)));

      // Sealed: whatever was ranked in it, nothing of it stands in the answer but what its holds keep back.
      await ranked(shelf, [1, 0, 3], { reveal: false });
      const sealed = await ask();
      expect({ ...sealed.asked, shelf: told.asked.shelf }).toEqual(told.asked);
      expect(sealed.asked.shelf?.leftMl[malt]).toBe((told.asked.shelf?.leftMl[malt] ?? 0) - 2 * 15);
      expect(sealed.counted).toEqual(told.counted);
    });

    test.each([
      ["better liked", 4],
      ["sweeter", 0],
    ])("N1 pairs that ask which is %s are orders of two, or nothing", async (asked, count) => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, malt, recipe, batch } = await around(client);
      const made = await setFlight(shelf, [3, 0], {
        question: "tell_apart",
        method: "paired",
        asked,
        sets: 2,
      });
      const flightAt = { ...at, flight: made.flight.id };
      const token = made.pourerToken ?? "";
      const list = await client("getPourList", { at: flightAt, token });
      await client("markPoured", { at: flightAt, token });
      const flask = shelf.vesselIds[3];
      for (const [row, taken] of (await takeSheets(shelf, made.flight.id)).entries()) {
        const answers = [1, 2].map((set) => ({
          set,
          picked: (list.tasters[row]?.glasses ?? []).flatMap((glass) =>
            glass.set === set && glass.vesselId === flask ? [glass.code] : [],
          ),
        }));
        await client("editSheet", {
          at: { ...flightAt, sheet: taken.sheet.id },
          token: taken.token,
          body: { version: taken.sheet.version, answers },
        });
        await lock(shelf, taken);
      }
      await client("revealFlight", { at: flightAt, token: made.hostToken, body: {} });
      const told = await client("getTried", { at: { ...at, recipe: recipe.id } });
      const order = [[`batch:${batch.id}`], [`whiskey:${malt}`]];
      expect(told.asked.rankings.map((one) => (Array.isArray(one) ? one : one.order))).toEqual(
        Array.from({ length: count }, () => order),
      );
    });

    test("N1 scores of a poured flight are marks once its locked sheets are revealed, and the next flight goes by them", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, malt, rye, other, recipe, batch } = await around(client);
      const slot = (whiskeyId: string) => ({ parts: 1, of: { kind: "whiskey" as const, whiskeyId } });
      const free = await client("addRecipe", {
        at,
        body: { name: "No aim", slots: [slot(malt), slot(rye)] },
      });
      const ask = (of: string) => client("getTried", { at: { ...at, recipe: of } });
      const flight = await ranked(shelf, [3, 0, 1], { reveal: false, scores: [90, 51, 49] });
      const sealed = await ask(free.id);
      expect(sealed.counted).toEqual({ flights: 0, rankings: 0, marks: 0, tasters: 0 });
      expect(sealed.asked).not.toHaveProperty("scores");

      await flight.reveal();
      const told = await ask(free.id);
      const [blend, alone, second] = [`batch:${batch.id}`, `whiskey:${malt}`, `whiskey:${rye}`] as const;
      expect(told.counted).toEqual({ flights: 1, rankings: 0, marks: 6, tasters: 2 });
      expect(told.asked.rankings).toEqual([]);
      expect(told.asked.scores).toHaveLength(2);
      for (const [row, taster] of shelf.tasterIds.entries())
        expect(told.asked.scores).toContainEqual({
          taster,
          of: "liking",
          scale: [0, 100],
          marks: { [blend]: 90 - row, [alone]: 51 - row, [second]: 49 - row },
        });
      const next = await client("nextFlight", { body: told.asked });
      expect(next.counted).toEqual({ rankings: 0, marks: 6 });
      expect(next.glasses[0]).toMatchObject({ kind: "anchor", parts: { [malt]: 3, [rye]: 1 } });
      // The order alone does not say that the last two were nearly one.
      const { scores: _, ...unscored } = told.asked;
      const order = [[blend], [alone], [second]];
      const byOrder = await client("nextFlight", {
        body: { ...unscored, rankings: shelf.tasterIds.map((taster) => ({ taster, order })) },
      });
      const apart = ({ posterior }: typeof next, one: string, two: string): number =>
        (posterior.find(({ id }) => id === one)?.mean ?? 0) -
        (posterior.find(({ id }) => id === two)?.mean ?? 0);
      expect(apart(next, alone, second)).toBeLessThan(apart(byOrder, alone, second));
      expect(apart(next, alone, second)).toBeLessThan(0.2 * apart(next, blend, alone));

      // Around a recipe with a target, scores of liking are none of closeness; those of a flight that asked for it are.
      const aimed = await ask(recipe.id);
      expect(aimed).toMatchObject({ by: "liking", counted: { rankings: 2, marks: 0 } });
      const target = `whiskey:${other}`;
      await ranked(shelf, [2, 3, 0], {
        reveal: true,
        scores: [95, 70, 40],
        more: { question: "how_close", targetNameId: target },
      });
      const close = await ask(recipe.id);
      expect(close).toMatchObject({ by: "closeness", counted: { flights: 1, rankings: 0, marks: 6 } });
      expect(close.asked.scores?.[0]).toMatchObject({ of: "closeness", scale: [0, 100] });
      const nearer = await client("nextFlight", { body: close.asked });
      expect(nearer.glasses.slice(0, 2).map(({ kind }) => kind)).toEqual(["anchor", "target"]);
      expect(apart(nearer, blend, alone)).toBeGreaterThan(0);
    });

    test("N4 little left: the mixes that are planned can all be poured, and what is poured beside them", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, malt, rye, other, recipe } = await around(client);
      await ranked(shelf, [3, 0, 1], { reveal: true });
      const ask = () => client("getTried", { at: { ...at, recipe: recipe.id } });
      const enough = await ask();
      expect(enough.asked.shelf).toMatchObject({ mixMl: 60, pourMl: 30 });
      const before = await client("nextFlight", { body: enough.asked });
      expect(before.scarce).toEqual([]);
      for (const [i, left] of [90, 70, 20].entries()) {
        const whiskey = [malt, rye, other][i] ?? "";
        const ml = (enough.asked.shelf?.leftMl[whiskey] ?? 0) - left;
        await client("addTransfer", {
          at,
          body: {
            from: { kind: "vessel", vesselId: shelf.vesselIds[i] ?? "" },
            to: { kind: "outside", name: "drain" },
            amount: { kind: "volume", ml },
          },
        });
      }
      // As planned with plenty on the shelf, the same glasses would be short now.
      const short = await client("addTrialSet", {
        at,
        body: plannedTrials(enough, "Before", before.glasses),
      });
      expect(short.bottles.some(({ shortMl }) => shortMl > 0)).toBe(true);
      const told = await ask();
      expect(told.asked.shelf?.leftMl[malt]).toBeCloseTo(90, 6);
      expect(told.asked.shelf?.leftMl[rye]).toBeCloseTo(70, 6);
      const { glasses, scarce } = await client("nextFlight", { body: told.asked });
      expect(scarce).toContain(rye);
      expect(glasses.some(({ kind }) => kind === "new")).toBe(true);
      const set = await client("addTrialSet", { at, body: plannedTrials(told, "Now", glasses) });
      expect(set.bottles.map(({ shortMl }) => shortMl)).toEqual(set.bottles.map(() => 0));
      await client("pourTrials", { at: { ...at, trials: set.id }, body: { version: set.version } });
      const { flight } = await client("getTrialSet", { at: { ...at, trials: set.id } });
      const vessels = flight?.glasses.flatMap(({ vesselId }) => vesselId ?? []) ?? [];
      expect(vessels).toHaveLength(glasses.length);
      // And all of it can be set as a flight, with glasses that the target fills: it is poured as it is, not mixed.
      expect(glasses[1]).toMatchObject({ kind: "target", parts: { [other]: 1 } });
      expect(vessels[1]).toBe(shelf.vesselIds[2]);
      await setFlight({ ...shelf, vesselIds: vessels }, [...vessels.keys()], { pourMl: 10 });
    });

    test("N4 N5 two bottles of one whiskey: the mixes are poured beside the glass that stands ready, and the flight is set", async () => {
      await using house = await temporaryHouse(database);
      const { client } = house;
      const { shelf, at, malt, rye, recipe } = await around(client);
      await ranked(shelf, [0, 3, 1], { reveal: true });
      const [first = ""] = shelf.vesselIds;
      const second = (await client("addBottle", { at, body: { whiskeyId: malt } })).id;
      for (const [vesselId, left] of [
        [first, 60],
        [second, 50],
      ] as const) {
        const { volumeMl } = (await client("getVessel", { at: { ...at, vessel: vesselId } })).contents;
        await client("addTransfer", {
          at,
          body: {
            from: { kind: "vessel", vesselId },
            to: { kind: "outside", name: "drain" },
            amount: { kind: "volume", ml: volumeMl - left },
          },
        });
      }
      const told = await client("getTried", { at: { ...at, recipe: recipe.id } });
      expect(told.asked.shelf).toMatchObject({
        mixMl: 60,
        pourMl: 30,
        leftMl: { [malt]: expect.closeTo(110, 6) },
      });
      const { glasses } = await client("nextFlight", { body: told.asked });
      expect(glasses[0]).toMatchObject({ kind: "anchor", parts: { [malt]: 1 } });
      // N5: decided otherwise, what is told to lack is what the planned set is short of, to the step.
      const instead = [{ glass: glasses.length, parts: { [malt]: 9, [rye]: 1 } }];
      const { lacks } = await client("nextFlight", { body: { ...told.asked, instead } });
      expect(lacks).toMatchObject([{ id: malt, leftMl: expect.closeTo(110, 6) }]);
      const meant = meantGlasses(glasses, instead);
      expect(
        lackOf(
          told.asked,
          meant.map(({ parts }) => parts),
        ),
      ).toEqual(lacks);
      const over = await client("addTrialSet", { at, body: plannedTrials(told, "Over", meant) });
      expect(over.flight?.glasses.at(-1)?.why).toBe("Your own.");
      const shortOf = over.bottles.filter(({ shortMl }) => shortMl > 0);
      expect(shortOf.map(({ shortMl }) => shortMl)).toEqual(
        lacks.map(({ needMl, leftMl }) => expect.closeTo(needMl - leftMl, 6)),
      );
      const refused = client("pourTrials", {
        at: { ...at, trials: over.id },
        body: { version: over.version },
      });
      expect((await refusalOf(refused)).codes).toEqual(["shelf_short"]);
      const set = await client("addTrialSet", { at, body: plannedTrials(told, "Now", glasses) });
      // More than the named bottle has beside its glass: drawn of it alone there would be none left for the glass.
      const of = set.asked.parts.findIndex(
        (part) => part.of.kind === "whiskey" && part.of.whiskeyId === malt,
      );
      expect(set.bottles[of]?.needMl).toBeGreaterThan(30);
      expect(set.bottles[of]).toMatchObject({ keptMl: 30, shortMl: 0 });
      await client("pourTrials", { at: { ...at, trials: set.id }, body: { version: set.version } });
      const { flight } = await client("getTrialSet", { at: { ...at, trials: set.id } });
      expect(flight?.glasses[0]).toMatchObject({ vesselId: first, insteadOf: null });
      const vessels = flight?.glasses.flatMap(({ vesselId }) => vesselId ?? []) ?? [];
      await setFlight({ ...shelf, vesselIds: vessels }, [...vessels.keys()], { pourMl: 15 });
    });

    test("N3 what is not on the shelf stands in no new glass; the whole shelf when asked", async () => {
      await using house = await temporaryHouse(database);
      const { shelf, at, malt, rye, other, recipe } = await around(house.client);
      await house.client("addTransfer", {
        at,
        body: {
          from: { kind: "vessel", vesselId: shelf.vesselIds[1] ?? "" },
          to: { kind: "outside", name: "drain" },
          amount: { kind: "all" },
        },
      });
      const told = await house.client("getTried", { at: { ...at, recipe: recipe.id } });
      expect(told.asked.mixes).toEqual([malt]);
      expect(told.notes.join(" ")).toContain("Not on the shelf any more");
      await house.client("editWhiskey", {
        at: { ...at, whiskey: other },
        body: { version: 1, profile: profile({ "smoke.smoke": 1 }) },
      });
      const wide = await house.client("getTried", {
        at: { ...at, recipe: recipe.id },
        query: { from: "shelf" },
      });
      // The target is what all is to come close to: it stands in no mix.
      expect(wide.asked.mixes).toEqual([malt]);
      expect(wide.asked.items.map(({ id }) => id)).toEqual(expect.arrayContaining([malt, rye, other]));
    });
  });
});
