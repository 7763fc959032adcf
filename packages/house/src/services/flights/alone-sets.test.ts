import { DISCRIMINATION } from "@partsproof/core/sensory";
import { eachDatabase, type TemporaryHouse, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

type Method = keyof typeof DISCRIMINATION;
const asked = (method: Method) => (method === "paired" ? { asked: "sweeter" } : {});

/** Sets poured alone, tasted and locked; the first answer of each set is its first place, of a tetrad its first two. */
async function locked(house: TemporaryHouse, method: Method, sets: number) {
  const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
  const more = {
    question: "tell_apart",
    method,
    sets,
    pouring: "alone",
    pourer: null,
    ...asked(method),
  } as const;
  const { flight } = await setFlight(shelf, [0, 1], more);
  const at = { household: shelf.household, flight: flight.id };
  const [taken] = await takeSheets(shelf, flight.id);
  if (!taken) throw new Error("a sheet is needed");
  const { token } = taken;
  await house.client("markPoured", { at, token });
  const answers = taken.sheet.sets.map(({ set, glasses }) => ({
    set,
    picked: glasses.slice(0, method === "tetrad" ? 2 : 1).map(({ code }) => code),
  }));
  await house.client("editSheet", {
    at: { ...at, sheet: taken.sheet.id },
    token,
    body: { version: taken.sheet.version, answers },
  });
  await lock(shelf, taken);
  return { shelf, flight, at, token, sheet: taken.sheet };
}

/** The sets change places, the last first, and each is turned round. */
const turned = (marks: readonly { readonly mark: string }[], sets: number): string[] => {
  const size = marks.length / sets;
  return Array.from({ length: sets }, (_, set) => marks.slice(set * size, (set + 1) * size).toReversed())
    .toReversed()
    .flat()
    .map(({ mark }) => mark);
};

eachDatabase((database) => {
  describe(`sets poured alone (${database})`, () => {
    test.each([
      ["triangle", 3],
      ["duo_trio", 5],
      ["paired", 2],
      ["tetrad", 2],
    ] as const)(
      "Q18 %s, %i sets: marks say what to pour, places are codes, undersides what stood there",
      async (method, sets) => {
        await using house = await temporaryHouse(database);
        const { shelf, flight, at, token, sheet } = await locked(house, method, sets);
        const [a = "", b = ""] = shelf.vesselIds;
        const size = flight.marks.length / sets;
        const known = Number(method === "duo_trio");
        const inSet = (set: number) => flight.marks.filter((one) => one.set === set);
        expect(flight.glassCount).toBe(sets * (size + known));
        for (let set = 1; set <= sets; set += 1) {
          const own = inSet(set);
          const letter = (vesselId: string | undefined) => (vesselId === a ? "A" : "B");
          const like = own.filter(({ likeR }) => likeR);
          expect(like.map(({ mark }) => mark)).toEqual(known ? [own[0]?.mark] : []);
          const order = [...like, ...own].map(({ vesselId }) => letter(vesselId)).join("");
          // Which of the two is called A is the house's draw, and all sets of a method have their mirror.
          expect(DISCRIMINATION[method].orders).toContain(order);
        }
        expect(sheet.glasses.map(({ code }) => code)).toEqual(
          flight.marks.map((_, place) => String(place + 1)),
        );
        expect(sheet.sets.map(({ set, glasses, reference }) => [set, glasses.length, reference])).toEqual(
          Array.from({ length: sets }, (_, i) => [i + 1, size, known === 1]),
        );

        const ends = turned(flight.marks, sets);
        const enter = (marks: readonly string[]) =>
          house.client("enterUndersides", {
            at,
            token,
            body: { marks: marks.map((mark, i) => ({ place: i + 1, mark })) },
          });
        const mixed = [...ends.slice(1), ends[0] ?? ""];
        const no = await refusalOf(enter(mixed));
        expect([no.status, new Set(no.codes)]).toEqual([422, new Set(["undersides_wrong"])]);
        expect(no.issues[0]?.message).toContain("the marks of one set");
        await enter(ends);
        const finding = await house.client("revealFlight", { at, body: {} });
        const vesselOf = (mark: string | undefined) =>
          flight.marks.find((one) => one.mark === mark)?.vesselId;
        const [first = ""] = finding.glasses.map(({ label }) => label);
        const shelfNow = await house.client("listVessels", { at: { household: shelf.household } });
        const labelOf = (vesselId: string | undefined) =>
          shelfNow.items.find(({ id }) => id === vesselId)?.label;
        expect(new Set([first, finding.glasses[1]?.label])).toEqual(new Set([labelOf(a), labelOf(b)]));
        const found = finding.sets?.sheets[0];
        for (const { set, glasses, right, picked } of found?.sets ?? []) {
          // The sets stand the other way round, and so do the glasses in each.
          const poured = inSet(sets + 1 - set);
          const stood = poured.toReversed().map(({ vesselId }) => labelOf(vesselId));
          const like = poured.find(({ likeR }) => likeR);
          const truth = [...(like ? [labelOf(like.vesselId)] : []), ...stood];
          expect(glasses.map(({ glass }) => finding.glasses[glass]?.label)).toEqual(truth);
          expect(glasses.map(({ code }) => code)).toEqual([
            ...(like ? ["R"] : []),
            ...stood.map((_, i) => String((set - 1) * size + i + 1)),
          ]);
          const named = picked?.map((code) => vesselOf(ends[Number(code) - 1]));
          const alike = poured.filter(({ vesselId }) => vesselId === named?.[0]).length;
          const expected = {
            triangle: alike === 1,
            duo_trio: named?.[0] === like?.vesselId,
            paired: null,
            tetrad: named?.[0] === named?.[1],
          };
          expect(right).toBe(expected[method]);
        }
        const poured = (id: string) =>
          flight.marks.reduce(
            (sum, { vesselId, likeR }) => sum + (vesselId === id ? 1 + Number(likeR) : 0),
            0,
          );
        for (const id of [a, b]) {
          const left = shelfNow.items.find((vessel) => vessel.id === id)?.contents.volumeMl ?? 0;
          expect(left, "as the key says was poured, R included").toBeCloseTo(5000 - 15 * poured(id), 6);
        }
        expect(finding.flight.commitment, "P5").toBeNull();
        const archive = await house.client("exportHousehold", { at: { household: shelf.household } });
        const copy = await house.client("restoreHousehold", { body: archive });
        const [again] = (await house.client("listFlights", { at: { household: copy.id } })).items;
        const restored = await house.client("getFinding", {
          at: { household: copy.id, flight: again?.id ?? "" },
        });
        expect(restored.headline).toBe(finding.headline);
        expect(restored.sets?.sheets[0]?.sets).toEqual(found?.sets);
      },
    );

    test("Q18 it is said what whoever pours knows of a set, and that luck is what it always is", async () => {
      await using house = await temporaryHouse(database);
      const one = await locked(house, "triangle", 1);
      expect(one.flight.design.said).toEqual([
        "The orders are what your shuffles made them.",
        "You pour the set and so know which of the two is in it once; you do not know where.",
        "By luck alone 1/3 of the answers are right all the same.",
      ]);
      const two = await locked(house, "duo_trio", 1);
      expect(two.flight.design.said[1]).toBe("You pour R and so know which of the two it is.");
    });

    test("Q18 ten marks at most, no rounds, and nothing said beforehand without a seal", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const alone = { question: "tell_apart", pouring: "alone", pourer: null } as const;
      const codes = async (more: object) =>
        (await refusalOf(setFlight(shelf, [0, 1], { ...alone, ...more }))).codes;
      expect(await codes({ method: "triangle", sets: 4 })).toEqual(["too_many_glasses"]);
      expect(await codes({ method: "tetrad", sets: 3 })).toEqual(["too_many_glasses"]);
      const [expectedVesselId] = shelf.vesselIds;
      expect(await codes({ method: "paired", asked: "drier", expectedVesselId })).toEqual([
        "expected_not_asked",
      ]);
      expect(await codes({ question: "agree_with_myself" })).toEqual(["alone_has_no_rounds"]);
    });
  });
});
