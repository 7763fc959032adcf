import { temporaryHouse } from "@partsproof/testkit";
import { QUESTIONS } from "@partsproof/core/sensory";
import { describe, expect, test } from "vitest";
import { QuestionId } from "../../protocol/index.ts";
import { eveningShelf, setFlight } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

type More = Parameters<typeof setFlight>[2];
const id = "0".repeat(26);

test("Q1 the questions are those of core", () => {
  expect(QuestionId.options.toSorted()).toEqual(Object.keys(QUESTIONS).toSorted());
});

// What is wrong with a draft does not depend on the database that nothing is written to.
describe("what a question needs, and what it has no use for", () => {
  const refused: readonly (readonly [string, readonly number[], NonNullable<More>, readonly string[]])[] = [
    ["Q1 a method at like_best", [0, 1], { question: "like_best", method: "triangle" }, ["method_not_asked"]],
    ["Q1 sets at which_is_which", [0, 1], { sets: 2 }, ["sets_not_asked"]],
    [
      "Q1 what is asked for and what is expected at a triangle",
      [0, 1],
      { question: "tell_apart", method: "triangle", asked: "sweeter", expectedVesselId: id },
      ["asked_not_asked", "expected_not_asked", "expected_unknown"],
    ],
    [
      "Q1 a reference at like_best",
      [0, 1],
      { question: "like_best", reference: true },
      ["reference_not_asked"],
    ],
    [
      "Q1 repeats, glasses each and late at tell_apart",
      [0, 1],
      { question: "tell_apart", method: "paired", asked: "drier", repeats: 1, glassesEach: 2, late: true },
      ["repeats_not_asked", "glasses_each_not_asked", "late_not_asked"],
    ],
    [
      "Q1 distractors at changed",
      [0, 1],
      { question: "changed", method: "tetrad", distractors: [2] },
      ["distractors_not_asked"],
    ],
    ["Q6 late where the glasses are to be recognised", [0, 1], { late: true }, ["late_not_asked"]],
    ["Q2 no method", [0, 1], { question: "tell_apart" }, ["method_needed"]],
    ["Q2 three vessels", [0, 1, 2], { question: "tell_apart", method: "triangle" }, ["two_glasses_needed"]],
    ["Q2 one vessel twice", [1, 1], { question: "changed", method: "triangle" }, ["same_vessel_twice"]],
    [
      "Q2 a pair of which nothing is asked",
      [0, 1],
      { question: "changed", method: "paired" },
      ["asked_needed"],
    ],
    ["Q3 no target", [0, 1], { question: "how_close" }, ["target_needed"]],
    [
      "Q4 nine glasses twice",
      [0, 1, 2, 3, 4, 5, 0, 1, 2],
      { question: "agree_with_myself" },
      ["too_many_glasses"],
    ],
    [
      "Q5 as many for each taster as there are",
      [0, 1, 2],
      { question: "like_best", glassesEach: 3 },
      ["glasses_each_too_many"],
    ],
    [
      "Q5 repeats and a control beside some of the glasses",
      [0, 1, 2],
      { question: "like_best", glassesEach: 2, repeats: 1 },
      ["repeats_not_asked"],
    ],
    [
      "Q5 thirteen in a row",
      [0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4],
      { question: "like_best", repeats: 2 },
      ["too_many_glasses"],
    ],
    [
      "Q6 rounds alone",
      [0, 1],
      { question: "agree_with_myself", pouring: "alone", pourer: null, late: true },
      ["late_not_asked", "alone_has_no_rounds"],
    ],
    [
      "Q6 repeats alone",
      [0, 1],
      { question: "like_best", pouring: "alone", pourer: null, repeats: 1 },
      ["repeats_not_asked"],
    ],
  ];
  test.each(refused)("%s is refused, and nothing is set", async (_, glasses, more, codes) => {
    await using house = await temporaryHouse("sqlite");
    const shelf = await eveningShelf(house.client, { whiskeys: 6, tasters: 1 });
    expect(await refusalOf(setFlight(shelf, glasses, more))).toMatchObject({ status: 422, codes });
    expect((await house.client("listFlights", { at: { household: shelf.household } })).items).toEqual([]);
  });

  test("Q3 a target that is in no glass, Q6 a control that is in one, or of nowhere", async () => {
    await using house = await temporaryHouse("sqlite");
    const shelf = await eveningShelf(house.client, { whiskeys: 3, tasters: 1 });
    const [, second, third] = shelf.nameIds;
    const far = setFlight(shelf, [0, 1], {
      question: "how_close",
      targetNameId: third ?? "",
      distractors: [2],
    });
    expect((await refusalOf(far)).codes).toEqual(["target_not_poured"]);
    const inOne = { question: "like_best", controlVesselId: shelf.vesselIds[1] ?? "" } as const;
    expect((await refusalOf(setFlight(shelf, [0, 1], inOne))).codes).toEqual(["control_among_glasses"]);
    const nowhere = await refusalOf(setFlight(shelf, [0, 1], { ...inOne, controlVesselId: id }));
    expect(nowhere).toMatchObject({
      status: 404,
      issues: [{ code: "unknown_vessel", path: ["controlVesselId"] }],
    });
    const near = await setFlight(shelf, [0, 1], { question: "how_close", targetNameId: second ?? "" });
    expect(near.flight).toMatchObject({ question: "how_close", targetNameId: second, glassCount: 2 });
  });

  test("S1, Q2, Q6 a control or an expected vessel of another household is as unknown as any", async () => {
    await using house = await temporaryHouse("sqlite");
    const theirs = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
    const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
    const [far = ""] = theirs.vesselIds;
    const control = { question: "like_best", controlVesselId: far } as const;
    expect((await refusalOf(setFlight(shelf, [0, 1], control))).codes).toEqual(["unknown_vessel"]);
    const paired = {
      question: "tell_apart",
      method: "paired",
      asked: "drier",
      expectedVesselId: far,
    } as const;
    expect((await refusalOf(setFlight(shelf, [0, 1], paired))).codes).toEqual(["expected_unknown"]);
  });

  test("Q5 no more codes than there are: twelve tasters, eight tetrads of four are 384, and are had", async () => {
    await using house = await temporaryHouse("sqlite");
    const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 12 });
    const more = { question: "tell_apart", method: "tetrad", sets: 8, pourMl: 2 } as const;
    const { flight } = await setFlight(shelf, [0, 1], more);
    expect(flight).toMatchObject({ glassCount: 32, design: { setsEach: 8, glassesEach: 32 } });
  });

  test("Q5, Q10 what the shelf cannot pour of sets and of a reference is refused at its place", async () => {
    await using house = await temporaryHouse("sqlite");
    const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 4 });
    // 4 tasters, 8 triangles of 60 mL: 48 glasses of each at most, 2880 mL of 5000; but two flights of it are more.
    const more = { question: "tell_apart", method: "triangle", sets: 8, pourMl: 60 } as const;
    await setFlight(shelf, [0, 1], more);
    const no = await refusalOf(setFlight(shelf, [0, 1], more));
    expect(no.issues).toMatchObject([
      { code: "vessel_short", path: ["glasses", 0, "vesselId"], received: 2880, limit: "2120 mL free" },
      { code: "vessel_short", path: ["glasses", 1, "vesselId"] },
    ]);
    const close = { question: "how_close", reference: true, pourMl: 50, seats: 8 } as const;
    const first = await setFlight(shelf, [0, 1], { ...close, targetNameId: shelf.nameIds[0] ?? "" });
    expect(first.flight.glassCount).toBe(3);
    const short = await refusalOf(
      setFlight(shelf, [0, 1], { ...close, targetNameId: shelf.nameIds[0] ?? "" }),
    );
    expect(short.issues).toMatchObject([{ code: "vessel_short", path: ["reference"], received: 1200 }]);
  });
});
