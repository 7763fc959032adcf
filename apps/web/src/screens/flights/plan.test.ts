import { temporaryHouse } from "@partsproof/testkit";
import { askOfPlan } from "./ask-of-plan.ts";
import { describe, expect, test } from "vitest";
import { type Cupboard, cupboardOf } from "./cupboard.ts";
import {
  draftOf,
  glassesEach,
  glassesOf,
  lastIndexOf,
  namesOffered,
  mostSets,
  newPlan,
  type Plan,
  plannedAlcoholG,
  withGlasses,
  withQuestion,
} from "./plan.ts";
import { vesselName } from "./vessel-name.ts";

/** A real house with two bottles of one whiskey, another whiskey, a batch and a topped-up bottle. */
async function shelf() {
  const house = await temporaryHouse("sqlite");
  const { client } = house;
  const { id: household } = await client("addHousehold", { body: { name: "Plan" } });
  const at = { household };
  const whiskey = (name: string, value: number) =>
    client("addWhiskey", { at, body: { maker: "Saltreach", name, strength: { basis: "abv20", value } } });
  const [tarn, skerry] = [await whiskey("Tarn", 62.4), await whiskey("Skerry", 40)];
  const bottle = (whiskeyId: string) => client("addBottle", { at, body: { whiskeyId, sealed: false } });
  const bottles = [
    await bottle(tarn.id),
    await bottle(tarn.id),
    await bottle(skerry.id),
    await bottle(tarn.id),
  ];
  const vessel = (i: number) => ({ kind: "vessel" as const, vesselId: bottles[i]?.id ?? "" });
  // The last bottle is topped up with the other whiskey, so it goes by itself.
  await client("addTransfer", {
    at,
    body: { from: vessel(3), to: { kind: "outside", name: "glass" }, amount: { kind: "volume", ml: 300 } },
  });
  await client("addTransfer", {
    at,
    body: { from: vessel(2), to: vessel(3), amount: { kind: "volume", ml: 200 } },
  });
  const slots = [{ parts: 1, of: { kind: "whiskey" as const, whiskeyId: tarn.id } }];
  const recipe = await client("addRecipe", { at, body: { name: "Neat", slots } });
  await client("addBatch", {
    at,
    body: {
      name: "March",
      recipeId: recipe.id,
      vessel: { kind: "new", label: "Jug one", capacityMl: 500 },
      pours: [
        { from: vessel(0), amount: { kind: "volume", ml: 100 } },
        { from: vessel(2), amount: { kind: "volume", ml: 100 } },
      ],
    },
  });
  const tasters = [];
  for (const name of ["Ana", "Ben"]) tasters.push(await client("addTaster", { at, body: { name } }));
  const { items: vessels } = await client("listVessels", { at });
  const { items: whiskeys } = await client("listWhiskeys", { at });
  const { items: batches } = await client("listBatches", { at });
  const byId = <T extends { readonly id: string }>(list: readonly T[]) =>
    new Map(list.map((one) => [one.id, one]));
  const cupboard: Cupboard = cupboardOf(vessels, (one) => vesselName(one, byId(whiskeys), byId(batches)));
  return { house, client, at, cupboard, tasterIds: tasters.map(({ id }) => id) };
}

