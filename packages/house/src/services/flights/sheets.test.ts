import { eachDatabase, temporaryHouse } from "@partsproof/testkit";
import { describe, expect, test } from "vitest";
import { eveningShelf, setFlight, takeSheets } from "../fixtures/evening.ts";
import { refusalOf } from "../fixtures/refusal.ts";

const words = (code: string, nose: string) => ({
  code,
  first: { nose, palate: "", finish: "" },
  second: { nose: "", palate: "", finish: "" },
  score: 71.5,
});

eachDatabase((database) => {
  describe(`sheets (${database})`, () => {
    /** Glasses A, B, B with distractor C; both sheets taken, poured unless told otherwise. */
    const ready = async ({ poured = true } = {}) => {
      const house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 4, tasters: 2 });
      const made = await setFlight(shelf, [0, 1, 1], { distractors: [2] });
      const at = { household: shelf.household, flight: made.flight.id };
      const [mine, other] = await takeSheets(shelf, at.flight);
      if (!mine || !other) throw new Error("two sheets are needed");
      if (poured) await house.client("markPoured", { at, token: made.pourerToken ?? "" });
      return {
        house,
        client: house.client,
        shelf,
        at: { ...at, sheet: mine.sheet.id },
        token: mine.token,
        other,
        codes: mine.sheet.glasses.map(({ code }) => code),
        names: shelf.nameIds,
        hostToken: made.hostToken,
        [Symbol.asyncDispose]: () => house.close(),
      };
    };

    test("F7 a sheet is taken once, its token given once", async () => {
      await using evening = await ready();
      const { client, at, house, token } = evening;
      const again = await refusalOf(client("takeSheet", { at, body: { ofLegalAge: true } }));
      expect(again).toMatchObject({ status: 409, codes: ["sheet_taken"] });
      const rows = await house.store.transaction((records) => records.list("sheet", at.household));
      expect(JSON.stringify(rows)).not.toContain(token);
    });

    test("F7 of two who take it at once one gets it", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1]);
      const sheet = flight.sheets[0]?.sheetId ?? "";
      const at = { household: shelf.household, flight: flight.id, sheet };
      const both = await Promise.allSettled(
        [1, 2].map(() => house.client("takeSheet", { at, body: { ofLegalAge: true } })),
      );
      expect(both.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
      const lost = both.find(({ status }) => status === "rejected");
      expect(lost).toMatchObject({ reason: { status: 409, issues: [{ code: "sheet_taken" }] } });
    });

    test("F7 taking it needs the word on legal age", async () => {
      await using house = await temporaryHouse(database);
      const shelf = await eveningShelf(house.client, { whiskeys: 2, tasters: 1 });
      const { flight } = await setFlight(shelf, [0, 1]);
      const at = { household: shelf.household, flight: flight.id, sheet: flight.sheets[0]?.sheetId ?? "" };
      const no = await refusalOf(house.client("takeSheet", { at, body: { ofLegalAge: false as true } }));
      expect(no).toMatchObject({ status: 422, issues: [{ path: ["ofLegalAge"] }] });
    });

    test("F7 the host frees a sheet: the old token is dead at once, what is written stays", async () => {
      await using evening = await ready();
      const { client, at, token, hostToken, other, codes } = evening;
      const [code = ""] = codes;
      const { version } = await client("getSheet", { at, token });
      await client("editSheet", { at, token, body: { version, notes: [words(code, "brine")] } });
      for (const wrong of [token, other.token]) {
        expect((await refusalOf(client("freeSheet", { at, token: wrong }))).status).toBe(403);
      }
      const flight = await client("freeSheet", { at, token: hostToken });
      expect(flight.sheets.map(({ state }) => state).toSorted()).toEqual(["free", "open"]);
      expect((await refusalOf(client("getSheet", { at, token }))).codes).toEqual(["token_wrong"]);
      const again = await client("takeSheet", { at, body: { ofLegalAge: true } });
      expect(again.token).not.toBe(token);
      expect(again.sheet.notes).toEqual([words(code, "brine")]);
      await client("lockSheet", { at, token: again.token, body: { version: again.sheet.version } });
      const no = await refusalOf(client("freeSheet", { at, token: hostToken }));
      expect(no).toMatchObject({ status: 409, codes: ["sheet_locked"] });
    });

    test("F8 before the reveal a sheet opens to its own token only", async () => {
      await using evening = await ready();
      const { client, at, token, other, hostToken } = evening;
      expect((await client("getSheet", { at, token })).id).toBe(at.sheet);
      expect((await refusalOf(client("getSheet", { at }))).codes).toEqual(["token_needed"]);
      for (const wrong of [other.token, hostToken]) {
        expect((await refusalOf(client("getSheet", { at, token: wrong }))).codes).toEqual(["token_wrong"]);
        const edit = client("editSheet", { at, token: wrong, body: { version: 2, ranking: null } });
        expect((await refusalOf(edit)).codes).toEqual(["token_wrong"]);
        const locking = client("lockSheet", { at, token: wrong, body: { version: 2 } });
        expect((await refusalOf(locking)).codes).toEqual(["token_wrong"]);
      }
    });

    test("F8 nothing is written before the glasses are poured", async () => {
      await using evening = await ready({ poured: false });
      const { client, at, token } = evening;
      const { version } = await client("getSheet", { at, token });
      for (const no of [
        await refusalOf(client("editSheet", { at, token, body: { version, ranking: null } })),
        await refusalOf(client("lockSheet", { at, token, body: { version } })),
      ]) {
        expect(no).toMatchObject({ status: 409, codes: ["flight_not_poured"] });
      }
    });

    test("F8, F10 a locked sheet does not change", async () => {
      await using evening = await ready();
      const { client, at, token, codes, names } = evening;
      const { version } = await client("getSheet", { at, token });
      const locked = await client("lockSheet", { at, token, body: { version } });
      expect(locked).toMatchObject({ state: "locked", lockedAt: "2026-11-25T18:00:00.000Z" });
      const guesses = [{ code: codes[0] ?? "", nameId: names[0] ?? "" }];
      const no = await refusalOf(
        client("editSheet", { at, token, body: { version: locked.version, guesses } }),
      );
      expect(no).toMatchObject({
        status: 409,
        issues: [{ code: "sheet_locked", path: ["sheet"], received: "locked", limit: "an open sheet" }],
      });
      expect(await client("getSheet", { at, token })).toEqual(locked);
    });

    test("S8 a stale edit is refused, and of two at once one wins", async () => {
      await using evening = await ready();
      const { client, at, token, codes } = evening;
      const { version } = await client("getSheet", { at, token });
      const edit = (nose: string) =>
        client("editSheet", { at, token, body: { version, notes: [words(codes[0] ?? "", nose)] } });
      const both = await Promise.allSettled([edit("tar"), edit("rope")]);
      expect(both.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
      const lost = both.find(({ status }) => status === "rejected");
      expect(lost).toMatchObject({ reason: { status: 409, issues: [{ code: "stale_edit" }] } });
      expect(await refusalOf(edit("smoke"))).toMatchObject({
        status: 409,
        issues: [
          { code: "stale_edit", path: ["version"], received: version, limit: `version ${version + 1}` },
        ],
      });
    });

    test("F9 a name used more often than it is offered is refused at the glass", async () => {
      await using evening = await ready();
      const { client, at, token, codes, names } = evening;
      const [one = "", two = "", three = ""] = codes;
      const [A = "", B = ""] = names;
      let { version } = await client("getSheet", { at, token });
      const guess = async (...pairs: [string, string | null][]) => {
        const guesses = pairs.map(([code, nameId]) => ({ code, nameId }));
        ({ version } = await client("editSheet", { at, token, body: { version, guesses } }));
      };
      await guess([one, B], [two, B]);
      // Counted over the sheet as it would be: the third use of B stands in an edit of its own.
      expect(await refusalOf(guess([three, B]))).toMatchObject({
        status: 422,
        issues: [
          {
            code: "name_used_too_often",
            path: ["guesses", 0, "nameId"],
            limit: "2 glasses for this name",
            received: 3,
          },
        ],
      });
      await guess([three, B], [one, null]);
      await guess([one, A]);
      const sheet = await client("getSheet", { at, token });
      expect(sheet.guesses).toEqual([
        { code: one, nameId: A },
        { code: two, nameId: B },
        { code: three, nameId: B },
      ]);
      expect(await refusalOf(guess([two, A]))).toMatchObject({
        issues: [{ code: "name_used_too_often", limit: "1 glass for this name", received: 2 }],
      });
    });

    test("F9 all that is wrong with an edit is told together, and nothing of it is kept", async () => {
      await using evening = await ready();
      const { client, at, token, codes, names } = evening;
      const [one = "", two = "", three = ""] = codes;
      const [A = "", , , D = ""] = names;
      const strange = ["111", "222", "333"].find((code) => !codes.includes(code)) ?? "";
      const before = await client("getSheet", { at, token });
      const no = await refusalOf(
        client("editSheet", {
          at,
          token,
          body: {
            version: before.version,
            notes: [words(one, "kept?"), words(one, "twice"), words(strange, "")],
            guesses: [
              { code: one, nameId: A },
              { code: two, nameId: D },
              { code: three, nameId: A },
            ],
            ranking: [[one], [two, one]],
          },
        }),
      );
      expect(no.status).toBe(422);
      expect(no.issues.map(({ code, path }) => [code, path])).toEqual([
        ["glass_named_twice", ["notes", 1, "code"]],
        ["unknown_code", ["notes", 2, "code"]],
        ["name_not_offered", ["guesses", 1, "nameId"]],
        ["name_used_too_often", ["guesses", 2, "nameId"]],
        ["glass_ranked_twice", ["ranking", 1, 1]],
        ["ranking_incomplete", ["ranking"]],
      ]);
      expect(await client("getSheet", { at, token })).toEqual(before);
    });

    test("F9 a ranking may tie, may be taken back, and keeps its groups", async () => {
      await using evening = await ready();
      const { client, at, token, codes } = evening;
      const [one = "", two = "", three = ""] = codes;
      const { version } = await client("getSheet", { at, token });
      const ranking = [[two], [three, one]];
      const ranked = await client("editSheet", { at, token, body: { version, ranking } });
      expect(ranked.ranking).toEqual(ranking);
      const body = { version: ranked.version, notes: [words(one, "brine")] };
      const kept = await client("editSheet", { at, token, body });
      expect(kept.ranking, "an edit without a ranking leaves it").toEqual(ranking);
      const gone = await client("editSheet", { at, token, body: { version: kept.version, ranking: null } });
      expect(gone).toMatchObject({ ranking: null, notes: [words(one, "brine")] });
    });

    test("S1 a sheet of another flight is unknown", async () => {
      await using evening = await ready();
      const { client, at, shelf, token } = evening;
      const { flight } = await setFlight(shelf, [0, 1]);
      const no = await refusalOf(client("getSheet", { at: { ...at, flight: flight.id }, token }));
      expect(no).toMatchObject({ status: 404, codes: ["unknown_sheet"] });
    });
  });
});
