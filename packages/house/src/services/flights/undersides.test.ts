import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, lock, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

eachDatabase((database) => {
  describe(`F4 alone (${database})`, () => {
    /** Glasses 0, 1, 1, 2 with distractor 3; taken and poured. */
    const ready = async () => {
      const house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1, 1, 2], {
        pouring: "alone",
        pourer: null,
        distractors: [3],
      });
      const at = { household: shelf.household, flight: flight.id };
      const [taken] = await takeSheets(shelf, at.flight);
      if (!taken) throw new Error("a sheet is needed");
      await house.client("markPoured", { at, token: taken.token });
      const { client } = house;
      return {
        house,
        client,
        shelf,
        flight,
        at,
        taken,
        token: taken.token,
        [Symbol.asyncDispose]: () => house.close(),
      };
    };
    const marks = (text: string) => text.split("").map((mark, i) => ({ place: i + 1, mark }));

    test("marks with their vessels are shown, codes are the places, no key is kept", async () => {
      await using evening = await ready();
      const { house, flight, shelf, taken } = evening;
      expect(flight.marks.map(({ mark }) => mark)).toEqual(["A", "B", "C", "D"]);
      const [one = "", two = "", three = ""] = shelf.vesselIds;
      expect(flight.marks.map(({ vesselId }) => vesselId).toSorted()).toEqual(
        [one, two, two, three].toSorted(),
      );
      expect(taken.sheet.glasses).toEqual([1, 2, 3, 4].map((n) => ({ position: n, code: String(n) })));
      const keys = await house.store.transaction((records) => records.list("flightKey", shelf.household));
      expect(keys).toEqual([]);
    });

    test("the undersides come after the lock, once, with the taster's token", async () => {
      await using evening = await ready();
      const { client, at, shelf, taken, token } = evening;
      const enter = (given: string, text = "DBCA") =>
        client("enterUndersides", { at, token: given, body: { marks: marks(text) } });
      expect(await refusalOf(enter(token))).toMatchObject({ status: 409, codes: ["sheet_not_locked"] });
      await lock(shelf, taken);
      expect(await refusalOf(enter("f".repeat(64)))).toMatchObject({ status: 403, codes: ["token_wrong"] });
      const missing = await refusalOf(client("revealFlight", { at, body: {} }));
      expect(missing).toMatchObject({ status: 409, codes: ["undersides_missing"] });
      expect((await enter(token)).undersidesEntered).toBe(true);
      expect(await refusalOf(enter(token, "ABCD"))).toMatchObject({
        status: 409,
        codes: ["undersides_entered"],
      });
    });

    test("they must be a permutation of the marks; each wrong one is told at its place", async () => {
      await using evening = await ready();
      const { client, at, shelf, taken, token } = evening;
      await lock(shelf, taken);
      const enter = (found: { place: number; mark: string }[]) =>
        refusalOf(client("enterUndersides", { at, token, body: { marks: found } }));
      const twice = await enter(marks("ABCB"));
      expect(twice).toMatchObject({
        status: 422,
        issues: [{ code: "undersides_wrong", path: ["marks", 3, "mark"], received: "B" }],
      });
      expect((await enter(marks("ABCE"))).issues).toMatchObject([{ path: ["marks", 3, "mark"] }]);
      expect((await enter(marks("ABC"))).issues).toMatchObject([{ path: ["marks"], received: 3 }]);
      const placed = marks("ABCD").map(({ mark }, i) => ({ place: i === 0 ? 4 : i + 1, mark }));
      expect((await enter(placed)).issues).toMatchObject([{ path: ["marks", 3, "place"], received: 4 }]);
      expect((await client("getFlight", { at })).undersidesEntered).toBe(false);
    });

    test("the undersides make the key at the reveal, and the guesses are set against them", async () => {
      await using evening = await ready();
      const { client, at, flight, shelf, taken, token } = evening;
      const order = [3, 0, 2, 1];
      const truth = order.map((i) => flight.marks[i]?.nameId ?? "");
      const guesses = truth.map((nameId, i) => ({ code: String(i + 1), nameId }));
      const sheet = { ...at, sheet: taken.sheet.id };
      const { version } = await client("getSheet", { at: sheet, token });
      await client("editSheet", { at: sheet, token, body: { version, guesses } });
      await lock(shelf, taken);
      const found = marks(order.map((i) => flight.marks[i]?.mark).join(""));
      await client("enterUndersides", { at, token, body: { marks: found.toReversed() } });
      const finding = await client("revealFlight", { at, body: {} });
      expect(finding.sheets[0]).toMatchObject({ guessed: 4, right: 4 });
      expect(finding.sheets[0]?.glasses.map(({ nameId }) => nameId)).toEqual(truth);
      // Names on offer 1, 2, 1, 1 for glasses 1, 2, 1: 5·4·3·2 = 120 ways to lay five names on four glasses, 2 right.
      expect(finding.sheets[0]?.luck?.fraction).toBe("1/60");
      const { items } = await client("listTransfers", { at: { household: shelf.household } });
      const poured = items.filter(({ flightId }) => flightId === at.flight);
      expect(poured).toHaveLength(3);
      expect(await client("getFinding", { at })).toEqual(finding);
    });

    test("F11 it is not revealed while the sheet is open, not even a day later", async () => {
      await using evening = await ready();
      const { house, client, at } = evening;
      house.clock.advance({ days: 2 });
      const no = await refusalOf(client("revealFlight", { at, body: { closeOpenSheets: true } }));
      expect(no).toMatchObject({ status: 409, codes: ["sheets_not_locked"] });
    });

    test("a flight poured by someone else has no undersides", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id };
      const [taken] = await takeSheets(shelf, flight.id);
      const body = { marks: marks("AB") };
      const no = await refusalOf(house.client("enterUndersides", { at, token: taken?.token ?? "", body }));
      expect(no).toMatchObject({ status: 403, codes: ["token_wrong"] });
    });
  });
});