describe("a planned flight against the house that makes it", { timeout: 60_000 }, () => {
  test("names on offer (F1) and alcohol at most (F12) are those that the house reckons", async () => {
    const { house, client, at, cupboard, tasterIds } = await shelf();
    await using _ = house;
    const byName = (name: string) => cupboard.pourables.filter((one) => one.name === name);
    expect(cupboard.pourables.map(({ name }) => name)).toEqual([
      "March",
      "Saltreach Tarn",
      "Saltreach Skerry",
      "Saltreach Tarn",
      "Saltreach Tarn",
    ]);
    const [toppedUp] = cupboard.pourables.filter(({ nameId }) => nameId.startsWith("vessel:"));
    let plan: Plan = { ...newPlan("today"), name: "Plan", pourMl: 12, pourer: "Pat", tasterIds };
    plan = withGlasses(plan, byName("March")[0]?.vesselId ?? "", 2);
    plan = withGlasses(plan, byName("Saltreach Skerry")[0]?.vesselId ?? "", 1);
    plan = withGlasses(plan, toppedUp?.vesselId ?? "", 1);
    const tarn = cupboard.pourables.find(
      ({ name, nameId }) => name === "Saltreach Tarn" && nameId.startsWith("whiskey:"),
    );
    plan = { ...plan, distractors: [tarn?.nameId ?? ""] };

    const offered = namesOffered(plan, cupboard.pourables);
    const { flight } = await client("addFlight", { at, body: draftOf(plan, offered) });
    expect(flight.glassCount).toBe(glassesOf(plan));
    const counts = new Map<string, number>();
    for (const nameId of offered) counts.set(nameId, (counts.get(nameId) ?? 0) + 1);
    expect(new Map(flight.namesOnOffer.map(({ nameId, count }) => [nameId, count]))).toEqual(counts);
    for (const { nameId, label } of flight.namesOnOffer) {
      expect(cupboard.names.get(nameId)?.label).toBe(label);
    }
    const more: Plan = { ...plan, repeats: 1, pourMl: 3 };
    const { flight: repeated } = await client("addFlight", { at, body: draftOf(more, offered) });
    expect(repeated.glassCount).toBe(glassesEach(more));
    expect(plannedAlcoholG(more, cupboard)).toBeCloseTo(repeated.alcoholAtMost.grams, 9);
    // The strength in between is printed by the house and read again, which costs the last digits.
    expect(plannedAlcoholG(plan, cupboard)).toBeCloseTo(flight.alcoholAtMost.grams, 9);
  });
});

describe("a plan by its question", () => {
  const two = withGlasses(withGlasses(newPlan("today"), "a", 2), "b", 1);

  test("what a question has no use for is not sent; the house can read what is", () => {
    const name = `whiskey:${"0".repeat(26)}`;
    const asked = (more: Partial<Plan>) =>
      draftOf({ ...withQuestion(two, more.question ?? "like_best"), ...more }, [name]);
    const full = {
      distractors: [name],
      targetNameId: name,
      asked: "sweeter",
      expectedVesselId: "a",
      reference: true,
    };
    expect(asked({ ...full, question: "like_best" })).toMatchObject({ distractors: [], targetNameId: name });
    expect(asked({ ...full, question: "like_best" })).not.toHaveProperty("method");
    expect(asked({ ...full, question: "tell_apart" })).toMatchObject({
      method: "triangle",
      sets: 2,
      targetNameId: null,
    });
    expect(asked({ ...full, question: "tell_apart" })).not.toHaveProperty("asked");
    expect(asked({ ...full, question: "changed", method: "paired" })).toMatchObject({
      asked: "sweeter",
      expectedVesselId: "a",
    });
    expect(asked({ ...full, question: "how_close" })).toMatchObject({ reference: true, targetNameId: name });
  });

  test("repeats, control and some of the glasses each are sent where they can be served, and only there", () => {
    const asked: Plan = { ...two, question: "like_best", repeats: 2, controlVesselId: "c", late: true };
    expect(draftOf(asked, [])).toMatchObject({
      repeats: 2,
      controlVesselId: "c",
      glassesEach: null,
      late: true,
    });
    expect(glassesEach(asked)).toBe(3 + 2 + 1);
    // The house has no repeats or control beside some of the glasses each.
    expect(draftOf({ ...asked, glassesEach: 2 }, [])).toMatchObject({
      repeats: 0,
      controlVesselId: null,
      glassesEach: 2,
    });
    expect(draftOf({ ...asked, pouring: "alone" }, [])).toMatchObject({
      repeats: 0,
      controlVesselId: null,
      late: false,
    });
    expect(draftOf({ ...asked, question: "which_is_which" }, []).late).toBe(false);
    expect(draftOf({ ...asked, controlVesselId: "a" }, []).controlVesselId).toBeNull();
  });

  test("two to tell apart are two glasses, and the glasses a taster gets follow from the sets", () => {
    const apart = withQuestion(two, "tell_apart");
    expect(apart.pours).toEqual([
      { vesselId: "a", glasses: 1 },
      { vesselId: "b", glasses: 1 },
    ]);
    // ISO 4120 and ISO 10399: three glasses a set; ISO 5495: two; the tetrad: four.
    const each = (["triangle", "duo_trio", "paired", "tetrad"] as const).map((method) =>
      glassesEach({ ...apart, method, sets: 3 }),
    );
    expect(each).toEqual([9, 9, 6, 12]);
    expect(glassesEach(withQuestion(two, "agree_with_myself"))).toBe(4);
    const alone = { ...two, pouring: "alone", sets: 8 } as const;
    expect(withQuestion(alone, "agree_with_myself").pouring).toBe("someone else");
    // Ten letters for the undersides: three triangles of three.
    expect(withQuestion(alone, "tell_apart")).toMatchObject({ pouring: "alone", sets: 3 });
    const most = (["triangle", "duo_trio", "paired", "tetrad"] as const).map((method) =>
      mostSets({ pouring: "alone", method }),
    );
    expect(most).toEqual([3, 5, 5, 2]);
    const paired = {
      ...apart,
      pouring: "alone",
      method: "paired",
      asked: "drier",
      expectedVesselId: "a",
    } as const;
    expect(draftOf(paired, [])).toMatchObject({ asked: "drier", expectedVesselId: null });
    expect(askOfPlan(paired)).toMatchObject({ ask: { sides: 2 } });
    expect(askOfPlan({ ...paired, pouring: "someone else" })).toMatchObject({ ask: { sides: 1 } });
  });

  test("alcohol at most, by hand: two triangles of 10 mL, the stronger twice in each", () => {
    const bottle = (vesselId: string, ethanolPerMl: number) => ({
      vesselId,
      ethanolPerMl,
      label: vesselId,
      nameId: `whiskey:${vesselId}`,
      name: vesselId,
      blend: false,
      abv20: 40,
      freeMl: 500,
    });
    const cupboard: Cupboard = { pourables: [bottle("a", 0.3), bottle("b", 0.4)], names: new Map() };
    const apart = { ...withQuestion(two, "tell_apart"), pourMl: 10 };
    // 2 sets of (0.4 + 0.4 + 0.3) g/mL times 10 mL.
    expect(plannedAlcoholG(apart, cupboard)).toBeCloseTo(22, 9);
    // Two rounds of both: 2 times 0.7 g/mL times 10 mL.
    expect(plannedAlcoholG({ ...withQuestion(two, "agree_with_myself"), pourMl: 10 }, cupboard)).toBeCloseTo(
      14,
      9,
    );
  });
});

describe("a plan", () => {
  const plan = withGlasses(withGlasses(newPlan("today"), "a", 2), "b", 1);

  test("counts glasses, and takes a vessel off at none", () => {
    expect(glassesOf(plan)).toBe(3);
    expect(withGlasses(plan, "a", 0).pours).toEqual([{ vesselId: "b", glasses: 1 }]);
  });

  test("knows where the last glass of a vessel stands in what is sent, for the issues that name it", () => {
    expect(lastIndexOf(plan, "a")).toBe(1);
    expect(lastIndexOf(plan, "b")).toBe(2);
    expect(draftOf(plan, []).glasses).toEqual([{ vesselId: "a" }, { vesselId: "a" }, { vesselId: "b" }]);
  });

  test("sends no target that is off the offer, and no pourer when alone", () => {
    const name = `whiskey:${"0".repeat(26)}`;
    expect(draftOf({ ...plan, targetNameId: name }, []).targetNameId).toBeNull();
    expect(draftOf({ ...plan, targetNameId: name }, [name]).targetNameId).toBe(name);
    expect(draftOf({ ...plan, pouring: "alone", pourer: "Pat" }, []).pourer).toBeNull();
  });
});
